using MathNet.Numerics.Distributions;

namespace Silkwright.Exposure;

/// <summary>Strips as they might come out, drawn from what is believed: equation 13 of docs/engines/exposure.md the other way round.</summary>
internal static class DrawnStrips
{
    internal static StepTest[] Of(Random random, ExposureCase exposure, LogBelief belief, double[] amounts, bool coatMeasured)
    {
        var day = Drawn(coatMeasured ? StripNoise.DayOfMeasuredCoat : StripNoise.Day);
        var through = belief.Through + Drawn(Math.Sqrt(belief.ThroughVariance));
        var most = through + belief.Room + Drawn(Math.Sqrt(belief.RoomVariance)) + day;
        through += day;
        var usual = through + Math.Log(CoatOptics.GoodOverLeast) + Drawn(StripNoise.WedgeHabit) + Drawn(StripNoise.WashOutHand);
        var line = WindowInputs.NeededLineUm(exposure);
        return [.. amounts.Select(given => Math.Log(given)).Select(amount => new StepTest(
            Math.Exp(amount),
            (int)Math.Clamp(Math.Round(StepWedge.UsualSolidStep + ((amount - usual) / Math.Log(StepWedge.FactorPerStep())) + Drawn(StripNoise.ReadingSteps)), 0, 21),
            amount + Drawn(StripNoise.SoftTurn) < through,
            amount + Drawn(StripNoise.HeldTurn) < most ? line : 2 * line)
        {
            On = exposure.On ?? exposure.Tests.Max(strip => strip.On)?.AddDays(1),
            EomUm = coatMeasured ? exposure.EomUm.Value : null,
        })];

        double Drawn(double deviation) => Normal.Sample(random, 0, deviation);
    }
}
