namespace Silkwright.Statistics.Mixed;

/// <summary>What is believed of the residual variance before the rows are seen: as much as so many rows of that variance would tell.</summary>
/// <param name="Variance">Above 0.</param>
/// <param name="Freedom">Rows' worth. Above 0.</param>
public sealed record ResidualPrior(double Variance, double Freedom);
