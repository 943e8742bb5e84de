using Silkwright.Choosing;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What to measure first: what would settle the choice, then what would narrow the plan.</summary>
internal static class FirstMeasurements
{
    public static IReadOnlyList<string> For(EmulsionContest contest, ColourBrief brief, Comparison? comparison)
    {
        var first = new List<string>();
        if (comparison is { IsClose: true, Settles: { } settles })
            first.Add($"To settle the choice: {How(settles)}.");
        if (PlannedCoat.Of(contest, brief) is { } planned && NextReading.Of([planned], brief.Coats) is { } next)
            first.Add(next.What);
        return first;
    }

    /// <summary>How an input is found out in a shop.</summary>
    private static string How(Settling settles)
    {
        var of = settles.Of is { } emulsion ? $" of {emulsion}" : "";
        return settles.Input switch
        {
            CostInput.GramsPerScreen => $"weigh the emulsion in the trough before and after ten screens{of}",
            CostInput.FilmPerScreen => $"ask the price of a roll{of}",
            CostInput.PricePerKg => $"ask the price of a container{of}",
            CostInput.CoatingMinutes or CostInput.DryingMinutes or CostInput.ExposingMinutes or CostInput.MakingMinutes
                or CostInput.FinishMinutes or CostInput.ReclaimMinutes => $"take the time of ten screens{of}, for {CostInputs.Words(settles.Input)}",
            CostInput.DryingPlacePerScreen => "read what the drying cabinet uses in a week",
            CostInput.FinishPerScreen => $"weigh what the finish{of} uses on ten screens",
            CostInput.ReclaimPerScreen => $"count the meshes lost{of} in a month",
            CostInput.LabourPerHour => "ask what an hour in the screen room costs",
            CostInput.WastePercent => $"write down the day each container{of} was mixed and how much was poured away",
            CostInput.ExpectedFailures => $"write down the impressions of each screen{of} when it fails or comes off sound",
            CostInput.RemakeChance => $"expose a step test{of}, and count the screens that had to be made again",
            CostInput.StopForRemake or CostInput.StopForSpare => "write down how long the press stood for each change of a screen",
            _ => throw new ArgumentOutOfRangeException(nameof(settles)),
        };
    }
}
