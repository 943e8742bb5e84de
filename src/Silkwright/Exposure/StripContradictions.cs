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

    public static IEnumerable<Note> Of(IReadOnlyList<StepTest> dry, ExposureCount counts)
    {
        foreach (var day in dry.GroupBy(strip => strip.On))
        {
            StepTest[] strips = [.. day.OrderBy(strip => strip.Amount)];
            (StepTest Less, StepTest More)[] pairs = [.. from less in strips from more in strips where more.Amount >= Apart * less.Amount select (less, more)];
            if (pairs.FirstOrDefault(pair => pair.More.SolidStep < pair.Less.SolidStep - MostStepsApart) is { Less: not null } wedge)
                yield return Told($"{Said(wedge.More)} showed step {wedge.More.SolidStep} solid and {Said(wedge.Less)} step {wedge.Less.SolidStep}; more light never hardens fewer steps");
            if (pairs.FirstOrDefault(pair => pair is { Less.SqueegeeSideSoft: false, More.SqueegeeSideSoft: true }) is { Less: not null } side)
                yield return Told($"The squeegee side was soft at {Said(side.More)} and firm at {Said(side.Less)}; more light never leaves it softer");
            if (strips.FirstOrDefault(strip => strip is { SqueegeeSideSoft: true, SolidStep: >= FirmByStep }) is { } soft)
                yield return Told($"At {Said(soft)} the wedge showed step {soft.SolidStep} solid and the squeegee side was soft; a coat that shows so many steps is firm behind");
        }

        string Said(StepTest strip) => string.Create(CultureInfo.InvariantCulture, $"{strip.Amount:0.##} {(counts == ExposureCount.Units ? "units" : "s")}");

        static Note Told(string what) => new($"Strips contradict each other, and the window told is no surer than they are. {what}: look at them again, and mark one that may have been damp.");
    }
}
