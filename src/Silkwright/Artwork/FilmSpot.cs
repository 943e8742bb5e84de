namespace Silkwright.Artwork;

/// <summary>One spot of a film: what is there, and how wide it is. docs/engines/film.md, "Local width".</summary>
public sealed record FilmSpot
{
    /// <summary>Middle of the pixel looked at, from the film's left edge. [mm]</summary>
    public required double XMm { get; init; }

    /// <summary>From the film's top edge. [mm]</summary>
    public required double YMm { get; init; }

    /// <summary>It prints; else it is gap. A speck counts as what is about it.</summary>
    public required bool IsImage { get; init; }

    /// <summary>The pixel belongs to a speck, which is left out as the measuring leaves it out.</summary>
    public bool IsSpeck { get; init; }

    /// <summary>Diameter of the largest disc within image or gap that holds the pixel. [µm]</summary>
    public required double WidthUm { get; init; }

    /// <summary>A pixel of the film, which is how far the width may be out to either side. [µm]</summary>
    public required double PixelUm { get; init; }

    /// <summary>It is at least so wide; wider parts are not looked for.</summary>
    public required bool IsWidest { get; init; }

    /// <summary>It is a dot or a hole of a halftone, to be judged by their rule; false too where the film's halftones are not known.</summary>
    public bool IsInHalftone { get; init; }

    /// <summary>Middle of that disc. [mm]</summary>
    public required double DiscXMm { get; init; }

    /// <summary>Middle of that disc. [mm]</summary>
    public required double DiscYMm { get; init; }

    /// <summary>Least width it may have. [µm], not below 0</summary>
    public double LowUm => Math.Max(0, WidthUm - PixelUm);

    /// <summary>Greatest width it may have; none where it is only known to be at least so wide. [µm]</summary>
    public double? HighUm => IsWidest ? null : WidthUm + PixelUm;
}
