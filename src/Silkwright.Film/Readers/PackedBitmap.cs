
namespace Silkwright.Film.Readers;

/// <summary>A bitmap of one bit a pixel in 64-bit words, the leftmost pixel in the highest bit; bits past the width are 0.</summary>
public sealed class PackedBitmap
{
    /// <summary>Words above which a bitmap is a whole film and not a strip. 8 MiB.</summary>
    private const int LeastApart = 1 << 20;

    private readonly ulong[] words;

    /// <exception cref="ArgumentOutOfRangeException">A side is not positive, or the bitmap is larger than a film may be.</exception>
    public PackedBitmap(int width, int height)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        ArgumentOutOfRangeException.ThrowIfGreaterThan((long)width * height, FilmLimits.MostPixels, nameof(height));
        Width = width;
        Height = height;
        Stride = (width + 63) >> 6;
        LastMask = (width & 63) == 0 ? ulong.MaxValue : ~(ulong.MaxValue >> (width & 63));

        // A whole film lies apart from the other large arrays: else the runtime, measuring by it, would let as much again in refuse gather beside it.
        var count = checked(Stride * height);
        words = count > LeastApart ? GC.AllocateArray<ulong>(count, pinned: true) : new ulong[count];
    }

    /// <summary>[px]</summary>
    public int Width { get; }

    /// <summary>[px]</summary>
    public int Height { get; }

    /// <summary>Words in a row.</summary>
    public int Stride { get; }

    /// <summary>The bits of a row's last word that are pixels.</summary>
    public ulong LastMask { get; }

    /// <summary>One row, to read or write.</summary>
    public Span<ulong> Row(int y) => words.AsSpan(y * Stride, Stride);

    /// <summary>Every row, one after the other.</summary>
    public Span<ulong> All => words;

    public bool this[int x, int y]
    {
        get => (words[(y * Stride) + (x >> 6)] & (1UL << (63 - (x & 63)))) != 0;
        set
        {
            var bit = 1UL << (63 - (x & 63));
            ref var word = ref words[(y * Stride) + (x >> 6)];
            word = value ? word | bit : word & ~bit;
        }
    }

    /// <summary>Turns every pixel of a row round, so that gap becomes image.</summary>
    public static void Invert(Span<ulong> row, ulong lastMask)
    {
        for (var i = 0; i < row.Length; i++)
            row[i] = ~row[i];
        row[^1] &= lastMask;
    }

    /// <summary>The same size, image and gap exchanged.</summary>
    public PackedBitmap Inverted()
    {
        var other = new PackedBitmap(Width, Height);
        for (var y = 0; y < Height; y++)
        {
            Row(y).CopyTo(other.Row(y));
            Invert(other.Row(y), LastMask);
        }

        return other;
    }
}
