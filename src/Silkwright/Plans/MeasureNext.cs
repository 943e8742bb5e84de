namespace Silkwright.Plans;

/// <summary>The one measurement worth most.</summary>
/// <param name="What">What to measure and how, in one sentence.</param>
/// <param name="Changes">Which number it would narrow.</param>
/// <param name="Minutes">How long it takes. [min]</param>
public sealed record MeasureNext(string What, string Changes, double Minutes);
