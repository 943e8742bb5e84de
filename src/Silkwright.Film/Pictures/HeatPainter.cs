using Silkwright.Film.Measuring;
using SkiaSharp;

namespace Silkwright.Film.Pictures;

/// <summary>Paints a film's narrow parts small: a pixel is the mean of a square of the film, its colours stronger than their shares by the square root, so that a hairline shows.</summary>
internal sealed class HeatPainter(HeatParts parts, HeatColours colours, int longestPx)
{
    private const int Narrower = 0, GapNarrower = 1, Near = 2, GapNear = 3, Ink = 4, Kinds = 5;

    private readonly SKColor[] painted = colours.Painted;

    /// <summary>Side of the square of film in a pixel of the picture. [px]</summary>
    public int Box { get; } = (Math.Max(parts.Film.Width, parts.Film.Height) + longestPx - 1) / longestPx;

    /// <summary>The picture, and how much of the film is of each kind. [px]</summary>
    public (SKBitmap Picture, long[] Areas) Paint(CancellationToken cancel)
    {
        var film = parts.Film;
        var picture = new SKBitmap((film.Width + Box - 1) / Box, (film.Height + Box - 1) / Box, SKColorType.Rgba8888, SKAlphaType.Opaque);
        var areas = new long[Kinds];
        _ = Parallel.For(0, picture.Height, new ParallelOptions { CancellationToken = cancel }, line =>
        {
            var counts = CountLine(line, picture.Width);
            var rows = Math.Min(film.Height, (line + 1) * Box) - (line * Box);
            var pixels = picture.GetPixelSpan()[(line * picture.RowBytes)..];
            for (var x = 0; x < picture.Width; x++)
            {
                var colour = Mix(counts.AsSpan(x * Kinds, Kinds), rows * (Math.Min(film.Width, (x + 1) * Box) - (x * Box)));
                (pixels[4 * x], pixels[(4 * x) + 1], pixels[(4 * x) + 2], pixels[(4 * x) + 3]) = (colour.Red, colour.Green, colour.Blue, 255);
                for (var kind = 0; kind < Kinds; kind++)
                    _ = Interlocked.Add(ref areas[kind], counts[(x * Kinds) + kind]);
            }
        });
        return (picture, areas);
    }

    /// <summary>How many film pixels of each kind lie in each pixel of a line of the picture.</summary>
    private int[] CountLine(int line, int width)
    {
        var film = parts.Film;
        var counts = new int[width * Kinds];
        var (image, thin, wide) = (new ulong[film.Stride], new ulong[film.Stride], new ulong[film.Stride]);
        for (var y = line * Box; y < Math.Min(film.Height, (line + 1) * Box); y++)
        {
            film.Read(y, 0, image);
            AddPair(parts.Narrower, parts.Near, y, 0, Narrower, Near);
            Add(image, Ink);
            AddPair(parts.GapNarrower, parts.GapNear, y, ulong.MaxValue, GapNarrower, GapNear);
        }

        return counts;

        void AddPair(FilmBitmap narrower, FilmBitmap near, int y, ulong turn, int ofNarrower, int ofNear)
        {
            var cell = y / FilmBitmap.CellRows;
            if (narrower.IsBlank(cell) && near.IsBlank(cell))
                return;
            narrower.Read(y, 0, thin);
            near.Read(y, 0, wide);
            for (var word = 0; word < image.Length; word++)
            {
                thin[word] &= image[word] ^ turn;
                wide[word] &= (image[word] ^ turn) & ~thin[word];
            }

            Add(thin, ofNarrower);
            Add(wide, ofNear);
        }

        void Add(ulong[] row, int kind)
        {
            for (var x = 0; x < width; x++)
                counts[(x * Kinds) + kind] += BitRow.Count(row, x * Box, Math.Min(film.Width, (x + 1) * Box));
        }
    }

    private SKColor Mix(ReadOnlySpan<int> counts, int area)
    {
        Span<double> shares = stackalloc double[Kinds + 1];
        var rest = Share(shares, Narrower, GapNarrower, counts, area, 1);
        rest = Share(shares, Near, GapNear, counts, area, rest);
        shares[Ink] = Math.Min(rest, (double)(counts[Ink] - counts[Narrower] - counts[Near]) / area);
        shares[^1] = rest - shares[Ink];
        var (red, green, blue) = (0.0, 0.0, 0.0);
        for (var kind = 0; kind < shares.Length; kind++)
        {
            red += shares[kind] * painted[kind].Red;
            green += shares[kind] * painted[kind].Green;
            blue += shares[kind] * painted[kind].Blue;
        }

        return new SKColor(Byte(red), Byte(green), Byte(blue));

        static byte Byte(double value) => (byte)Math.Clamp(Math.Round(value), 0, 255);
    }

    /// <summary>Gives two kinds the square roots of their shares, or what is left where that is less; tells what is left then.</summary>
    private static double Share(Span<double> shares, int one, int other, ReadOnlySpan<int> counts, int area, double left)
    {
        (shares[one], shares[other]) = (Math.Sqrt((double)counts[one] / area), Math.Sqrt((double)counts[other] / area));
        if (shares[one] + shares[other] is var both && both > left)
            (shares[one], shares[other]) = (shares[one] * left / both, shares[other] * left / both);
        return Math.Max(0, left - shares[one] - shares[other]);
    }
}
