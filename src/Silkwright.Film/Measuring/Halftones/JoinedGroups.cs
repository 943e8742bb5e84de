namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Puts together the groups of several swaths that stand on one lattice.</summary>
internal static class JoinedGroups
{
    /// <summary>How much the steps of one lattice, and its place, may differ from swath to swath. [period]</summary>
    private const double MostApart = 0.002;
    private const double MostOff = 0.1;

    /// <summary>The groups, each lattice once, fitted to all its dots: seen in one swath alone it would lead astray far from it.</summary>
    public static IReadOnlyList<DotGroup> Of(IReadOnlyList<DotGroup> groups, ScreenDots dots)
    {
        var joined = new List<DotGroup>();
        var left = groups.OrderByDescending(g => g.Members.Length).ToList();
        while (left.Count > 0)
        {
            var lattice = left[0].Lattice;
            var one = left.FindAll(g => IsOn(g.Lattice, lattice));
            _ = left.RemoveAll(one.Contains);
            joined.Add(one.Count == 1 ? one[0] : Fitted(lattice, Members(one), dots));
        }

        return joined;
    }

    private static bool IsOn(ScreenLattice one, ScreenLattice other)
    {
        var (i, j) = other.Off(one.OriginX, one.OriginY);
        return one.Differs(other) < MostApart && Math.Abs(i) < MostOff && Math.Abs(j) < MostOff;
    }

    /// <summary>Each dot once, in their order; swaths have dots in common.</summary>
    private static int[] Members(List<DotGroup> groups)
    {
        int[] all = [.. groups.SelectMany(g => g.Members)];
        Array.Sort(all);
        var count = 0;
        foreach (var member in all)
        {
            if (count == 0 || all[count - 1] != member)
                all[count++] = member;
        }

        return all[..count];
    }

    private static DotGroup Fitted(ScreenLattice lattice, int[] members, ScreenDots dots) => new(
        ScreenLattice.Fit(members.Select(m =>
        {
            var (i, j) = lattice.Sites(dots[m].X, dots[m].Y);
            return (Math.Round(i), Math.Round(j), (double)dots[m].X, (double)dots[m].Y);
        })),
        members);
}
