namespace Silkwright.Statistics.Mixed;

/// <summary>What rows tell of some effects once all else in them is summed out: all that can be learnt of those effects without the rows.</summary>
/// <param name="Effects">Each by its term and level; of terms whose levels have one effect.</param>
/// <param name="Precision">Inverse covariance of the effects that the rows alone tell, times the residual variance; 0 where they tell nothing. Row by row, symmetric.</param>
/// <param name="Pull">The precision times the effects that the rows alone tell.</param>
/// <param name="Squares">Squares of the response over the rows' own covariance, residual variance 1.</param>
/// <param name="Rows">How many rows.</param>
/// <remarks>Normal likelihoods multiply, so that those of rows that share no other effect are added up: an exact sum where the spreads' ratios are the same.</remarks>
public sealed record EffectInformation(IReadOnlyList<(int Term, int Level)> Effects, IReadOnlyList<double> Precision, IReadOnlyList<double> Pull, double Squares, double Rows);
