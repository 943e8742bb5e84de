using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Tests;

/// <summary>Small bitmaps for tests, and the plainest possible way to look at them.</summary>
internal static class Bitmaps
{
    public static PackedBitmap From(bool[,] pixels)
    {
        var bits = new PackedBitmap(pixels.GetLength(0), pixels.GetLength(1));
        for (var y = 0; y < bits.Height; y++)
        {
            for (var x = 0; x < bits.Width; x++)
                bits[x, y] = pixels[x, y];
        }

        return bits;
    }

    public static FilmBitmap Film(bool[,] pixels) => FilmBitmap.Of(From(pixels));

    public static bool[,] Pixels(PackedBitmap bits) => Pixels(bits.Width, bits.Height, (x, y) => bits[x, y]);

    public static bool[,] Pixels(FilmBitmap bits) => Pixels(bits.Width, bits.Height, (x, y) => bits[x, y]);

    private static bool[,] Pixels(int width, int height, Func<int, int, bool> at)
    {
        var pixels = new bool[width, height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                pixels[x, y] = at(x, y);
        }

        return pixels;
    }

    /// <summary>Noise, or blocks of it, so that small and large parts both happen.</summary>
    public static bool[,] Random(Random random, int width, int height, double density, int block)
    {
        var pixels = new bool[width, height];
        for (var y = 0; y < height; y += block)
        {
            for (var x = 0; x < width; x += block)
            {
                var value = random.NextDouble() < density;
                for (var j = y; j < Math.Min(height, y + block); j++)
                {
                    for (var i = x; i < Math.Min(width, x + block); i++)
                        pixels[i, j] = value;
                }
            }
        }

        for (var k = 0; k < width * height / 60; k++)
            pixels[random.Next(width), random.Next(height)] ^= true;
        return pixels;
    }

    /// <summary>8-connected components by flood fill: the pixels of each.</summary>
    public static List<List<(int X, int Y)>> Components(bool[,] pixels, bool value)
    {
        var (width, height) = (pixels.GetLength(0), pixels.GetLength(1));
        var seen = new bool[width, height];
        var all = new List<List<(int X, int Y)>>();
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                if (seen[x, y] || pixels[x, y] != value)
                    continue;
                seen[x, y] = true;
                var part = new List<(int X, int Y)> { (x, y) };
                for (var i = 0; i < part.Count; i++)
                {
                    for (var dy = -1; dy <= 1; dy++)
                    {
                        for (var dx = -1; dx <= 1; dx++)
                        {
                            var (nx, ny) = (part[i].X + dx, part[i].Y + dy);
                            if (nx < 0 || ny < 0 || nx >= width || ny >= height || seen[nx, ny] || pixels[nx, ny] != value)
                                continue;
                            seen[nx, ny] = true;
                            part.Add((nx, ny));
                        }
                    }
                }

                all.Add(part);
            }
        }

        return all;
    }
}
