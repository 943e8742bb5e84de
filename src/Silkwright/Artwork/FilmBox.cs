namespace Silkwright.Artwork;

/// <summary>The least upright rectangle about something on a film, from the film's top left.</summary>
/// <param name="LeftMm">[mm]</param>
/// <param name="TopMm">[mm]</param>
/// <param name="WidthMm">[mm], above 0.</param>
/// <param name="HeightMm">[mm], above 0.</param>
public sealed record FilmBox(double LeftMm, double TopMm, double WidthMm, double HeightMm);
