using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Web.Look;

namespace Silkwright.Web.Pages.Jobs.Sheet;

/// <summary>A colour in a few words, for its tab.</summary>
public static class ColourWords
{
    public static string Of(ColourPlan plan, UnitSystem read)
    {
        var (finest, what) = StationWords.Finest(plan);
        var art = plan.Needs.RulingLpi is { } ruling ? $"{Figures.Plain(ruling.Value)} lpi" : null;
        var detail = finest is null ? null : $"{what}s from {Units.Length(finest, read)}";
        return string.Join(", ", new[] { Said.Of(plan.Colour.Ink), art, detail }.OfType<string>());
    }
}
