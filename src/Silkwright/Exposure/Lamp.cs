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

    public ExposureCount Counts { get; init; } = ExposureCount.Seconds;
}
