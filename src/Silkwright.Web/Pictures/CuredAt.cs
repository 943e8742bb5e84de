using Silkwright.Estimates;
using Silkwright.Light;

namespace Silkwright.Web.Pictures;

/// <summary>What an exposure cures.</summary>
/// <param name="Steps">Wedge steps over the least that cures through in the place that gets least light.</param>
/// <param name="Outline">What is cured.</param>
public sealed record CuredAt(int Steps, DoseOutline Outline)
{
    /// <summary>Density from step to step of the usual wedge. [1]</summary>
    private const double DensityPerStep = Exposure.StepWedge.UsualDensityPerStep;

    private const int Fewest = -2;
    private const int Most = 6;

    /// <summary>The usual exposure: a step over the least.</summary>
    public static int Usual => 1 - Fewest;

    /// <summary>Exposure over the least. [1]</summary>
    public double Times => Math.Pow(10, DensityPerStep * Steps);

    public string Words => $"{(Steps == 0 ? "just through" : $"{Steps.ToString("+0;−0", System.Globalization.CultureInfo.InvariantCulture)} {(Math.Abs(Steps) == 1 ? "step" : "steps")}")}, × {Figures.Plain(Times, 2)}";

    /// <summary>From two steps too little to six too much.</summary>
    public static IReadOnlyList<CuredAt> All(StencilResult result)
    {
        // Where nothing comes through nothing is cured through; a thousandth stands in for it.
        var worst = Math.Max(result.Through.Worst.Value, result.ClearDose[0].Value / 1000);
        var far = new EdgeGeometry(result, 0, 0, 1).FarUm;
        return [.. Enumerable.Range(Fewest, Most - Fewest + 1).Select(steps => new CuredAt(steps, DoseOutline.Of(result, worst / Math.Pow(10, DensityPerStep * steps), far)))];
    }
}
