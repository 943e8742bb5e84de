using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>Stencils of a shop as far as their lives go: those planned, and those it has counted.</summary>
internal static class ShopLives
{
    /// <summary>What a shop's counted stencils teach, all its emulsions and inks together.</summary>
    public static LifeLearning Of(Shop shop) => new(
    [
        .. from reading in shop.RunReadings
           join emulsion in shop.Emulsions on reading.EmulsionId.ToUpperInvariant() equals emulsion.Id.ToUpperInvariant()
           let eomUm = Estimate.Exact(reading.EomUm ?? LifeSeed.UsualEomUm, reading.EomUm is null ? Ground.CommonPractice : Ground.MeasuredHere)
           select new CountedStencil(
               emulsion.Id, CaseOf(emulsion, reading.Ink, reading.Finish, shop.PressWash, eomUm, reading.Impressions), reading.Broke),
    ]);

    /// <summary>The stencil that an emulsion makes.</summary>
    /// <param name="emulsion">The emulsion, or a film and what it is laid with.</param>
    /// <param name="ink">Ink it meets.</param>
    /// <param name="finish">What is done to it once developed.</param>
    /// <param name="wash">What screens are wiped with on press.</param>
    /// <param name="eomUm">Emulsion over mesh. [µm]</param>
    /// <param name="impressions">Impressions of the run, or those counted.</param>
    public static LifeCase CaseOf(StencilEmulsion emulsion, InkKind ink, StencilFinish finish, PressWash? wash, Estimate eomUm, long impressions)
    {
        return new LifeCase
        {
            Family = emulsion.Family,
            Ink = ink,
            MadeForInk = IsMadeFor(emulsion.WithoutLaying()),
            LaidWith = emulsion.LaidWith is { } laying ? new LayingEmulsion(laying.Family, IsMadeFor(laying)) : null,
            WornByWash = WashResistance.To(wash, emulsion) is { Grade: not ResistanceGrade.Good },
            Finish = finish,
            EomUm = eomUm,
            Impressions = impressions,
        };

        // One that must be hardened for ink with water in it is made for it only once it is.
        bool IsMadeFor(StencilEmulsion part) => Resistance.To(ink, part).Grade == ResistanceGrade.Good
            && !(part.Hardening == Hardening.Needed && HasWater(ink) && finish != StencilFinish.Hardened);
    }

    public static bool HasWater(InkKind ink) => ink is InkKind.WaterBased or InkKind.Discharge;
}
