namespace Silkwright.Artwork;

/// <summary>A spot on a film.</summary>
/// <param name="XMm">From the film's left edge. [mm]</param>
/// <param name="YMm">From the film's top edge. [mm]</param>
/// <param name="WidthUm">Local width there. [µm]</param>
public sealed record FilmPlace(double XMm, double YMm, double WidthUm);
