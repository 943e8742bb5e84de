namespace Silkwright.Film.TestFilms;

/// <summary>Lettering in the program's own typeface.</summary>
/// <param name="Text">Latin letters and figures.</param>
/// <param name="XMm">Middle of the line. [mm]</param>
/// <param name="YMm">Foot of the letters. [mm]</param>
/// <param name="SizeMm">Type size; capitals are about 0.7 of it. [mm]</param>
/// <param name="Bold">Heavy letters.</param>
/// <param name="RadiusMm">Sets the line on a circle round (x, y): above 0 along its top, below 0 along its bottom. [mm]</param>
public sealed record FilmLettering(string Text, double XMm, double YMm, double SizeMm, bool Bold = true, double RadiusMm = 0);
