using SkiaSharp;

namespace Silkwright.Film.TestFilms;

/// <summary>Turns shapes into outlines in pixels.</summary>
internal static class ShapeOutline
{
    /// <summary>The outline of a shape, filled area only.</summary>
    /// <exception cref="FormatException">The path data cannot be read.</exception>
    public static SKPath InPixels(FilmShape shape, double pxPerMm)
    {
        using var drawn = shape.Lettering is { } letters ? Letters(letters) : Parse(shape.Outline ?? string.Empty);
        var filled = shape.LineMm is { } line ? Stroke(drawn, line) : new SKPath(drawn);
        var (degrees, x, y) = shape.Placed;
        var toPixels = SKMatrix.CreateScale((float)pxPerMm, (float)pxPerMm)
            .PreConcat(SKMatrix.CreateTranslation((float)x, (float)y))
            .PreConcat(SKMatrix.CreateRotationDegrees((float)degrees));
        filled.Transform(toPixels);
        return filled;
    }

    public static SKPath Parse(string data) =>
        SKPath.ParseSvgPathData(data) ?? throw new FormatException("The path data cannot be read.");

    private static SKPath Stroke(SKPath path, double widthMm)
    {
        using var paint = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = (float)widthMm, StrokeJoin = SKStrokeJoin.Round };

        // The scale tells Skia how finely to divide curves: a thousandth of a millimetre.
        return paint.GetFillPath(path, 1000f) ?? new SKPath();
    }

    private static SKPath Letters(FilmLettering letters)
    {
        using var font = new SKFont(FilmTypeface.Of(letters.Bold), (float)letters.SizeMm) { Subpixel = true, Hinting = SKFontHinting.None };
        if (letters.RadiusMm == 0)
        {
            var width = font.MeasureText(letters.Text);
            return font.GetTextPath(letters.Text, new SKPoint((float)letters.XMm - (width / 2), (float)letters.YMm));
        }

        var r = Math.Abs(letters.RadiusMm);
        var sweep = letters.RadiusMm > 0 ? 1 : 0;
        using var circle = Parse(FormattableString.Invariant(
            $"M{letters.XMm - r} {letters.YMm}A{r} {r} 0 0 {sweep} {letters.XMm + r} {letters.YMm}"));
        return font.GetTextPathOnPath(letters.Text, circle, SKTextAlign.Center, SKPoint.Empty);
    }
}
