using System.Numerics;
using Silkwright.Artwork;

namespace Silkwright.Film.Measuring.Layout;

/// <summary>Whether a small piece of a film is a register mark, and where its middle is.</summary>
/// <remarks>
/// A mark is drawn in thin lines, looks the same after a quarter turn, and prints from its middle outwards without a gap: a cross, with or
/// without rings. Its middle is its centre of gravity, however it is turned.
/// </remarks>
internal static class MarkShape
{
    /// <summary>Common practice, no source. [mm]</summary>
    private const double LeastMm = 3, MostMm = 20;

    /// <summary>Most of the enclosing square that a mark's lines fill. Our own choice: a cross with a ring in lines of a tenth of its size.</summary>
    private const double MostFilled = 0.35;

    /// <summary>Longer over shorter side.</summary>
    private const double MostOblong = 1.25;

    private const double SameWhenTurned = 0.85;

    /// <summary>How far a turned pixel may lie from one that prints: a thin line set a little askew has steps on one side only. [px, mm]</summary>
    private const double LeastReachPx = 2, LeastReachMm = 0.06;

    /// <summary>Shares of the mark's half size between which every distance from the middle must print.</summary>
    private const double FromMiddle = 0.1, ToRim = 0.9;

    /// <summary>How far a component's centre of gravity may lie from the middle of its box. [share of its size]</summary>
    private const double MostOffMiddle = 0.08;

    /// <summary>Whether a component's size, its share of its box and its centre let it be a mark.</summary>
    public static bool MayBe(in Blob component, double dpi)
    {
        var (width, height) = (component.Width, component.Height);
        var size = Math.Max(width, height);
        return IsMarkSized(width, height, component.Area, 25.4 / dpi)
            && Math.Abs((component.SumX / component.Area) - ((component.Left + component.Right) / 2.0)) <= MostOffMiddle * size
            && Math.Abs((component.SumY / component.Area) - ((component.Top + component.Bottom + 1) / 2.0)) <= MostOffMiddle * size;
    }

    /// <summary>The mark in a rectangle of the film; none where it holds something else.</summary>
    /// <param name="bits">The film.</param>
    /// <param name="left">[px]</param>
    /// <param name="top">[px]</param>
    /// <param name="right">One past the last. [px]</param>
    /// <param name="bottom">One past the last. [px]</param>
    /// <param name="dpi">[1/in]</param>
    public static RegisterMark? In(FilmBitmap bits, int left, int top, int right, int bottom, double dpi)
    {
        var mm = 25.4 / dpi;
        var (area, sumX, sumY) = (0, 0.0, 0.0);
        var box = (Left: right, Top: bottom, Right: left, Bottom: top);
        foreach (var (px, py) in Pixels(bits, left, top, right, bottom))
        {
            (area, sumX, sumY) = (area + 1, sumX + px, sumY + py);
            box = (Math.Min(box.Left, px), Math.Min(box.Top, py), Math.Max(box.Right, px + 1), Math.Max(box.Bottom, py + 1));
        }

        var (width, height) = (box.Right - box.Left, box.Bottom - box.Top);
        var (x, y) = (sumX / area, sumY / area);
        var reach = (int)Math.Ceiling(Math.Max(LeastReachPx, LeastReachMm / mm));
        if (area == 0 || !IsMarkSized(width, height, area, mm) || !IsNear(bits, x, y, reach))
            return null;
        var (half, quarter, size) = (0, 0, Math.Max(width, height));
        var rings = new bool[size];
        foreach (var (px, py) in Pixels(bits, left, top, right, bottom))
        {
            var (dx, dy) = (px - x, py - y);
            half += IsNear(bits, x - dx, y - dy, reach) ? 1 : 0;
            quarter += IsNear(bits, x - dy, y + dx, reach) ? 1 : 0;
            rings[Math.Min(size - 1, (int)Math.Sqrt((dx * dx) + (dy * dy)))] = true;
        }

        var least = SameWhenTurned * area;
        var (from, to) = ((int)(FromMiddle * size / 2), (int)(ToRim * Math.Min(width, height) / 2));
        return half >= least && quarter >= least && !rings.AsSpan(from, to - from).Contains(false)
            ? new RegisterMark((x + 0.5) * mm, (y + 0.5) * mm, size * mm)
            : null;
    }

    private static bool IsMarkSized(int width, int height, long area, double mm)
    {
        var size = Math.Max(width, height);
        return size * mm >= LeastMm && size * mm <= MostMm && size <= MostOblong * Math.Min(width, height) && area <= MostFilled * width * height;
    }

    private static IEnumerable<(int X, int Y)> Pixels(FilmBitmap bits, int left, int top, int right, int bottom)
    {
        for (var y = top; y < bottom; y++)
        {
            for (var word = left >> 6; word << 6 < right; word++)
            {
                for (var rest = bits.Word(y, word) & BitRow.Between(word, left, right); rest != 0; rest &= rest - 1)
                    yield return ((word << 6) + 63 - BitOperations.TrailingZeroCount(rest), y);
            }
        }
    }

    /// <summary>A pixel at the place or within reach of it prints.</summary>
    private static bool IsNear(FilmBitmap bits, double x, double y, int reach)
    {
        var (column, row) = ((int)Math.Round(x), (int)Math.Round(y));
        for (var j = Math.Max(0, row - reach); j <= Math.Min(bits.Height - 1, row + reach); j++)
        {
            for (var i = Math.Max(0, column - reach); i <= Math.Min(bits.Width - 1, column + reach); i++)
            {
                if (bits[i, j])
                    return true;
            }
        }

        return false;
    }
}
