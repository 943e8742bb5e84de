using Silkwright.Emulsion;

namespace Silkwright.Plans;

/// <summary>The room screens are coated, dried and kept in.</summary>
public sealed record Room
{
    public double? Celsius { get; init; }

    public double? HumidityPercent { get; init; }

    public RoomLight? Light { get; init; }

    /// <summary>How bright it is where coated screens lie, read with a meter. [lx]</summary>
    public double? Lux { get; init; }

    /// <summary>Air speed along the drying screens. [m/s]</summary>
    public double? AirSpeedMPerS { get; init; }

    /// <summary>Height above the sea. [m]</summary>
    public double? AltitudeM { get; init; }
}
