using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>A bitmap as large as a film and mostly blank: only bands of rows that were written take memory.</summary>
/// <remarks>Several threads may write at once, each its own words.</remarks>
internal sealed class SparseBitmap
{
    private const int BandRows = 32;

    private readonly ulong[]?[] bands;
    private readonly bool[] written;
    private readonly ulong[] blank;

    /// <summary>A blank one of a film's size.</summary>
    public SparseBitmap(PackedBitmap film)
    {
        (Width, Height) = (film.Width, film.Height);
        bands = new ulong[]?[(film.Height + BandRows - 1) / BandRows];
        written = new bool[film.Height];
        blank = new ulong[film.Stride];
    }

    /// <summary>[px]</summary>
    public int Width { get; }

    /// <summary>[px]</summary>
    public int Height { get; }

    /// <summary>Words in a row.</summary>
    public int Stride => blank.Length;

    public bool this[int x, int y] => (Row(y)[x >> 6] & (1UL << (63 - (x & 63)))) != 0;

    /// <summary>Nothing was written to a row since all was cleared.</summary>
    public bool IsBlank(int y) => !written[y];

    /// <summary>A row to read.</summary>
    public ReadOnlySpan<ulong> Row(int y) => written[y] ? Part(bands[y / BandRows]!, y) : blank;

    /// <summary>A row to write.</summary>
    public Span<ulong> Writable(int y)
    {
        ref var band = ref bands[y / BandRows];
        if (Volatile.Read(ref band) is null)
            _ = Interlocked.CompareExchange(ref band, new ulong[BandRows * Stride], null);
        written[y] = true;
        return Part(band!, y);
    }

    /// <summary>Blanks every row; the memory stays, to be written again.</summary>
    public void Clear()
    {
        for (var y = 0; y < Height; y++)
        {
            if (written[y])
                Part(bands[y / BandRows]!, y).Clear();
        }

        written.AsSpan().Clear();
    }

    private Span<ulong> Part(ulong[] band, int y) => band.AsSpan(y % BandRows * Stride, Stride);
}
