namespace Silkwright.Artwork;

/// <summary>An isolated dot.</summary>
/// <param name="DiameterUm">Diameter of the circle of the same area. [µm]</param>
/// <param name="XMm">Centre from the film's left edge. [mm]</param>
/// <param name="YMm">Centre from the film's top edge. [mm]</param>
public sealed record FilmDot(double DiameterUm, double XMm, double YMm);
