namespace Silkwright.Scheduling.Shelf;

/// <summary>What the best shelf changes against today's.</summary>
/// <param name="Drop">Kept today and no longer.</param>
/// <param name="Try">Kept from now on.</param>
/// <param name="TodayMonthlyCost">What today's shelf costs with every job on its cheapest emulsion there; none where it can't serve every job. [money/month]</param>
/// <param name="SavesPerMonth">What the change saves, switching paid; none where today's shelf can't serve every job. [money/month]</param>
public sealed record ShelfChange(IReadOnlyList<string> Drop, IReadOnlyList<string> Try, double? TodayMonthlyCost, double? SavesPerMonth)
{
    /// <summary>Kept as today, but bought in another size.</summary>
    public IReadOnlyList<ShelfResize> Resize { get; init; } = [];
}
