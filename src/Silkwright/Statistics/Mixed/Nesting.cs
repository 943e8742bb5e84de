namespace Silkwright.Statistics.Mixed;

/// <summary>Which terms lie within one: every one of their levels has rows of only one of its levels, as an operator works in one shop.</summary>
/// <remarks>Given the effects that cross all of them, the levels of the outer term know nothing of each other, so that each is worked out alone.</remarks>
internal sealed class Nesting
{
    public Nesting(IReadOnlyList<RandomTerm> terms)
    {
        var choices = Enumerable.Range(0, terms.Count).Select(outer => (Outer: outer, Within: Enumerable.Range(0, terms.Count).Where(t => t != outer && IsWithin(terms[t], terms[outer])).ToArray()));
        var best = choices.MaxBy(c => Effects(terms[c.Outer]) + c.Within.Sum(t => Effects(terms[t])));
        Within = [best.Outer, .. best.Within];
        Across = [.. Enumerable.Range(0, terms.Count).Except(Within)];
    }

    /// <summary>The outer term and those within it.</summary>
    public IReadOnlyList<int> Within { get; }

    /// <summary>The other terms.</summary>
    public IReadOnlyList<int> Across { get; }

    private static long Effects(RandomTerm term) => (long)term.Levels * term.Width;

    private static bool IsWithin(RandomTerm inner, RandomTerm outer)
    {
        var at = new int[inner.Levels];
        Array.Fill(at, -1);
        for (var row = 0; row < inner.LevelOfRow.Count; row++)
        {
            ref var seen = ref at[inner.LevelOfRow[row]];
            if (seen >= 0 && seen != outer.LevelOfRow[row])
                return false;
            seen = outer.LevelOfRow[row];
        }

        return true;
    }
}
