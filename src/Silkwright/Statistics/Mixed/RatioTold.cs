namespace Silkwright.Statistics.Mixed;

/// <summary>What rows alone tell of the logarithm of a term's ratio, as a normal likelihood about its best value (Laplace).</summary>
/// <param name="Precision">One over its variance. [1], 0 or more.</param>
/// <param name="Pull">The precision times its best value; with a belief added, precisions and pulls add up to the best value of both.</param>
public readonly record struct RatioTold(double Precision, double Pull);
