namespace Silkwright.Scheduling.Shelf;

/// <summary>Which sets of emulsions may be kept.</summary>
/// <param name="Least">Fewest to keep. 0 or more.</param>
/// <param name="Most">Most to keep.</param>
/// <param name="Not">A set that is not asked for; none where every set is.</param>
internal sealed record ShelfRules(int Least, int Most, bool[]? Not = null)
{
    public bool Allow(bool[] keep)
    {
        var count = keep.Count(kept => kept);
        return count >= Least && count <= Most && !(Not is { } not && keep.AsSpan().SequenceEqual(not));
    }
}
