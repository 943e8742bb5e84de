namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Which group each dot is of, so that a halftone is not taken for part of one beside it where dots of both happen to meet.</summary>
internal sealed class GroupedDots
{
    /// <summary>
    /// Dots whose spread about a lattice's sites is more stand on another. Anywhere at all is a spread of 0.41 (a square of side 1), on the sites 0.1 at most. [period]
    /// </summary>
    private const double MostSpread = 0.25;

    private readonly ScreenDots dots;
    private readonly IReadOnlyList<DotGroup> groups;

    /// <summary>Number of the group of each dot, from 1; 0 for none.</summary>
    private readonly ushort[] groupOf;

    /// <param name="dots">All of the film.</param>
    /// <param name="groups">The largest of them; what is left out is treated as of none.</param>
    public GroupedDots(ScreenDots dots, IReadOnlyList<DotGroup> groups)
    {
        (this.dots, this.groups) = (dots, groups);
        groupOf = new ushort[dots.Count];
        for (var k = 0; k < groups.Count; k++)
        {
            foreach (var member in groups[k].Members)
                groupOf[member] = (ushort)(k + 1);
        }
    }

    /// <summary>Number of a dot's group; 0 where it has none.</summary>
    public int Of(int dot) => groupOf[dot];

    /// <summary>For each group's number whether its dots stand elsewhere than on a lattice's sites.</summary>
    /// <param name="lattice">The lattice.</param>
    /// <param name="shift">From its sites to where dots would stand. [period]</param>
    public bool[] NotOn(ScreenLattice lattice, double shift) => [false, .. groups.Select(g => Spread(g, lattice, shift) > MostSpread)];

    private double Spread(DotGroup group, ScreenLattice lattice, double shift)
    {
        var square = 0.0;
        foreach (var member in group.Members)
        {
            var (di, dj) = lattice.Off(dots[member].X, dots[member].Y, shift);
            square += (di * di) + (dj * dj);
        }

        return Math.Sqrt(square / group.Members.Length);
    }
}
