namespace Silkwright.Plans;

/// <summary>A measurement worth making.</summary>
/// <param name="What">What to measure and how, in one sentence.</param>
/// <param name="Changes">Which number it would narrow.</param>
/// <param name="Minutes">How long it takes. [min]</param>
public sealed record MeasureNext(string What, string Changes, double Minutes)
{
    /// <summary>By how much the intervals that it tells of are expected to shrink: their widths as shares of their values, all colours of the job added up. [1], 0 or more</summary>
    public double Narrows { get; init; }

    /// <summary>The same by minute of measuring. [1/min]</summary>
    public double NarrowsPerMinute => Narrows / Minutes;

    /// <summary>What it brings, in a sentence.</summary>
    public string Because { get; init; } = "";

    /// <summary>The others weighed, the best first.</summary>
    public IReadOnlyList<MeasureNext> Others { get; init; } = [];
}
