using Silkwright.Answers;

namespace Silkwright.Scheduling.Shelf;

/// <summary>A colour that comes again.</summary>
/// <param name="Name">Its job and its name, once in a shop's month.</param>
/// <param name="TimesPerMonth">[1/month]</param>
/// <param name="Costs">What it costs with each emulsion that may be used.</param>
internal sealed record ColourWork(string Name, double TimesPerMonth, IReadOnlyList<ColourCost> Costs)
{
    public ColourCost Of(string emulsion) => Costs.First(cost => cost.Emulsion == emulsion);
}
