namespace Silkwright.Statistics.Mixed;

/// <summary>Which terms lie within one: every one of their levels has rows of only one of its levels, as an operator works in one shop.</summary>
/// <remarks>Given the effects that cross all of them, the levels of the outer term know nothing of each other, so that each is worked out alone.</remarks>
internal sealed class Nesting
{
    public Nesting(IReadOnlyList<RandomTerm> terms)
    {
        Within = Enumerable.Range(0, terms.Count).Where(outer => !terms[outer].Crosses).Select(outer => WithinOf(terms, outer)).MinBy(within => Work(terms, within))!;
        Across = [.. Enumerable.Range(0, terms.Count).Except(Within)];
    }

    /// <summary>The outer term and those within it.</summary>
    public IReadOnlyList<int> Within { get; }

    /// <summary>The other terms.</summary>
    public IReadOnlyList<int> Across { get; }

    private static int[] WithinOf(IReadOnlyList<RandomTerm> terms, int outer) =>
        [outer, .. Enumerable.Range(0, terms.Count).Where(t => t != outer && !terms[t].Crosses && IsWithin(terms[t], terms[outer]))];

    /// <summary>About how much work it is to take the equations apart so: the cubes of the blocks and of what crosses them.</summary>
    private static double Work(IReadOnlyList<RandomTerm> terms, int[] within)
    {
        var outer = terms[within[0]];
        var sizes = new double[outer.Levels];
        foreach (var t in within)
        {
            var seen = new bool[terms[t].Levels];
            for (var row = 0; row < outer.LevelOfRow.Count; row++)
            {
                if (seen[terms[t].LevelOfRow[row]])
                    continue;
                seen[terms[t].LevelOfRow[row]] = true;
                sizes[outer.LevelOfRow[row]] += terms[t].Width;
            }
        }

        var across = terms.Where((_, t) => !within.Contains(t)).Sum(term => (double)term.Levels * term.Width);
        return sizes.Sum(size => size * size * size) + (sizes.Length * across * across) + (across * across * across);
    }

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
