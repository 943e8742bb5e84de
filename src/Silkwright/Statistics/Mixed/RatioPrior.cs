namespace Silkwright.Statistics.Mixed;

/// <summary>What is believed, before the rows are seen, of how much a term's levels differ: their standard deviation over the residual's.</summary>
/// <param name="Ratio">Most likely. [1], above 0.</param>
/// <param name="Spread">Standard deviation of the ratio's logarithm; none: the ratio is known.</param>
public sealed record RatioPrior(double Ratio, double? Spread = null);
