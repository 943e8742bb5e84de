namespace Silkwright.Film.Measuring;

/// <summary>A disc on the pixel grid: the pixels whose centres lie within half its diameter of its own centre.</summary>
/// <remarks>
/// The centre is a pixel's centre for an odd diameter and a pixel's corner for an even one, so the disc lies in a box of w x w pixels.
/// Discs of neighbouring diameter are not nested in the sense of opening; <see cref="IsOpenBy"/> tells which are. docs/engines/film.md, "Discs".
/// </remarks>
internal sealed class DigitalDisc
{
    /// <summary>Largest diameter that is handled. [px] Larger than any that is measured by: those that screen several must be.</summary>
    public const int MostDiameter = 383;

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
            while (Squared((2 * a) - (diameter - 1)) + Squared(dy) > Squared(diameter))
                a++;
            insets[j] = a;
        }

        Square = diameter - (2 * Enumerable.Range(0, diameter).First(j => insets[j] <= j));
        Widths = [.. insets.Distinct().Order().Select(a => new RowGroup(a, diameter - (2 * a), [.. RowsOf(a)]))];
    }

    /// <summary>[px]</summary>
    public int Diameter { get; }

    /// <summary>Side of the largest upright square in it. [px]</summary>
    public int Square { get; }

    /// <summary>Rows of the box that have the same pixels.</summary>
    public RowGroup[] Widths { get; }

    /// <summary>Whether opening this disc by a smaller one leaves it whole.</summary>
    /// <remarks>Then whatever opening by the smaller one removes from a bitmap, opening by this one removes as well.</remarks>
    public bool IsOpenBy(DigitalDisc other)
    {
        var room = Diameter - other.Diameter;
        var covered = new bool[Diameter * Diameter];
        for (var ty = 0; ty <= room; ty++)
        {
            // Where the smaller disc fits with its box at this height is one stretch, for both are convex.
            var (first, last) = (0, room);
            for (var y = 0; y < other.Diameter; y++)
            {
                first = Math.Max(first, insets[ty + y] - other.insets[y]);
                last = Math.Min(last, room - insets[ty + y] + other.insets[y]);
            }

            for (var y = 0; first <= last && y < other.Diameter; y++)
            {
                var length = other.Diameter - (2 * other.insets[y]) + last - first;
                covered.AsSpan(((ty + y) * Diameter) + first + other.insets[y], length).Fill(true);
            }
        }

        return Enumerable.Range(0, Diameter).All(y =>
            !covered.AsSpan((y * Diameter) + insets[y], Diameter - (2 * insets[y])).Contains(false));
    }

    private static int Squared(int value) => value * value;

    private IEnumerable<int> RowsOf(int inset) => Enumerable.Range(0, Diameter).Where(j => insets[j] == inset);

    /// <summary>Rows of the disc's box with the same run of pixels.</summary>
    /// <param name="Inset">First pixel. [px]</param>
    /// <param name="Length">Pixels of the run.</param>
    /// <param name="Rows">Which rows.</param>
    internal sealed record RowGroup(int Inset, int Length, int[] Rows);
}
