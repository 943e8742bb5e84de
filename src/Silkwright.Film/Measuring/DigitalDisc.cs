namespace Silkwright.Film.Measuring;

/// <summary>A disc on the pixel grid: the pixels whose centres lie within half its diameter of its own centre.</summary>
/// <remarks>
/// The centre is a pixel's centre for an odd diameter and a pixel's corner for an even one, so the disc lies in a box of w x w pixels.
/// Discs of neighbouring diameter are not nested in the sense of opening; <see cref="IsOpenBy"/> tells which are. docs/engines/film.md, "Discs".
/// </remarks>
internal sealed class DigitalDisc
{
    /// <summary>Largest diameter that is handled. [px]</summary>
    public const int MostDiameter = 255;

    private readonly int[] insets;

    public DigitalDisc(int diameter)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(diameter, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(diameter, MostDiameter);
        Diameter = diameter;
        insets = new int[diameter];
        for (var j = 0; j < diameter; j++)
        {
            var dy = (2 * j) - (diameter - 1);
            var a = 0;
            while (Square((2 * a) - (diameter - 1)) + Square(dy) > Square(diameter))
                a++;
            insets[j] = a;
        }

        Widths = [.. insets.Distinct().Order().Select(a => new RowGroup(a, diameter - (2 * a), [.. RowsOf(a)]))];
    }

    /// <summary>[px]</summary>
    public int Diameter { get; }

    /// <summary>Rows of the box that have the same pixels.</summary>
    public IReadOnlyList<RowGroup> Widths { get; }

    /// <summary>Whether opening this disc by a smaller one leaves it whole.</summary>
    /// <remarks>Then whatever opening by the smaller one removes from a bitmap, opening by this one removes as well.</remarks>
    public bool IsOpenBy(DigitalDisc other)
    {
        var covered = new bool[Diameter * Diameter];
        var room = Diameter - other.Diameter;
        for (var ty = 0; ty <= room; ty++)
        {
            for (var tx = 0; tx <= room; tx++)
            {
                if (Fits(other, tx, ty))
                    other.Cover(covered, Diameter, tx, ty);
            }
        }

        for (var y = 0; y < Diameter; y++)
        {
            for (var x = insets[y]; x < Diameter - insets[y]; x++)
            {
                if (!covered[(y * Diameter) + x])
                    return false;
            }
        }

        return true;
    }

    private static int Square(int value) => value * value;

    private bool Fits(DigitalDisc other, int tx, int ty)
    {
        for (var y = 0; y < other.Diameter; y++)
        {
            if (tx + other.insets[y] < insets[ty + y] || tx + other.Diameter - other.insets[y] > Diameter - insets[ty + y])
                return false;
        }

        return true;
    }

    private void Cover(bool[] covered, int across, int tx, int ty)
    {
        for (var y = 0; y < Diameter; y++)
        {
            for (var x = insets[y]; x < Diameter - insets[y]; x++)
                covered[((ty + y) * across) + tx + x] = true;
        }
    }

    private IEnumerable<int> RowsOf(int inset) => Enumerable.Range(0, Diameter).Where(j => insets[j] == inset);

    /// <summary>Rows of the disc's box with the same run of pixels.</summary>
    /// <param name="Inset">First pixel. [px]</param>
    /// <param name="Length">Pixels of the run.</param>
    /// <param name="Rows">Which rows.</param>
    internal sealed record RowGroup(int Inset, int Length, int[] Rows);
}
