namespace Silkwright.Exposure;

/// <summary>What a shop's exposure figure counts.</summary>
public enum ExposureCount
{
    Seconds,

    /// <summary>The machine's own integrator units: tied to that machine, never converted.</summary>
    Units,
}
