using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>A shop's step tests in the order of their days, and whether its exposure has drifted.</summary>
public sealed record ExposureDrift
{
    public required ExposureCount Counts { get; init; }

    public required IReadOnlyList<DatedTest> Tests { get; init; }

    /// <summary>Tests that set the level which later ones are held against.</summary>
    public required int LevelTests { get; init; }

    /// <summary>The first test whose average left the limits; none while all stay inside.</summary>
    public DateOnly? SignalOn { get; init; }

    /// <summary>The likeliest first test after a change; none with too few tests.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>How much more light is needed since then, if there was a change. [%]; below 0: less.</summary>
    public Estimate? ChangePercent { get; init; }

    /// <summary>Chance that the level has changed at all. [%]</summary>
    public double? ChancePercent { get; init; }

    /// <summary>What was told with the tests and changed about then.</summary>
    public IReadOnlyList<string> Because { get; init; } = [];

    public required IReadOnlyList<Note> Notes { get; init; }

    /// <summary>Worth telling before the next exposure: the chart signals, or a change is likelier than nine in ten.</summary>
    public bool HasDrifted => SignalOn is not null || ChancePercent >= SurePercent;

    private const double SurePercent = 90;
}
