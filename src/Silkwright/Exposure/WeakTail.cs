namespace Silkwright.Exposure;

/// <summary>Strips of one day from which on the wedge shows fewer steps than those with less light would have it: so look strips that were not dry.</summary>
/// <param name="From">The least amount among them.</param>
/// <param name="Steps">How many steps fewer. [1]</param>
internal sealed record WeakTail(double From, double Steps)
{
    /// <summary>Readers differ by one step: more than one and a half, over strips on both sides, is none of it. Common practice.</summary>
    private const double LeastSteps = 1.5;

    /// <summary>One strip may have been misread; two on a side are the least that tell a level.</summary>
    private const int LeastStrips = 2;

    /// <summary>The split that stands out most; none where no split does.</summary>
    internal static WeakTail? Of(IEnumerable<StepTest> day)
    {
        (double Amount, double Over)[] strips = [.. day.Where(strip => strip.SolidStep is not null).OrderBy(strip => strip.Amount)
            .Select(strip => (strip.Amount, strip.SolidStep!.Value - (Math.Log(strip.Amount) / Math.Log(StepWedge.FactorPerStep()))))];
        return Enumerable.Range(LeastStrips, Math.Max(0, strips.Length - (2 * LeastStrips) + 1))
            .Where(at => strips[at].Amount > strips[at - 1].Amount)
            .Select(at => (Tail: new WeakTail(strips[at].Amount, Median(strips[..at]) - Median(strips[at..])), Weight: at * (strips.Length - at)))
            .Where(split => split.Tail.Steps >= LeastSteps)
            .OrderByDescending(split => split.Tail.Steps * Math.Sqrt(split.Weight)).Select(split => split.Tail).FirstOrDefault();
    }

    private static double Median((double Amount, double Over)[] strips)
    {
        double[] sorted = [.. strips.Select(strip => strip.Over).Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
