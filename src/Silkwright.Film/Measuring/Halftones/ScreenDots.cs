namespace Silkwright.Film.Measuring.Halftones;

/// <summary>The small components of image or gap from the top down, those that may be dots of a screen told from the others.</summary>
/// <param name="shapes">From the top down; they are not copied, for a film may have millions.</param>
/// <param name="dpi">[1/in]</param>
internal sealed class ScreenDots(DotShape[] shapes, double dpi)
{
    private readonly double longest = dpi / LatticeGroups.LeastLpi;

    public int Count => shapes.Length;

    public ref readonly DotShape this[int number] => ref shapes[number];

    /// <summary>Small and round enough.</summary>
    public bool MayBeDot(int number) => IsSmall(shapes[number]) && IsRoundEnough(shapes[number]);

    /// <summary>Small, but a part of a dot at most.</summary>
    public bool MayBePart(int number) => IsSmall(shapes[number]) && !IsRoundEnough(shapes[number]);

    private bool IsSmall(in DotShape d) => d.Width <= longest && d.Height <= longest;

    /// <summary>Holes between swollen dots are four-pointed and fill little of their box.</summary>
    private static bool IsRoundEnough(in DotShape d) => d.Width <= 2.2 * d.Height && d.Height <= 2.2 * d.Width && d.Area >= 0.25 * d.Width * d.Height;
}
