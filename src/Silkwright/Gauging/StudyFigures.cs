using Silkwright.Estimates;

namespace Silkwright.Gauging;

/// <summary>A study's figures, with intervals. Standard deviations. [µm]</summary>
public sealed record StudyFigures
{
    public required VarianceParts Variances { get; init; }

    /// <summary>The same hand on the same part again.</summary>
    public required Estimate RepeatabilityUm { get; init; }

    /// <summary>Hands that read high or low throughout.</summary>
    public required Estimate OperatorUm { get; init; }

    /// <summary>Hands that read high or low on some parts; none where that was pooled with repeatability, or can't be told from it.</summary>
    public Estimate? InteractionUm { get; init; }

    /// <summary>What another hand adds: operator and interaction.</summary>
    public required Estimate ReproducibilityUm { get; init; }

    /// <summary>Repeatability and reproducibility together.</summary>
    public required Estimate GaugeUm { get; init; }

    /// <summary>The parts themselves.</summary>
    public required Estimate PartUm { get; init; }

    public required Estimate TotalUm { get; init; }

    /// <summary>Standard deviation of the gauge over that of everything. [%]; none where nothing differs.</summary>
    public Estimate? GaugePercent { get; init; }

    /// <summary>Classes of thickness that can be told apart, before cutting to a whole number. [1]</summary>
    public Estimate? Classes { get; init; }
}
