namespace Silkwright.Film.Measuring;

/// <summary>Remembers the pixels of specks until all components are known, then turns them round together.</summary>
/// <remarks>Several threads may mark at once: the specks are separate, but may share a word.</remarks>
internal sealed class SpeckMarks(FilmBitmap bits)
{
    private readonly FilmBitmap marks = new(bits.Width, bits.Height);

    /// <summary>Marks the speck, image or gap, that holds a pixel.</summary>
    public void Mark(int seedX, int seedY)
    {
        var value = bits[seedX, seedY];
        Span<(int X, int Y)> found = stackalloc (int, int)[FilmComponents.SpeckArea];
        found[0] = (seedX, seedY);
        var count = 1;
        for (var i = 0; i < count; i++)
        {
            for (var y = Math.Max(0, found[i].Y - 1); y <= Math.Min(bits.Height - 1, found[i].Y + 1); y++)
            {
                for (var x = Math.Max(0, found[i].X - 1); x <= Math.Min(bits.Width - 1, found[i].X + 1); x++)
                {
                    if (bits[x, y] == value && !found[..count].Contains((x, y)))
                        found[count++] = (x, y);
                }
            }
        }

        foreach (var (x, y) in found[..count])
            _ = Interlocked.Or(ref marks.Writable(y, x >> 6), 1UL << (63 - (x & 63)));
    }

    /// <summary>Turns every marked pixel round.</summary>
    public void Apply() => bits.Turn(marks);
}
