using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring;

/// <summary>Sums over the pixels of one component while it is being put together.</summary>
internal struct Blob
{
    public long Area;
    public double SumX;
    public double SumY;
    public int Left;
    public int Right;
    public int Top;
    public int Bottom;

    /// <summary>One pixel of it.</summary>
    public int SeedX;

    public int SeedY;

    /// <summary>Any of its runs was marked.</summary>
    public bool Marked;

    public readonly int Width => Right - Left;

    public readonly int Height => Bottom - Top + 1;

    public static Blob Of(int from, int to, int y) => new()
    {
        Area = to - from,
        SumX = 0.5 * (from + (double)to) * (to - from),
        SumY = (y + 0.5) * (to - from),
        Left = from,
        Right = to,
        Top = y,
        Bottom = y,
        SeedX = from,
        SeedY = y,
    };

    /// <summary>Takes a run of a row not above those it has.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void AddRun(int from, int to, int y)
    {
        var length = to - from;
        Area += length;
        SumX += 0.5 * (from + (double)to) * length;
        SumY += (y + 0.5) * length;
        Left = Math.Min(Left, from);
        Right = Math.Max(Right, to);
        Bottom = y;
    }

    public void Add(in Blob other)
    {
        Area += other.Area;
        SumX += other.SumX;
        SumY += other.SumY;
        Left = Math.Min(Left, other.Left);
        Right = Math.Max(Right, other.Right);
        Top = Math.Min(Top, other.Top);
        Bottom = Math.Max(Bottom, other.Bottom);
        Marked |= other.Marked;
    }
}
