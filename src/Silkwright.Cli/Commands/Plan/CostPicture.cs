using Silkwright.Choosing;
using Silkwright.Cli.Printing;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>The parts of a cost as a bar of characters, always in the same order.</summary>
internal static class CostPicture
{
    private const int Characters = 60;

    public static IEnumerable<string> Lines(ScreenCost cost, ShownUnit money)
    {
        (char Mark, string Name, double Value)[] parts =
        [
            ('█', "emulsion", cost.EmulsionOnScreen.Value),
            ('▓', "hands", cost.Labour.Value),
            ('▒', "thrown away", cost.Waste.Value),
            ('░', "remakes and stops", cost.Remakes.Value),
        ];
        var total = parts.Sum(part => part.Value);
        if (!(total > 0))
            yield break;
        yield return string.Concat(parts.Select(part => new string(part.Mark, (int)Math.Round(Characters * part.Value / total))));
        yield return string.Join("   ", parts.Select(part => $"{part.Mark} {part.Name} {money.Write(part.Value)}"));
    }
}
