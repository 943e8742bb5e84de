using Silkwright.Estimates;
using Silkwright.Statistics;

namespace Silkwright.Gauging;

/// <summary>Emulsion over mesh along the days, of one operator, trough or emulsion, and whether its level has changed.</summary>
public sealed record CoatChart
{
    public required ChartGrouping Grouping { get; init; }

    /// <summary>The operator's, trough's or emulsion's name; empty for the shop.</summary>
    public required string Name { get; init; }

    /// <summary>In the order of their days.</summary>
    public required IReadOnlyList<CoatedReading> Readings { get; init; }

    /// <summary>Each reading less the level of its recipe. [µm]</summary>
    public required IReadOnlyList<double> OffUm { get; init; }

    /// <summary>Readings that set the level.</summary>
    public required int LevelReadings { get; init; }

    /// <summary>Standard deviation of one reading, from differences of neighbours. [µm]</summary>
    public required double DeviationUm { get; init; }

    /// <summary>One a reading after the level's. [µm]</summary>
    public required IReadOnlyList<EwmaPoint> Points { get; init; }

    /// <summary>The first reading whose average left the limits.</summary>
    public DateOnly? SignalOn { get; init; }

    /// <summary>The likeliest first day after a change.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>How much thicker since, if there was a change. [µm]</summary>
    public Estimate? ChangeUm { get; init; }

    /// <summary>Chance that the level has changed at all. [%]</summary>
    public double? ChancePercent { get; init; }

    public bool HasChanged => ChancePercent >= SurePercent;

    /// <summary>Told where it is likelier than this. Common practice.</summary>
    public const double SurePercent = 90;
}
