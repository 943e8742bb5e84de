using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>How a choice stands beside the others when all their inputs move inside their intervals.</summary>
/// <param name="Id">The choice.</param>
/// <param name="Difference">How much dearer it is than the one of least expected cost; 0 for that one. [currency]</param>
/// <param name="ChanceBestPercent">Share of the draws in which it costs least. [%]</param>
/// <param name="MeanRegret">What choosing it costs beyond the best of each draw, on average. [currency]</param>
/// <param name="WorstRegret">The most that choosing it costs beyond the best in any draw. [currency]</param>
public sealed record Standing(string Id, Estimate Difference, double ChanceBestPercent, double MeanRegret, double WorstRegret);
