using Silkwright.Estimates;

namespace Silkwright.Artwork;

/// <summary>What one colour asks of its stencil, from a measured film, from typed figures or from a typical kind of work.</summary>
public sealed record ArtworkNeeds
{
    /// <summary>Narrowest printed line. [µm]</summary>
    public Estimate? FinestLineUm { get; init; }

    /// <summary>Narrowest gap between printed parts: the narrowest wall of stencil. [µm]</summary>
    public Estimate? FinestGapUm { get; init; }

    /// <summary>Narrow places of what prints, finest first; none where no film was measured.</summary>
    public IReadOnlyList<FilmPlace> NarrowPlaces { get; init; } = [];

    /// <summary>Halftone ruling. [1/in]; none without halftone.</summary>
    public Estimate? RulingLpi { get; init; }

    /// <summary>Halftone angle from the film's horizontal. [degrees]</summary>
    public double? AngleDegrees { get; init; }

    /// <summary>Smallest halftone dot. [µm]</summary>
    public Estimate? SmallestDotUm { get; init; }

    /// <summary>Smallest halftone hole: the smallest island of stencil. [µm]</summary>
    public Estimate? SmallestHoleUm { get; init; }

    /// <summary>Share of the film that prints. [%]</summary>
    public required Estimate CoveragePercent { get; init; }

    /// <summary>Area of the film, image and gap together. [cm²]</summary>
    public required Estimate FilmAreaCm2 { get; init; }

    /// <summary>Size of the film. [mm]; none where only an area is known.</summary>
    public double? FilmWidthMm { get; init; }

    /// <summary>Size of the film. [mm]</summary>
    public double? FilmHeightMm { get; init; }

    /// <summary>What was assumed on the way.</summary>
    public IReadOnlyList<Note> Notes { get; init; } = [];
}
