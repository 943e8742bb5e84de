namespace Silkwright.Film.Measuring.Halftones;

/// <summary>The small components of image or gap from the top down, those that may be dots of a screen told from the others.</summary>
internal sealed class ScreenDots
{
    private readonly DotShape[] shapes;
    private readonly double longest;

    /// <param name="shapes">From the top down; they are not copied, for a film may have millions.</param>
    /// <param name="dpi">[1/in]</param>
    public ScreenDots(DotShape[] shapes, double dpi)
        : this(shapes, dpi / LatticeGroups.LeastLpi, 0, shapes.Length)
    {
    }

    private ScreenDots(DotShape[] shapes, double longest, int first, int count) => (this.shapes, this.longest, First, Count) = (shapes, longest, first, count);

    /// <summary>Number among all of what is number 0 here.</summary>
    public int First { get; }

    public int Count { get; }

    public ref readonly DotShape this[int number] => ref shapes[First + number];

    /// <summary>Those of a swath, numbered anew.</summary>
    public ScreenDots In(Swath swath)
    {
        var first = FirstFrom(swath.From);
        return new ScreenDots(shapes, longest, first, FirstFrom(swath.To) - first);
    }

    /// <summary>Small and round enough.</summary>
    public bool MayBeDot(int number) => IsSmall(this[number]) && IsRoundEnough(this[number]);

    /// <summary>Small, but a part of a dot at most.</summary>
    public bool MayBePart(int number) => IsSmall(this[number]) && !IsRoundEnough(this[number]);

    /// <summary>The first that is not above a row.</summary>
    private int FirstFrom(double y)
    {
        var (from, end) = (0, shapes.Length);
        while (from < end)
        {
            var middle = (from + end) >>> 1;
            if (shapes[middle].Y < y)
                from = middle + 1;
            else
                end = middle;
        }

        return from;
    }

    private bool IsSmall(in DotShape d) => d.Width <= longest && d.Height <= longest;

    /// <summary>Holes between swollen dots are four-pointed and fill little of their box.</summary>
    private static bool IsRoundEnough(in DotShape d) => d.Width <= 2.2 * d.Height && d.Height <= 2.2 * d.Width && d.Area >= 0.25 * d.Width * d.Height;
}
