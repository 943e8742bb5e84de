using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>The least exposure that cures through the stencil, the most that still holds the detail, and the aim between.</summary>
public sealed record ExposureWindow
{
    /// <summary>What the amounts below count: seconds, or the units of this machine.</summary>
    public required ExposureCount Counts { get; init; }

    /// <summary>Least amount that cures through behind a thread.</summary>
    public required Estimate Least { get; init; }

    /// <summary>Most amount at which the finest detail stays open.</summary>
    public required Estimate Most { get; init; }

    /// <summary>Where to aim: what most likely does both. Its interval is where the best exposure of this shop lies. None when least lies above most.</summary>
    public Estimate? Aim { get; init; }

    /// <summary>Chance that an exposure at the aim cures through and holds the detail, with all that is not known and a day's own scatter. [%]; none where there is no aim.</summary>
    public double? AimChancePercent { get; init; }

    /// <summary>The same at the geometric middle of the window. [%]; none where there is no aim.</summary>
    public double? MiddleChancePercent { get; init; }

    /// <summary>Why the aim lies where it does, in a sentence; none where there is no aim.</summary>
    public string? AimBecause { get; init; }

    /// <summary>Chance that there is a window at all: that the least lies below the most, with all that is not known. [%]</summary>
    public required double OpenChancePercent { get; init; }

    /// <summary>log2(most / least); below 0 when no time works. [stops]</summary>
    public required double LatitudeStops { get; init; }

    /// <summary>log10(most / least) over the density of one wedge step (0.15). [steps]</summary>
    public required double LatitudeSteps { get; init; }

    /// <summary>Finest line that stays open at the aim, or at the least amount where there is no aim. [µm]</summary>
    public required Estimate FinestHeldUm { get; init; }

    /// <summary>Film density that keeps the covered coat soft through the aim. [1, UV density]</summary>
    public required double RequiredFilmDensityUv { get; init; }

    /// <summary>Last solid step that the wedge should read at the aim, on the usual 21-step wedge; none where there is no aim.</summary>
    public double? SolidStepAtAim { get; init; }

    /// <summary>What the width of the aim comes from.</summary>
    public required IReadOnlyList<Driver> Drivers { get; init; }

    /// <summary>With no window: the changes that would open it, most promising first.</summary>
    public IReadOnlyList<string> OpensBy { get; init; } = [];

    /// <summary>A strip on this lamp has told where the coat cures; until then the amounts are orders of magnitude.</summary>
    public bool IsMeasured => Least.Ground == Ground.MeasuredHere;

    public IReadOnlyList<Note> Notes { get; init; } = [];
}
