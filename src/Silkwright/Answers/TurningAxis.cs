namespace Silkwright.Answers;

/// <summary>A circumstance that may turn the choice of an emulsion.</summary>
public enum TurningAxis
{
    /// <summary>Pieces of the run.</summary>
    Run,

    /// <summary>Screens the shop makes a day. [1/d]</summary>
    ScreensPerDay,

    /// <summary>Relative humidity of the room. [%]</summary>
    HumidityPercent,

    /// <summary>Emulsion over mesh asked for. [µm]</summary>
    EomUm,
}
