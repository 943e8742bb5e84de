using System.Globalization;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using SkiaSharp;

namespace Silkwright.Film.Pictures;

/// <summary>A film, small, with what is narrower than a mesh prints whole in colour: docs/engines/film.md, "Drawings".</summary>
/// <param name="Png">The picture.</param>
/// <param name="WidthPx">[px]</param>
/// <param name="HeightPx">[px]</param>
/// <param name="MmPerPx">Film in a pixel of the picture. [mm]</param>
/// <param name="HeldUm">Narrowest line that the mesh prints whole. [µm]</param>
/// <param name="NarrowerPercent">Share of what prints that is narrower. [%]</param>
/// <param name="NearPercent">Share that is no narrower, but by less than half. [%]</param>
public sealed record FilmHeat(byte[] Png, int WidthPx, int HeightPx, double MmPerPx, double HeldUm, double NarrowerPercent, double NearPercent)
{
    /// <summary>What is wider than held by less than this is near the edge of what prints. Our own judgement. [1]</summary>
    public const double NearFactor = 1.5;

    /// <summary>Room below the film for the words, as a share of its width. [1]</summary>
    private const double FootShare = 0.06;

    private static readonly SKColor Ink = new(70, 66, 60);
    private static readonly SKColor Near = new(224, 160, 20);
    private static readonly SKColor Narrower = new(200, 24, 12);

    /// <summary>Draws a film.</summary>
    /// <param name="path">The film.</param>
    /// <param name="options">What the file cannot say.</param>
    /// <param name="heldUm">Narrowest line that the mesh prints whole. [µm], above 0.</param>
    /// <param name="longestPx">Longest side of the picture. [px]</param>
    /// <param name="cancel">Stops the work.</param>
    /// <remarks>
    /// Narrower than w is what opening by the disc of w takes away, specks left out. A width beyond the largest disc is taken as that. A pixel of the picture
    /// is the mean of a square of the film; colour is stronger than its share, by the square root, so that a hairline shows.
    /// </remarks>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The film cannot be read.</exception>
    public static FilmHeat Of(string path, FilmOptions options, double heldUm, int longestPx, CancellationToken cancel)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(heldUm);
        ArgumentOutOfRangeException.ThrowIfLessThan(longestPx, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(longestPx, FilmPreview.LongestPicturePx);
        using var film = FilmFile.Open(path, options);
        var bits = new FilmBitmap(film.Header.WidthPx, film.Header.HeightPx);
        _ = FilmComponents.Read(film, bits, null, cancel);
        var tiles = new OpeningTiles(bits, new FilmCells(bits), false, cancel);
        var (narrower, near) = (new FilmBitmap(bits.Width, bits.Height), new FilmBitmap(bits.Width, bits.Height));
        tiles.Fill(Disc(heldUm), null, null, narrower);
        tiles.Fill(Disc(heldUm * NearFactor), null, null, near);
        return Draw(bits, narrower, near, film.Header.Dpi, heldUm, longestPx, cancel);

        int Disc(double um) => Math.Clamp((int)Math.Ceiling(um * film.Header.Dpi / 25_400), 2, DigitalDisc.MostDiameter);
    }

