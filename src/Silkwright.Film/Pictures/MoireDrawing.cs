using System.Globalization;
using Silkwright.Moire;
using SkiaSharp;

namespace Silkwright.Film.Pictures;

/// <summary>A halftone laid on a mesh as a file: PNG, or SVG to scale with a measure beneath.</summary>
public static class MoireDrawing
{
    /// <summary>Pixels a drawing for people has.</summary>
    public const int WidthPx = 900;

    public const int HeightPx = 560;

    /// <summary>Room for the measure and its words, as a share of the width. [1]</summary>
    private const double FootShare = 0.06;

    public static byte[] Png(MoirePicture picture)
    {
        using var bitmap = new SKBitmap(picture.WidthPx, picture.HeightPx, SKColorType.Gray8, SKAlphaType.Opaque);
        for (var y = 0; y < picture.HeightPx; y++)
            picture.Grey.AsSpan(y * picture.WidthPx, picture.WidthPx).CopyTo(bitmap.GetPixelSpan()[(y * bitmap.RowBytes)..]);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>The picture in its own millimetres, with the plainest beat's period as a measure below it.</summary>
    public static string Svg(MoirePicture picture, MoirePattern? plainest)
    {
        var (width, height) = (picture.WidthMm, picture.HeightPx * picture.MmPerPx);
        var foot = width * FootShare;
        var fits = plainest?.Vector.PeriodMm < width / 2;
        var measure = fits ? plainest!.Vector.PeriodMm : 1;
        var words = fits
            ? string.Create(CultureInfo.InvariantCulture, $"{measure:0.00} mm: the plainest beat, towards {plainest!.Vector.AngleDegrees:0.0}°")
            : "1 mm";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{width:0.###}mm" height="{height + foot:0.###}mm" viewBox="0 0 {width:0.###} {height + foot:0.###}">
              <title>Halftone on mesh, to scale. {words}.</title>
              <image width="{width:0.###}" height="{height:0.###}" href="data:image/png;base64,{Convert.ToBase64String(Png(picture))}" />
              <path d="M{foot / 4:0.###} {height + (foot / 4):0.###}v{foot / 4:0.###}h{measure:0.####}v-{foot / 4:0.###}" fill="none" stroke="#111" stroke-width="{foot / 20:0.###}" />
              <text x="{measure + (foot / 2):0.###}" y="{height + (foot * 0.7):0.###}" font-size="{foot / 2:0.###}" font-family="sans-serif">{words}</text>
            </svg>
            """);
    }
}
