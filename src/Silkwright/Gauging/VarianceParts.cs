namespace Silkwright.Gauging;

/// <summary>What the spread of gauge readings is made of. Variances. [µm²], 0 or more.</summary>
/// <param name="Repeatability">The same hand on the same part again.</param>
/// <param name="Operator">Hands that read high or low on every part.</param>
/// <param name="Interaction">Hands that read high or low on some parts.</param>
/// <param name="Part">The parts themselves.</param>
public sealed record VarianceParts(double Repeatability, double Operator, double Interaction, double Part)
{
    /// <summary>AIAG, Measurement Systems Analysis, 4th edition: √2, cut to 1.41.</summary>
    private const double ClassFactor = 1.41;

    /// <summary>What another hand adds. [µm²]</summary>
    public double Reproducibility => Operator + Interaction;

    /// <summary>Repeatability and reproducibility together: the gauge in these hands. [µm²]</summary>
    public double Gauge => Repeatability + Reproducibility;

    public double Total => Gauge + Part;

    /// <summary>Standard deviation of the gauge over that of everything. [%]; none where nothing differs.</summary>
    public double? GaugePercent => Total > 0 ? 100 * Math.Sqrt(Gauge / Total) : null;

    /// <summary>Classes of thickness that single readings can tell apart, before it is cut to a whole number. [1]; none where the gauge has no spread.</summary>
    public double? Classes => Gauge > 0 ? ClassFactor * Math.Sqrt(Part / Gauge) : null;

    /// <summary>The whole number of classes, at least 1. AIAG MSA, 4th edition: 5 or more can control a process.</summary>
    public int? DistinctClasses => Classes is { } classes ? Math.Max(1, (int)Math.Floor(Math.Min(classes, 1e6))) : null;
}
