namespace Silkwright.Scheduling.Shelf;

/// <summary>Which sets of emulsions may be kept; of each at most one size.</summary>
/// <param name="Least">Fewest emulsions to keep. 0 or more.</param>
/// <param name="Most">Most to keep.</param>
/// <param name="Not">By emulsion: a set that is not asked for in any sizes; none where every set is.</param>
internal sealed record ShelfRules(int Least, int Most, bool[]? Not = null)
{
    public bool Allow(ShelfProblem problem, bool[] keep)
    {
        var emulsions = problem.EmulsionsOf(keep);
        var count = emulsions.Count(kept => kept);
        return count == keep.Count(kept => kept) && count >= Least && count <= Most && !(Not is { } not && emulsions.AsSpan().SequenceEqual(not));
    }
}
