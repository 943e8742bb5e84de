using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>Where each given value of an emulsion comes from; what nobody said otherwise is the datasheet's.</summary>
public sealed record GivenGrounds
{
    public Ground Solids { get; init; } = Ground.Datasheet;

    public Ground Density { get; init; } = Ground.Datasheet;

    public Ground PotLife { get; init; } = Ground.Datasheet;

    public Ground ShelfLife { get; init; } = Ground.Datasheet;

    public Ground RelativeExposure { get; init; } = Ground.Datasheet;

    public Ground FilmThickness { get; init; } = Ground.Datasheet;

    /// <summary>A working curve is fitted, not printed: the shop's own unless said otherwise.</summary>
    public Ground PenetrationDepth { get; init; } = Ground.MeasuredHere;

    /// <summary>What a shop says it pays, it pays.</summary>
    public Ground Price { get; init; } = Ground.MeasuredHere;
}
