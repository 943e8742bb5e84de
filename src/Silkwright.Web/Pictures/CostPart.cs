namespace Silkwright.Web.Pictures;

/// <summary>One part of a cost bar.</summary>
/// <param name="Name">In plain words.</param>
/// <param name="Fill">Name of its fill, which is told by pattern as well as colour.</param>
/// <param name="From">Where it begins, 0 to 1 of the longest bar.</param>
/// <param name="Width">How long it is, 0 to 1 of the longest bar.</param>
/// <param name="Cost">What it costs.</param>
public sealed record CostPart(string Name, string Fill, double From, double Width, double Cost)
{
    /// <summary>The parts in the same order everywhere: emulsion on the screen, hands, waste, spares and remakes.</summary>
    public static IReadOnlyList<CostPart> Of(Choosing.ScreenCost cost, double longest)
    {
        (string Name, string Fill, double Cost)[] parts =
        [
            ("emulsion on the screen", "emulsion", cost.EmulsionOnScreen.Value),
            ("hands", "hands", cost.Labour.Value),
            ("thrown away", "waste", cost.Waste.Value),
            ("spares, remakes, stops", "remakes", cost.Remakes.Value),
        ];
        var from = 0.0;
        return [.. parts.Select(part =>
        {
            var width = longest > 0 ? part.Cost / longest : 0;
            var placed = new CostPart(part.Name, part.Fill, from, width, part.Cost);
            from += width;
            return placed;
        })];
    }
}
