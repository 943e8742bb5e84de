namespace Silkwright.Light;

/// <summary>What is black on the film: without a width, everything on one side of an edge.</summary>
/// <param name="Kind">Which.</param>
/// <param name="WidthUm">Width of the line or gap. [µm], above 0; an edge has none.</param>
public sealed record FilmImage(FilmImageKind Kind, double WidthUm = 0)
{
    /// <summary>Black on one side, without an end.</summary>
    public static FilmImage Edge { get; } = new(FilmImageKind.Edge);
}
