namespace Silkwright.Film.TestFilms;

/// <summary>A drawing of one film in millimetres, with the resolution to draw it at.</summary>
/// <param name="File">Name of the file it makes.</param>
/// <param name="WidthMm">[mm]</param>
/// <param name="HeightMm">[mm]</param>
/// <param name="Dpi">[1/in]</param>
/// <param name="Shapes">Drawn one over the other, the first lowest.</param>
public sealed record FilmRecipe(string File, double WidthMm, double HeightMm, double Dpi, IReadOnlyList<FilmShape> Shapes)
{
    /// <summary>[px]</summary>
    public int WidthPx => (int)Math.Round(WidthMm * Dpi / 25.4);

    /// <summary>[px]</summary>
    public int HeightPx => (int)Math.Round(HeightMm * Dpi / 25.4);
}
