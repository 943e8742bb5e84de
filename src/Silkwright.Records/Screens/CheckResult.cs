namespace Silkwright.Records.Screens;

/// <summary>What the light table said.</summary>
public enum CheckResult
{
    Good,

    /// <summary>Pinholes or edges blocked out by hand, then good.</summary>
    TouchedUp,

    /// <summary>To be made again.</summary>
    Rejected,
}
