namespace Silkwright.Exposure;

/// <summary>What light does in a stencil, beside the one that the usual exposures speak of.</summary>
/// <param name="Asks">Logarithm of the light behind a thread on the usual stencil over that on this one: how much more exposure this one asks.</param>
/// <param name="Surplus">How much more, in logarithms, the print side of this stencil has over the worst place behind a thread than the usual one has.</param>
/// <param name="Edge">The film's edge as the fitted light has it.</param>
internal readonly record struct LightOutcome(double Asks, double Surplus, EdgeCurve Edge);
