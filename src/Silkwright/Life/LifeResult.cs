using Silkwright.Estimates;

namespace Silkwright.Life;

/// <summary>How long the stencil lasts and what that means for the run.</summary>
public sealed record LifeResult
{
    /// <summary>Impressions at which half of such stencils have failed.</summary>
    public required Estimate MedianImpressions { get; init; }

    /// <summary>Weibull shape of the time to failure. [1]</summary>
    public required double WeibullShape { get; init; }

    /// <summary>Chance that one stencil finishes the run. [%]</summary>
    public required Estimate FinishPercent { get; init; }

    /// <summary>Failures expected over the run, renewals included.</summary>
    public required Estimate ExpectedFailures { get; init; }

    /// <summary>Chance of 0, 1, 2, ... failures over the run, each failed stencil replaced at once. [1]; they add to 1.</summary>
    public IReadOnlyList<double> FailureChances { get; init; } = [];

    /// <summary>Chance of finishing at points along and past the run, for the picture.</summary>
    public required IReadOnlyList<LifePoint> Curve { get; init; }

    public IReadOnlyList<Note> Notes { get; init; } = [];
}
