using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Drying;

/// <summary>A wet coat and the air it stands in.</summary>
public sealed record DryingCase
{
    /// <summary>Air temperature. [°C], 0 to 45; warns above 40.</summary>
    public required double AirCelsius { get; init; }

    /// <summary>Relative humidity. [%], 0 to 100.</summary>
    public required double HumidityPercent { get; init; }

    /// <summary>Air speed along the screen. [m/s]; a room with one fan where none is given.</summary>
    public double? AirSpeedMPerS { get; init; }

    /// <summary>Wet emulsion as an even layer. [µm]</summary>
    public required Estimate WetUm { get; init; }

    /// <summary>Solids by weight. [%]</summary>
    public required Estimate SolidsPercent { get; init; }

    public required EmulsionFamily Family { get; init; }

    /// <summary>The supplier says the coat stays dry to the touch in damp air.</summary>
    public bool HumidityResistant { get; init; }

    /// <summary>Faces that air reaches. 1 or 2.</summary>
    public int Faces { get; init; } = 2;

    /// <summary>Height above the sea. [m]</summary>
    public double AltitudeM { get; init; }

    /// <summary>Most water the coat may hold when exposed. [% of the dry coat], above 0; common practice where not given.</summary>
    public double? SafeMoisturePercent { get; init; }
}