    /// <summary>The picture in the film's millimetres, with what its colours mean.</summary>
    /// <param name="mesh">As labels name it.</param>
    public string Svg(string mesh)
    {
        var (width, height) = (WidthPx * MmPerPx, HeightPx * MmPerPx);
        var foot = width * FootShare;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{width:0.###}mm" height="{height + foot:0.###}mm" viewBox="0 0 {width:0.###} {height + foot:0.###}" font-family="sans-serif" font-size="{foot * 0.3:0.###}">
              <title>A film against mesh {mesh}: {NarrowerPercent:0.#} % of what prints is narrower than it prints whole.</title>
              <image width="{width:0.###}" height="{height:0.###}" href="data:image/png;base64,{Convert.ToBase64String(Png)}" />
              <rect x="0" y="{height + (foot * 0.15):0.###}" width="{foot * 0.3:0.###}" height="{foot * 0.3:0.###}" fill="{Hex(Narrower)}" />
              <text x="{foot * 0.45:0.###}" y="{height + (foot * 0.4):0.###}">narrower than {HeldUm:0} µm, the finest line that mesh {mesh} prints whole: {NarrowerPercent:0.##} % of what prints</text>
              <rect x="0" y="{height + (foot * 0.6):0.###}" width="{foot * 0.3:0.###}" height="{foot * 0.3:0.###}" fill="{Hex(Near)}" />
              <text x="{foot * 0.45:0.###}" y="{height + (foot * 0.85):0.###}">up to {HeldUm * NearFactor:0} µm: {NearPercent:0.##} %</text>
            </svg>
            """);
    }

    private static string Hex(SKColor colour) => $"#{colour.Red:x2}{colour.Green:x2}{colour.Blue:x2}";

    private static FilmHeat Draw(
        FilmBitmap bits, FilmBitmap narrower, FilmBitmap near, double dpi, double heldUm, int longestPx, CancellationToken cancel)
    {
        var box = (Math.Max(bits.Width, bits.Height) + longestPx - 1) / longestPx;
        using var picture = new SKBitmap((bits.Width + box - 1) / box, (bits.Height + box - 1) / box, SKColorType.Rgba8888, SKAlphaType.Opaque);
        var sums = new (long Image, long Near, long Narrower)[picture.Height];
        _ = Parallel.For(0, picture.Height, new ParallelOptions { CancellationToken = cancel }, line =>
        {
            var row = new ulong[bits.Stride];
            var (image, wide, thin) = (new int[picture.Width], new int[picture.Width], new int[picture.Width]);
            var rows = Math.Min(bits.Height, (line + 1) * box) - (line * box);
            for (var y = line * box; y < (line * box) + rows; y++)
            {
                Add(bits, y, image);
                Add(near, y, wide);
                Add(narrower, y, thin);
            }

            var pixels = picture.GetPixelSpan()[(line * picture.RowBytes)..];
            for (var x = 0; x < picture.Width; x++)
            {
                // What the larger disc takes away holds, but for a pixel here and there, what the smaller does.
                var nearOnly = Math.Max(0, wide[x] - thin[x]);
                sums[line] = (sums[line].Image + image[x], sums[line].Near + nearOnly, sums[line].Narrower + thin[x]);
                var colour = Mix(image[x], nearOnly, thin[x], rows * (Math.Min(bits.Width, (x + 1) * box) - (x * box)));
                (pixels[4 * x], pixels[(4 * x) + 1], pixels[(4 * x) + 2], pixels[(4 * x) + 3]) = (colour.Red, colour.Green, colour.Blue, 255);
            }

            void Add(FilmBitmap of, int y, int[] into)
            {
                if (of.IsBlank(y / FilmBitmap.CellRows))
                    return;
                of.Read(y, 0, row);
                for (var x = 0; x < into.Length; x++)
                    into[x] += BitRow.Count(row, x * box, Math.Min(bits.Width, (x + 1) * box));
            }
        });
        using var data = picture.Encode(SKEncodedImageFormat.Png, 100);
        var (all, justNear, tooThin) = (sums.Sum(s => s.Image), sums.Sum(s => s.Near), sums.Sum(s => s.Narrower));
        return new FilmHeat(data.ToArray(), picture.Width, picture.Height, box * 25.4 / dpi, heldUm, Percent(tooThin), Percent(justNear));

        double Percent(long part) => all == 0 ? 0 : 100.0 * part / all;
    }

    private static SKColor Mix(int image, int near, int narrower, int area)
    {
        var (red, amber) = (Math.Sqrt((double)narrower / area), Math.Sqrt((double)near / area));
        amber = Math.Min(amber, 1 - red);
        var ink = Math.Min(Math.Max(0, (double)(image - near - narrower) / area), 1 - red - amber);
        var paper = 1 - red - amber - ink;
        return new SKColor(Blend(c => c.Red), Blend(c => c.Green), Blend(c => c.Blue));

        byte Blend(Func<SKColor, byte> of) => (byte)Math.Clamp(Math.Round((red * of(Narrower)) + (amber * of(Near)) + (ink * of(Ink)) + (paper * 255)), 0, 255);
    }
}
