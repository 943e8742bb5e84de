using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>Strips of one day that cannot all be read right: more light hardens no less.</summary>
internal static class StripContradictions
{
    /// <summary>Readers differ by one step. Common practice.</summary>
    private const int MostStepsApart = 1;

    /// <summary>Strips nearer than this share one look. [1] Half a stop.</summary>
    private static readonly double Apart = Math.Sqrt(2);

    /// <summary>A squeegee side is firm long before the wedge shows this step. Four times the light of the usual one; common practice.</summary>
    private const int FirmByStep = (int)StepWedge.UsualSolidStep + 4;

    /// <summary>Whether strips of one day contradict each other in what they say of a case.</summary>
    internal static bool AreIn(IReadOnlyList<StepTest> day, ExposureCase exposure) => Among(day, exposure, _ => "").Any();

    public static IEnumerable<Note> Of(IReadOnlyList<StepTest> dry, ExposureCase exposure, ExposureCount counts)
    {
        return dry.GroupBy(strip => strip.On).SelectMany(day => Among([.. day], exposure, Said)).Select(what => new Note(
            $"Strips contradict each other, so the window is told wider than if they agreed. {what}: look at them again, and mark one that may have been damp."));

        string Said(StepTest strip) => string.Create(CultureInfo.InvariantCulture, $"{strip.Amount:0.##} {(counts == ExposureCount.Units ? "units" : "s")}");
    }

    private static IEnumerable<string> Among(IReadOnlyList<StepTest> day, ExposureCase exposure, Func<StepTest, string> said)
    {
        StepTest[] strips = [.. day.OrderBy(strip => strip.Amount)];
        (StepTest Less, StepTest More)[] pairs = [.. from less in strips from more in strips where more.Amount >= Apart * less.Amount select (less, more)];
        if (pairs.FirstOrDefault(pair => pair.More.SolidStep < pair.Less.SolidStep - MostStepsApart) is { Less: not null } wedge)
            yield return $"{said(wedge.More)} showed step {wedge.More.SolidStep} solid and {said(wedge.Less)} step {wedge.Less.SolidStep}; more light never hardens fewer steps";
        if (pairs.FirstOrDefault(pair => pair is { Less.SqueegeeSideSoft: false, More.SqueegeeSideSoft: true }) is { Less: not null } side)
            yield return $"The squeegee side was soft at {said(side.More)} and firm at {said(side.Less)}; more light never leaves it softer";
        if (WeakTail.Of(strips) is { } tail)
            yield return string.Create(CultureInfo.InvariantCulture, $"From {said(strips.First(strip => strip.Amount == tail.From))} on the wedge showed some {tail.Steps:0.#} steps fewer than the strips with less light would have it; so look strips that were not dry, or had less light than was told");
        var line = WindowInputs.NeededLineUm(exposure);
        if (pairs.FirstOrDefault(pair => pair.Less.FinestLineUm > line && pair.More.FinestLineUm <= line) is { Less: not null } lines)
            yield return $"The finest line was lost at {said(lines.Less)} and held at {said(lines.More)}; more light never opens a line";
        if (pairs.FirstOrDefault(pair => pair.Less.FinestGapUm <= exposure.FinestGapUm && pair.More.FinestGapUm > exposure.FinestGapUm) is { Less: not null } walls)
            yield return $"The finest gap was held at {said(walls.Less)} and lost at {said(walls.More)}; more light never washes a wall away";
        if (strips.FirstOrDefault(strip => strip is { SqueegeeSideSoft: true, SolidStep: >= FirmByStep }) is { } soft)
            yield return $"At {said(soft)} the wedge showed step {soft.SolidStep} solid and the squeegee side was soft; a coat that shows so many steps is firm behind";
    }
}
