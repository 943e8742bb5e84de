using Silkwright.Emulsion;
using Silkwright.Plans;
using Silkwright.Stock;

namespace Silkwright.Web.Pages.Today;

/// <summary>A lot of the shop and how long it still works.</summary>
public sealed record LotSight(StencilEmulsion Emulsion, LotState State)
{
    /// <summary>Lots that say when they were received or sensitised, those that die first in front.</summary>
    public static IReadOnlyList<LotSight> Of(Shop shop, DateOnly today) =>
        [.. shop.Emulsions
            .Select(e => new LotSight(e, PotLife.Of(e, today)))
            .Where(l => l.State.DaysLeft is not null)
            .OrderBy(l => l.State.DaysLeft!.Value)];

    /// <summary>"6 days left", "over for 9 days".</summary>
    public string Words
    {
        get
        {
            var days = (int)Math.Floor(State.DaysLeft!.Value);
            return State.Over ? $"over for {Days(Math.Max(1, -days))}" : days == 0 ? "last day" : $"{Days(days)} left";
        }
    }

    private static string Days(int days) => days == 1 ? "1 day" : $"{days} days";
}
