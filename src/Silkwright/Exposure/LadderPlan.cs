namespace Silkwright.Exposure;

/// <summary>A step test to make.</summary>
public sealed record LadderPlan
{
    public required ExposureCount Counts { get; init; }

    /// <summary>What each strip is given, rising.</summary>
    public required IReadOnlyList<double> Amounts { get; init; }

    /// <summary>What the shutter or the counter can be set to: multiples of this. [s or units]</summary>
    public required double SmallestSetting { get; init; }

    /// <summary>Steps that the machine cannot tell apart; none where every step has a setting of its own.</summary>
    public required IReadOnlyList<SharedSetting> SharedSettings { get; init; }

    /// <summary>How many times weaker the light would have to be for every step to have a setting of its own. [1], 1 or more.</summary>
    public required double WeakerLight { get; init; }

    /// <summary>One strip over the one before, about. [1]</summary>
    public required double Ratio { get; init; }

    /// <summary>Half of the aim's 90 % interval to expect afterwards, as a share of the aim. [1]</summary>
    public required double ExpectedHalf { get; init; }

    /// <summary>Half of the aim's interval now. [1]</summary>
    public required double HalfNow { get; init; }

    /// <summary>Half that was asked for. [1]</summary>
    public required double WantedHalf { get; init; }

    /// <summary>Solid step that the wedge should show on each strip, at the best guess; where the middle of them is far off, so is the guess.</summary>
    public required IReadOnlyList<double> ExpectedSteps { get; init; }

    /// <summary>By what is believed, no exposure does both: the test will tell which end is wrong.</summary>
    public required bool MayBeShut { get; init; }

    public bool IsEnough => ExpectedHalf <= WantedHalf;

    /// <summary>One exposure of all strips, then one strip more covered each time: what each exposure is given.</summary>
    public IReadOnlyList<double> Increments => [.. Amounts.Select((amount, i) => i == 0 ? amount : amount - Amounts[i - 1])];
}
