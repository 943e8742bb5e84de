using Silkwright.Estimates;

namespace Silkwright.Coating.Learning;

/// <summary>Strokes that may reach a wanted thickness, in one pair of hands.</summary>
/// <param name="Coat">Who lays what with what, in which strokes.</param>
/// <param name="MeanUm">Mean thickness of such coats. [µm]</param>
/// <param name="ChancePercent">Chance that a screen coated so lies within the tolerance, the gauge's own error left out. [%]</param>
/// <param name="Effort">Strokes, each face coat counted for the drying before it.</param>
public sealed record AimedCoat(CoatObservation Coat, Estimate MeanUm, double ChancePercent, int Effort);
