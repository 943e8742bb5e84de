using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>A pot life as a source tells it at one temperature.</summary>
/// <param name="Celsius">Kept at. [°C]</param>
/// <param name="Days">Works for, once mixed. [d], above 0.</param>
/// <param name="Ground">Where it comes from.</param>
public sealed record ToldPotLife(double Celsius, double Days, Ground Ground);
