using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>What a shop's counted stencils teach, all its emulsions and inks together.</summary>
internal static class ShopLives
{
    public static LifeLearning Of(Shop shop) => new(
    [
        .. from reading in shop.RunReadings
           join emulsion in shop.Emulsions on reading.EmulsionId.ToUpperInvariant() equals emulsion.Id.ToUpperInvariant()
           select new CountedStencil(emulsion.Id, CaseOf(reading, emulsion), reading.Broke),
    ]);

    private static LifeCase CaseOf(RunReading reading, StencilEmulsion emulsion) => new()
    {
        Family = emulsion.Family,
        Ink = reading.Ink,
        MadeForInk = Resistance.To(reading.Ink, emulsion).Grade == ResistanceGrade.Good,
        Finish = reading.Finish,
        EomUm = Estimate.Exact(reading.EomUm ?? LifeSeed.UsualEomUm, reading.EomUm is null ? Ground.CommonPractice : Ground.MeasuredHere),
        Impressions = reading.Impressions,
    };
}
