namespace Silkwright.Gauging;

/// <summary>A line of an analysis of variance.</summary>
/// <param name="SumOfSquares">[µm²]</param>
/// <param name="Freedom">Degrees of freedom.</param>
/// <param name="F">Against the line it is tested by; none where there is none.</param>
/// <param name="P">Chance of such an F or more, were there nothing. [1]</param>
public sealed record AnovaRow(double SumOfSquares, int Freedom, double? F = null, double? P = null)
{
    public double MeanSquare => Freedom > 0 ? SumOfSquares / Freedom : 0;
}
