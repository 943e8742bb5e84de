namespace Silkwright.Statistics.Mixed;

/// <summary>One row that is added to a fit.</summary>
/// <param name="Response">y.</param>
/// <param name="Fixed">Its fixed columns.</param>
/// <param name="Random">For each term its level, the count of levels for a new one, and its columns.</param>
/// <param name="Weight">Its residual has the residual variance divided by it. [1], above 0.</param>
public sealed record MixedRow(double Response, IReadOnlyList<double> Fixed, IReadOnlyList<(int Level, IReadOnlyList<double> Columns)> Random, double Weight = 1);
