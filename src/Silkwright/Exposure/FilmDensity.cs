namespace Silkwright.Exposure;

/// <summary>How well a film stops the stencil-making light, and how well it lets it through.</summary>
/// <param name="DMaxUv">UV density of the black. [1]</param>
/// <param name="DMinUv">UV density of the clear. [1]</param>
public sealed record FilmDensity(double DMaxUv, double DMinUv);
