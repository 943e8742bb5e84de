namespace Silkwright.Exposure;

/// <summary>What is wanted of a step test.</summary>
public sealed record LadderWish
{
    /// <summary>Half of the aim's 90 % interval afterwards, as a share of the aim. [1], above 0.</summary>
    public double WantedHalf { get; init; } = 0.25;

    /// <summary>What the shutter or the counter can be set to: multiples of this. [s or units], above 0.</summary>
    public double SmallestSetting { get; init; } = 1;

    /// <summary>What the shop exposes now, or guesses; none: the model's guess.</summary>
    public double? Around { get; init; }

    /// <summary>The coat's thickness will be measured on the strips.</summary>
    public bool MeasuresCoat { get; init; }
}
