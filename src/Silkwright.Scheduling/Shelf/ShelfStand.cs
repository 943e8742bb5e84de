namespace Silkwright.Scheduling.Shelf;

/// <summary>An emulsion in one of the sizes it is sold in.</summary>
/// <param name="Of">Which emulsion of the case, from 0.</param>
/// <param name="Emulsion">That emulsion.</param>
/// <param name="Container">The size; none where the case gives none.</param>
/// <param name="Size">Which of its sizes, from 0; the first is the one bought today.</param>
internal sealed record ShelfStand(int Of, ShelfEmulsion Emulsion, ShelfContainer? Container, int Size)
{
    /// <summary>[money/month]</summary>
    public double FixedCostPerMonth => Emulsion.FixedCostPerMonth + (Container?.FixedCostPerMonth ?? 0);

    /// <summary>Everything that could be kept, in the order of the case; an emulsion without sizes is one.</summary>
    public static ShelfStand[] AllOf(ShelfCase shelf) => [.. shelf.Emulsions.SelectMany((emulsion, e) =>
        Enumerable.Range(0, Math.Max(1, emulsion.Containers.Count)).Select(k => new ShelfStand(e, emulsion, emulsion.Containers.ElementAtOrDefault(k), k)))];

    /// <summary>What a screen of a job costs with it; none where it can't make it. [money/screen]</summary>
    public double? CostOf(ShelfJob job) => job.CostWith(Emulsion, Container);

    /// <summary>It stands on the shelf today, in this size.</summary>
    public bool KeptToday => Emulsion.KeptToday && Size == 0;
}
