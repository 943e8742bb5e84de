using System.Collections.ObjectModel;

namespace Silkwright.Scheduling.Shelf;

/// <summary>A shelf held against the best one.</summary>
/// <param name="Keep">The emulsions on it, in the order of the case.</param>
/// <param name="MonthlyCost">What it costs. [money/month]</param>
/// <param name="Extra">What it costs more than the best. [money/month], 0 or more unless a rule of the best one is lifted for it.</param>
/// <param name="Bound">No shelf of this kind can cost less. [money/month]; equal to the cost where it is proven the cheapest of its kind.</param>
public sealed record OtherShelf(IReadOnlyList<string> Keep, double MonthlyCost, double Extra, double Bound)
{
    /// <summary>The size of each that is sold in sizes. [g]</summary>
    public IReadOnlyDictionary<string, double> Containers { get; init; } = ReadOnlyDictionary<string, double>.Empty;
}
