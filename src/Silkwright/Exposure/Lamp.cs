namespace Silkwright.Exposure;

/// <summary>An exposure lamp.</summary>
public sealed record Lamp
{
    public string Id { get; init; } = "lamp";

    public required LampKind Kind { get; init; }

    /// <summary>Lamp to glass. [mm]</summary>
    public double? DistanceMm { get; init; }

    /// <summary>Hours on the lamp. [h]</summary>
    public double? Hours { get; init; }

    /// <summary>Wavelength of its strongest light, as printed on it. [nm], 250 to 500.</summary>
    public double? PeakNm { get; init; }

    /// <summary>Read at the glass with a radiometer for its band. [mW/cm²], above 0.</summary>
    public double? IrradianceMwPerCm2 { get; init; }

    /// <summary>How the image comes between lamp and coat.</summary>
    public Imaging Imaging { get; init; } = Imaging.Film;

    /// <summary>Width of a spot of written or projected light at half its height. [µm], 1 to 300; none: as usual.</summary>
    public double? SpotUm { get; init; }

    /// <summary>Times that written light goes over one place. 1 to 100; none: once.</summary>
    public int? Passes { get; init; }

    /// <summary>Half angle of the light that falls on the coat. [degrees], 0 to 75; none: by kind and way of imaging.</summary>
    public double? BeamHalfAngleDegrees { get; init; }

    public ExposureCount Counts { get; init; } = ExposureCount.Seconds;
}
