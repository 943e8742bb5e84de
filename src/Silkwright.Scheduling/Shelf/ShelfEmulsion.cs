using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>An emulsion that could stand on the shelf.</summary>
/// <param name="Id">Its name, once in a case.</param>
/// <param name="FixedCostPerMonth">What keeping it costs whatever is made with it: training, tests, the waste nobody escapes. [money/month], 0 or more.</param>
public sealed record ShelfEmulsion(string Id, double FixedCostPerMonth)
{
    /// <summary>The fixed cost with its interval, where one is given. [money/month]</summary>
    public Estimate? FixedCostRange { get; init; }

    /// <summary>Screens a month that must be made with it if it is kept: below that a container dies half used. [screens/month], 0 or more.</summary>
    public double MinimumScreensPerMonth { get; init; }

    /// <summary>It stands on the shelf today.</summary>
    public bool KeptToday { get; init; }

    /// <summary>
    /// What the change costs, spread over the months it should earn itself back in: taking it on where it is not kept today, giving it
    /// up where it is. [money/month], 0 or more.
    /// </summary>
    public double SwitchingCostPerMonth { get; init; }

    /// <summary>
    /// The sizes it is sold in, the one bought today first; at most one is kept. Where there are any, the costs of jobs are without the
    /// emulsion itself, which is priced by the size. None: its price is in the costs.
    /// </summary>
    public IReadOnlyList<ShelfContainer> Containers { get; init; } = [];

    /// <summary>Emulsion on a screen of a job that does not say it itself. [g/screen], 0 or more.</summary>
    public double GramsPerScreen { get; init; }
}
