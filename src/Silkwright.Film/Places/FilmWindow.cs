using Silkwright.Film.Readers;

namespace Silkwright.Film.Places;

/// <summary>Cuts an upright part out of a film, pixel by pixel.</summary>
internal static class FilmWindow
{
    /// <summary>The part from a pixel on, all of it on the film.</summary>
    public static PackedBitmap Read(IFilmSource film, int left, int top, int width, int height, CancellationToken cancel)
    {
        var window = new PackedBitmap(width, height);
        film.ReadRows(top, height, (y, row) => Shift(row, left, window.Row(y - top), window.LastMask), cancel);
        return window;
    }

    /// <summary>Moves a row to the left, so that a pixel comes to stand first.</summary>
    private static void Shift(ReadOnlySpan<ulong> row, int left, Span<ulong> into, ulong lastMask)
    {
        var (word, bits) = (left >> 6, left & 63);
        for (var i = 0; i < into.Length; i++)
        {
            into[i] = row[word + i] << bits;
            if (bits > 0 && word + i + 1 < row.Length)
                into[i] |= row[word + i + 1] >> (64 - bits);
        }

        into[^1] &= lastMask;
    }
}
