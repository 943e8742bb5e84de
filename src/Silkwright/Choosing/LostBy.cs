namespace Silkwright.Choosing;

/// <summary>Says in one sentence why a dearer choice lost.</summary>
public static class LostBy
{
    /// <summary>Parts this close cost the same for all practical purposes. [currency]</summary>
    private const double Nothing = 0.05;

    public static string Sentence(ScreenCost loser, ScreenCost winner)
    {
        var parts = new (string Words, double More)[]
        {
            ("more of it is thrown away before it is used up", loser.Waste.Value - winner.Waste.Value),
            ("it is likelier to fail before the run is done", loser.Remakes.Value - winner.Remakes.Value),
            ("it takes more work", loser.Labour.Value - winner.Labour.Value),
            ("the emulsion on the screen costs more", loser.EmulsionOnScreen.Value - winner.EmulsionOnScreen.Value),
        };
        var worst = parts.MaxBy(part => part.More);
        if (worst.More < Nothing)
            return "as good, at the same cost";
        var offset = parts.MinBy(part => part.More);
        var but = offset.More > -Nothing ? "" : offset.Words switch
        {
            "more of it is thrown away before it is used up" => ", though less of it is thrown away",
            "it is likelier to fail before the run is done" => ", though it is likelier to finish the run",
            "it takes more work" => ", though it takes less work",
            _ => ", though the emulsion itself is cheaper",
        };
        return worst.Words + but;
    }
}
