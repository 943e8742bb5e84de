namespace Silkwright.Artwork;

/// <summary>A part of a film that is one halftone.</summary>
public sealed record HalftoneZone
{
    /// <summary>Left edge. [mm]</summary>
    public required double XMm { get; init; }

    /// <summary>Top edge. [mm]</summary>
    public required double YMm { get; init; }

    public required double WidthMm { get; init; }

    public required double HeightMm { get; init; }

    /// <summary>Dots per inch along the lattice. [1/in]</summary>
    public required double RulingLpi { get; init; }

    /// <summary>From the film's horizontal, counter-clockwise, modulo 90 for round or square dots. [degrees]</summary>
    public required double AngleDegrees { get; init; }

    public required double TonePercentMin { get; init; }

    public required double TonePercentMax { get; init; }

    /// <summary>First percentile of the equal-area diameters of the zone's inner dots; none where all dots have joined. [µm]</summary>
    public double? SmallestDotUm { get; init; }

    /// <summary>First percentile of the equal-area diameters of the zone's inner holes; none where no hole is closed. [µm]</summary>
    public double? SmallestHoleUm { get; init; }

    /// <summary>Dots cut by the zone's edge or by artwork laid over it.</summary>
    public required long CutDots { get; init; }
}
