namespace Silkwright.Film.TestFilms;

/// <summary>One shape of a film drawing.</summary>
public sealed record FilmShape
{
    /// <summary>Outline as SVG path data in mm (SVG 2, section 9.3), x to the right and y down; none for lettering.</summary>
    public string? Outline { get; init; }

    public FilmLettering? Lettering { get; init; }

    /// <summary>Width of a line along the outline. [mm]; none fills it.</summary>
    public double? LineMm { get; init; }

    /// <summary>Takes away instead of printing.</summary>
    public bool Clear { get; init; }

    /// <summary>Fills with a halftone instead of solid.</summary>
    public HalftoneFill? Halftone { get; init; }

    /// <summary>Turns the shape about the film's origin, clockwise, then moves it. [degrees, mm, mm]</summary>
    public (double Degrees, double XMm, double YMm) Placed { get; init; }
}
