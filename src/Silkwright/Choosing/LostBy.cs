namespace Silkwright.Choosing;

/// <summary>Says in one sentence why a dearer choice lost.</summary>
public static class LostBy
{
    /// <summary>Parts this close cost the same for all practical purposes. [currency]</summary>
    private const double Nothing = 0.05;

    /// <summary>Further reasons are named when they weigh at least this much beside the first. [1]</summary>
    private const double WorthNaming = 1.0 / 3;

    /// <summary>A sentence that names more is not read.</summary>
    private const int MostReasons = 3;

    public static string Sentence(ScreenCost loser, ScreenCost winner)
    {
        (string Against, string For, double More)[] parts =
        [
            ("more of it is thrown away before it is used up", "less of it is thrown away", loser.Waste.Value - winner.Waste.Value),
            ("it is likelier to fail before the run is done", "it is likelier to finish the run", Failing(loser) - Failing(winner)),
            (
                "more of its screens must be made again before they print",
                "fewer of its screens must be made again before they print",
                loser.RemadeUnprinted.Value - winner.RemadeUnprinted.Value),
            ("it takes more work", "it takes less work", loser.Labour.Value - winner.Labour.Value),
            ("the emulsion on the screen costs more", "the emulsion itself is cheaper", loser.EmulsionOnScreen.Value - winner.EmulsionOnScreen.Value),
        ];
        var worst = parts.Max(part => part.More);
        if (worst < Nothing)
            return "either will do: they cost the same";
        var against = parts
            .OrderByDescending(part => part.More)
            .TakeWhile(part => part.More >= Math.Max(Nothing, WorthNaming * worst))
            .Take(MostReasons)
            .Select(part => part.Against)
            .ToArray();
        var offset = parts.MinBy(part => part.More);
        var reasons = against.Length < 3 ? string.Join(" and ", against) : $"{string.Join(", ", against[..^1])} and {against[^1]}";
        return reasons + (offset.More > -Nothing ? "" : $", though {offset.For}");

        static double Failing(ScreenCost cost) => cost.Remakes.Value - cost.RemadeUnprinted.Value;
    }
}
