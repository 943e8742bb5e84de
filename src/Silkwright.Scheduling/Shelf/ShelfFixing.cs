namespace Silkwright.Scheduling.Shelf;

/// <summary>What a bound says of every shelf that costs less than the best one found. docs/engines/shelf.md, equations 9 and 10.</summary>
/// <param name="States">By emulsion.</param>
internal sealed record ShelfFixing(Fixed[] States)
{
    /// <summary>By point: what it may cost at most to be served, beyond what its emulsion allows. Empty: anything. [money/month]</summary>
    public double[] Prices { get; init; } = [];

    /// <summary>By emulsion: how far above its point's price a service may lie. [money/month]</summary>
    public double[] Room { get; init; } = [];

    public static ShelfFixing Nothing(ShelfProblem problem) => new(new Fixed[problem.Choices]);

    /// <summary>A better shelf might serve this point with this emulsion.</summary>
    public bool MayServe(int emulsion, ShelfProblem problem, int point) =>
        Prices.Length == 0 || problem.Costs[emulsion][point] - Prices[point] < Room[emulsion];
}
