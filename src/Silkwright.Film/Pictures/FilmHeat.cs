using System.Globalization;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Plans;
using SkiaSharp;

namespace Silkwright.Film.Pictures;

/// <summary>A film, small, with what is narrower than mesh and stencil hold in colour: docs/engines/film.md, "Drawings".</summary>
/// <param name="Png">The picture.</param>
/// <param name="WidthPx">[px]</param>
/// <param name="HeightPx">[px]</param>
/// <param name="MmPerPx">Film in a pixel of the picture. [mm]</param>
/// <param name="Held">What it is held against.</param>
/// <param name="NarrowerPercent">Share of what prints that is narrower. [%]</param>
/// <param name="NearPercent">Share that is no narrower, but by less than half. [%]</param>
/// <param name="GapNarrowerMm2">Gap that is narrower. [mm²]</param>
/// <param name="GapNearMm2">Gap that is no narrower, but by less than half. [mm²]</param>
public sealed record FilmHeat(
    byte[] Png, int WidthPx, int HeightPx, double MmPerPx, HeldWidths Held, double NarrowerPercent, double NearPercent, double GapNarrowerMm2, double GapNearMm2)
{
    /// <summary>What is wider than held by less than this is near the edge of what prints. [1]</summary>
    public const double NearFactor = HeatParts.NearFactor;

    /// <summary>A line of words below the film, as a share of its width. [1]</summary>
    private const double LineShare = 0.027;

    /// <summary>Draws a film.</summary>
    /// <param name="path">The film.</param>
    /// <param name="options">What the file cannot say.</param>
    /// <param name="held">What mesh and stencil hold, every width above 0.</param>
    /// <param name="longestPx">Longest side of the picture. [px]</param>
    /// <param name="colours">What it is painted with.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <remarks>
    /// Narrower than w is what opening by the disc of w takes away, specks left out; within halftones and a period about them it is the dots and holes of a circle's area below the dot that is
    /// held. A width beyond the largest disc is taken as that.
    /// </remarks>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The film cannot be read.</exception>
    public static FilmHeat Of(string path, FilmOptions options, HeldWidths held, int longestPx, HeatColours colours, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(held);
        ArgumentNullException.ThrowIfNull(colours);
        foreach (var um in (ReadOnlySpan<double>)[held.LineUm, held.GapUm, held.DotUm, held.HoleUm])
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(um, nameof(held));
        ArgumentOutOfRangeException.ThrowIfLessThan(longestPx, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(longestPx, FilmPreview.LongestPicturePx);
        using var film = FilmFile.Open(path, options);
        using var scratch = new ScratchFile();
        var painter = new HeatPainter(HeatParts.Of(film, held, scratch, cancel), colours, longestPx);
        var (picture, areas) = painter.Paint(cancel);
        using var drawn = picture;
        using var data = picture.Encode(SKEncodedImageFormat.Png, 100);
        var mmPerPx = 25.4 / film.Header.Dpi;
        var (narrower, gapNarrower, near, gapNear, image) = (areas[0], areas[1], areas[2], areas[3], areas[4]);
        return new FilmHeat(
            data.ToArray(), picture.Width, picture.Height, painter.Box * mmPerPx, held,
            Percent(narrower), Percent(near), gapNarrower * mmPerPx * mmPerPx, gapNear * mmPerPx * mmPerPx);

        double Percent(long part) => image == 0 ? 0 : 100.0 * part / image;
    }

    /// <summary>The picture in the film's millimetres, with what its colours mean.</summary>
    /// <param name="mesh">As labels name it.</param>
    /// <param name="colours">What it was painted with.</param>
    public string Svg(string mesh, HeatColours colours)
    {
        ArgumentNullException.ThrowIfNull(colours);
        var (width, height, line) = (WidthPx * MmPerPx, HeightPx * MmPerPx, WidthPx * MmPerPx * LineShare);
        (string Colour, string Words)[] legend =
        [
            (colours.Narrower, Say($"prints and is narrower than {Held.LineUm:0} µm, the finest line that mesh {mesh} prints whole (dots: {Held.DotUm:0} µm): {NarrowerPercent:0.##} % of what prints")),
            (colours.Near, Say($"prints and is up to {Held.LineUm * NearFactor:0} µm wide: {NearPercent:0.##} %")),
            (colours.GapNarrower, Say($"gap narrower than {Held.GapUm:0} µm (holes: {Held.HoleUm:0} µm): {GapNarrowerMm2:0.##} mm²")),
            (colours.GapNear, Say($"gap up to {Held.GapUm * NearFactor:0} µm wide: {GapNearMm2:0.##} mm²")),
        ];
        var words = string.Concat(legend.Select((entry, i) => Say(
            $"""
              <rect x="0" y="{height + (line * (i + 0.3)):0.###}" width="{line * 0.6:0.###}" height="{line * 0.6:0.###}" fill="{entry.Colour}" />
              <text x="{line * 0.9:0.###}" y="{height + (line * (i + 0.8)):0.###}">{entry.Words}</text>

            """)));
        return Say(
            $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{width:0.###}mm" height="{height + (line * 4.4):0.###}mm" viewBox="0 0 {width:0.###} {height + (line * 4.4):0.###}" font-family="sans-serif" font-size="{line * 0.6:0.###}">
              <title>A film against mesh {mesh}: {NarrowerPercent:0.#} % of what prints is narrower than it prints whole, and {GapNarrowerMm2:0.#} mm² of its gaps.</title>
              <image width="{width:0.###}" height="{height:0.###}" href="data:image/png;base64,{Convert.ToBase64String(Png)}" />
            {words}</svg>
            """);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
