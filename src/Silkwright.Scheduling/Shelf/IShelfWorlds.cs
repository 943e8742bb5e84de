using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>Many possible worlds: what a case's costs may turn out to be, the same luck for every shelf.</summary>
internal interface IShelfWorlds
{
    /// <summary>How many worlds. 1 or more.</summary>
    int Count { get; }

    /// <summary>What the spread rests on.</summary>
    Ground Ground { get; }

    /// <summary>What keeping costs in a world, switching apart. [money/month]</summary>
    double Keeping(ShelfStand stand, int world);

    /// <summary>What a screen of a job costs in a world. [money/screen]</summary>
    double PerScreen(ShelfJob job, ShelfStand stand, int world);
}
