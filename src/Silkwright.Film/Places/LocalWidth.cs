using Silkwright.Film.Readers;

namespace Silkwright.Film.Places;

/// <summary>How wide image or gap is at one pixel: the largest disc whose opening still covers it. docs/engines/film.md, "Local width".</summary>
/// <param name="IsImage">The pixel prints; else it is gap.</param>
/// <param name="WidthPx">Diameter of that disc, at most <see cref="MostPx"/>. [px]</param>
/// <param name="CentreX">Its middle; the first pixel's centre is at 0.5. [px]</param>
/// <param name="CentreY">Its middle. [px]</param>
public sealed record LocalWidth(bool IsImage, int WidthPx, double CentreX, double CentreY)
{
    /// <summary>Widest disc that is tried; where it fits, the place is at least so wide. [px]</summary>
    public const int MostPx = FilmLimits.WidestPartPx;

    /// <summary>How far from a pixel others can matter to its width: the far side of the widest disc, and the pixel beyond. [px]</summary>
    public const int ReachPx = MostPx + 1;

    /// <summary>Where the widest disc fits, how much wider it is there is not looked for.</summary>
    public bool IsWidest => WidthPx >= MostPx;

    /// <summary>The width at a pixel of a film, or of a window that reaches <see cref="ReachPx"/> beyond it wherever the film does.</summary>
    /// <remarks>
    /// In half pixels from a corner every distance squared is a whole number: a pixel lies in the disc of w about c if d² ≤ w², and the disc fits where the nearest
    /// pixel of the other kind, or off the film, has d² > w². So the widest disc about each centre follows from one distance, and of those that hold the pixel
    /// the widest is the answer: discs of neighbouring w are not nested, and none need be tried.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The pixel is not on the bitmap.</exception>
    public static LocalWidth At(PackedBitmap film, int x, int y)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentOutOfRangeException.ThrowIfNegative(x);
        ArgumentOutOfRangeException.ThrowIfNegative(y);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(x, film.Width);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(y, film.Height);

        // About a pixel's centre lie the discs of odd diameter, about a corner the even ones.
        var odd = Widest(film, x, y, 1);
        var even = Widest(film, x, y, 0);
        var best = even.Width > odd.Width ? even : odd;
        return new LocalWidth(film[x, y], best.Width, best.X / 2.0, best.Y / 2.0);
    }

    /// <summary>The widest disc of one parity that fits and holds the pixel, with its middle in half pixels; of equals the nearest.</summary>
    private static (int Width, int X, int Y, int Away) Widest(PackedBitmap film, int x, int y, int parity)
    {
        var near = new NearestOther(film, x, y, parity);
        var (best, most) = ((Width: 0, X: 0, Y: 0, Away: 0), MostPx - ((MostPx ^ parity) & 1));
        for (var cy = y - (MostPx / 2); cy <= y + (MostPx / 2); cy++)
        {
            for (var cx = x - (MostPx / 2); cx <= x + (MostPx / 2); cx++)
            {
                if (cx < 0 || cy < 0 || cx >= film.Width || cy >= film.Height)
                    continue;
                var (px, py) = ((2 * cx) + parity, (2 * cy) + parity);
                var away = Square(px - (2 * x) - 1) + Square(py - (2 * y) - 1);
                if (away > Square(most))
                    continue;
                var enough = Math.Max(away, Square(best.Width));
                var other = near.SquaredFrom(cx, cy, enough);
                if (other <= enough)
                    continue;
                var width = (int)Math.Sqrt(other - 1);
                width = Math.Min(most, width - ((width ^ parity) & 1));
                if (Square(width) >= away && (width > best.Width || away < best.Away))
                    best = (width, px, py, away);
            }
        }

        return best;
    }

    private static int Square(int value) => value * value;
}
