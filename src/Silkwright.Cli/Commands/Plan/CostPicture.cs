using Silkwright.Choosing;
using Silkwright.Cli.Printing;
using Silkwright.Estimates;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>The parts of a cost as a bar of characters, always in the same order.</summary>
internal static class CostPicture
{
    private const int Characters = 60;

    /// <summary>A part of less than half a hundredth is nothing that anyone pays. [currency]</summary>
    private const double Nothing = 0.005;

    public static IEnumerable<string> Lines(ScreenCost cost, ShownUnit money)
    {
        (char Mark, string Name, Estimate Cost)[] all =
        [
            ('█', "emulsion", cost.EmulsionOnScreen),
            ('▓', "hands", cost.Labour),
            ('▒', "thrown away", cost.Waste),
            ('░', "remakes and stops", cost.Remakes),
        ];
        var parts = all.Where(part => part.Cost.Value >= Nothing).ToArray();
        var total = parts.Sum(part => part.Cost.Value);
        if (!(total > 0))
            yield break;
        yield return string.Concat(parts.Select(part => new string(part.Mark, (int)Math.Round(Characters * part.Cost.Value / total))));
        yield return string.Join("   ", parts.Select(part => $"{part.Mark} {part.Name} {money.Value(part.Cost)}"));
    }
}
