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

    public ExposureCount Counts { get; init; } = ExposureCount.Seconds;
}
