namespace Silkwright.Film.Tests.Measuring;

/// <summary>Opening by a disc and the contract's rule, written as plainly as they are said: the oracle of the packed kernels.</summary>
internal static class PlainOpening
{
    /// <summary>Offsets of a disc's pixels from the corner of its box: pixels whose centres lie within w/2 of the disc's centre.</summary>
    public static List<(int X, int Y)> Disc(int w)
    {
        var centre = w / 2.0;
        var pixels = new List<(int X, int Y)>();
        for (var y = 0; y < w; y++)
        {
            for (var x = 0; x < w; x++)
            {
                if (Math.Pow(x + 0.5 - centre, 2) + Math.Pow(y + 0.5 - centre, 2) <= (centre * centre) + 1e-9)
                    pixels.Add((x, y));
            }
        }

        return pixels;
    }

    public static bool[,] Residue(bool[,] pixels, bool value, int w)
    {
        var (width, height) = (pixels.GetLength(0), pixels.GetLength(1));
        var opened = new bool[width, height];
        var disc = Disc(w);
        for (var y = 0; y + w <= height; y++)
        {
            for (var x = 0; x + w <= width; x++)
            {
                if (!disc.TrueForAll(d => pixels[x + d.X, y + d.Y] == value))
                    continue;
                foreach (var d in disc)
                    opened[x + d.X, y + d.Y] = true;
            }
        }

        var residue = new bool[width, height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                residue[x, y] = pixels[x, y] == value && !opened[x, y];
        }

        return residue;
    }

    /// <summary>The least w of which the bitmap is finer, less 1; none up to <paramref name="most"/>.</summary>
    public static int? Finest(bool[,] pixels, bool value, double dpi, int most)
    {
        var whole = Bitmaps.Components(pixels, value).Select(c => c.Order().ToList()).ToList();
        for (var w = 2; w <= most; w++)
        {
            foreach (var piece in Bitmaps.Components(Residue(pixels, value, w), true))
            {
                if (piece.Count < 0.5 * w * w)
                    continue;
                var (bw, bh) = (piece.Max(p => p.X) - piece.Min(p => p.X) + 1, piece.Max(p => p.Y) - piece.Min(p => p.Y) + 1);
                var isWhole = whole.Exists(c => c.Count == piece.Count && c.SequenceEqual(piece.Order()));
                if (isWhole || Math.Sqrt((bw * bw) + (bh * bh)) >= Math.Max(2.0 * w, 0.25 / 25.4 * dpi))
                    return w - 1;
            }
        }

        return null;
    }
}
