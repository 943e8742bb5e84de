using System.Numerics;
using Microsoft.Win32.SafeHandles;

namespace Silkwright.Film.Places;

/// <summary>The small levels of a film as greys, one byte a pixel: made from its rows as they come, written as they are done.</summary>
/// <remarks>
/// A byte's eight pixels are counted for all bytes of a word at once, and over eight rows a count still fits its byte; so the first level is one eighth. Each further level
/// adds two by two of the counts below it, which are exact. Memory: a row of each level.
/// </remarks>
internal sealed class GreyPyramid
{
    /// <summary>Film pixels, each way, in a pixel of the largest level kept. [px]</summary>
    public const int LeastFactor = 8;

    private readonly FilmLevels levels;
    private readonly SafeFileHandle file;
    private readonly ulong[] eights;
    private readonly int[][] sums;
    private readonly byte[] greys;

    /// <param name="levels">Of the film.</param>
    /// <param name="file">Where the greys go.</param>
    public GreyPyramid(FilmLevels levels, SafeFileHandle file)
    {
        (this.levels, this.file) = (levels, file);
        eights = new ulong[(levels.WidthPx + 63) >> 6];
        sums = [.. Enumerable.Range(0, Math.Max(0, Kept(levels))).Select(level => new int[levels.Size(level).Width + 1])];
        greys = new byte[Parts(levels.WidthPx, LeastFactor)];
    }

    /// <summary>Levels that are kept, from 0 on.</summary>
    public static int Kept(FilmLevels levels) => Math.Max(0, levels.Deepest - BitOperations.Log2(LeastFactor) + 1);

    /// <summary>Where a level's greys begin, row after row. [bytes]</summary>
    public static long Place(FilmLevels levels, int level) =>
        Enumerable.Range(0, level).Sum(above => (long)levels.Size(above).Width * levels.Size(above).Height);

    /// <summary>A grey of so many image pixels in an area: 255 is clear.</summary>
    public static byte Grey(int image, int area) => (byte)(255 - (255L * image / area));

    /// <summary>Takes the film's next row.</summary>
    public void Add(int y, ReadOnlySpan<ulong> row)
    {
        if (sums.Length == 0)
            return;
        for (var i = 0; i < row.Length; i++)
            eights[i] += CountsOfBytes(row[i]);
        if ((y + 1) % LeastFactor != 0 && y + 1 != levels.HeightPx)
            return;
        var into = sums[^1];
        for (var x = 0; x < into.Length - 1; x++)
            into[x] = (int)((eights[x >> 3] >> (56 - ((x & 7) << 3))) & 255);
        eights.AsSpan().Clear();
        Finish(sums.Length - 1, y);
    }

    /// <summary>Image pixels of each of a word's bytes, each in its byte.</summary>
    private static ulong CountsOfBytes(ulong word)
    {
        word -= (word >> 1) & 0x5555_5555_5555_5555;
        word = (word & 0x3333_3333_3333_3333) + ((word >> 2) & 0x3333_3333_3333_3333);
        return (word + (word >> 4)) & 0x0F0F_0F0F_0F0F_0F0F;
    }

    private static int Parts(int length, int part) => ((length - 1) / part) + 1;

    /// <summary>Writes a level's row, whose last film row is <paramref name="y"/>, and hands its counts to the level above.</summary>
    private void Finish(int level, int y)
    {
        var (counts, factor, width) = (sums[level], levels.Factor(level), levels.Size(level).Width);
        var down = (y % factor) + 1;
        for (var x = 0; x < width; x++)
            greys[x] = Grey(counts[x], down * (Math.Min(levels.WidthPx, (x + 1) * factor) - (x * factor)));
        RandomAccess.Write(file, greys.AsSpan(0, width), Place(levels, level) + ((long)(y / factor) * width));
        if (level > 0)
        {
            for (var x = 0; x < width; x++)
                sums[level - 1][x >> 1] += counts[x];
            if ((y + 1) % (2 * factor) == 0 || y + 1 == levels.HeightPx)
                Finish(level - 1, y);
        }

        counts.AsSpan().Clear();
    }
}
