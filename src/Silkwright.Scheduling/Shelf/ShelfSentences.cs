using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The answer in words: what a month costs, what to drop and to try, in which size to buy, what every other shelf costs, how sure that is.</summary>
public static class ShelfSentences
{
    /// <summary>A gap that no printed figure shows. [%]</summary>
    private const double ShownGapPercent = 1e-6;

    public static string Cost(ShelfAnswer answer)
    {
        var parts = $"{Figures.Exact(answer.FixedCostPerMonth)} for keeping, {Figures.Exact(answer.RunningCostPerMonth)} for the screens";
        var change = answer.SwitchingCostPerMonth > 0 ? $", {Figures.Exact(answer.SwitchingCostPerMonth)} for changing over" : "";
        return $"A month costs {Amount(answer.MonthlyCost, answer.Doubt?.MonthlyCost, answer)}: {parts}{change}.";
    }

    public static string Proof(ShelfAnswer answer) => answer.GapPercent <= ShownGapPercent
        ? "Proven: no shelf within the rules costs less."
        : $"Not proven: no shelf within the rules costs less than {Figures.Exact(answer.Bound)}, so this one is at most {Figures.Exact(answer.GapPercent)} % too dear.";

    /// <summary>Empty where the case does not say what is kept today.</summary>
    public static string Change(ShelfAnswer answer)
    {
        if (answer.Change is not { } change)
            return "";
        var drop = change.Drop.Count > 0 ? $"Drop {List(change.Drop)}. " : "";
        var take = change.Try.Count > 0 ? $"Try {List(change.Try)}. " : "";
        var resize = string.Concat(change.Resize.Select(resize => $"Buy {resize.Emulsion} by {Figures.Exact(resize.ToGrams)} g, not {Figures.Exact(resize.FromGrams)} g. "));
        var same = change.Drop.Count + change.Try.Count + change.Resize.Count == 0 ? "Today's shelf is the one to keep. " : "";
        var saves = change.SavesPerMonth switch
        {
            null => "Today's shelf does not serve every job.",
            > 0 and var saved => $"Against today's shelf, which costs {Today(change.TodayMonthlyCost!.Value, answer)}, that saves {Amount(saved, answer.Doubt?.SavesPerMonth, answer)} a month.",
            < 0 and var saved => $"Today's shelf costs {Amount(-saved, null, answer)} a month less, but breaks a rule of the case.",
            _ => $"It costs {Amount(change.TodayMonthlyCost!.Value, null, answer)} a month.",
        };
        return $"{same}{drop}{take}{resize}{saves}";
    }

    /// <summary>One for each kept emulsion that is sold in several sizes.</summary>
    public static IEnumerable<string> Sizes(ShelfAnswer answer) =>
        from use in answer.Uses
        where use.Size is { NextGrams: not null, NextExtra: not null }
        let size = use.Size!
        select $"Buy {use.Emulsion} by {Figures.Exact(size.Grams)} g at {Amount(size.Price, null, answer)}: by {Figures.Exact(size.NextGrams!.Value)} g the same screens cost {Amount(size.NextExtra!.Value, null, answer)} more a month.";

    public static IEnumerable<string> Others(ShelfAnswer answer)
    {
        if (answer.SecondBest is { } second)
        {
            var also = IsSecond(answer.OneMore) ? ", and the best with one more" : IsSecond(answer.OneFewer) ? ", and the best with one fewer" : "";
            yield return $"The next best shelf{also} ({List(second.Keep)}) {Dearer(second, answer.Doubt?.SecondBest, answer)}.";
        }

        if (answer.OneMore is { } more && !IsSecond(more))
            yield return $"Keeping one more ({List(more.Keep)}) {Dearer(more, answer.Doubt?.OneMore, answer)}.";
        if (answer.OneFewer is { } fewer && !IsSecond(fewer))
            yield return $"Keeping one fewer ({List(fewer.Keep)}) {Dearer(fewer, answer.Doubt?.OneFewer, answer)}.";
        else if (answer.OneFewer is null && answer.Keep.Count > 1)
            yield return "With one fewer not every job can be made.";

        bool IsSecond(OtherShelf? other) => other is not null && answer.IsSecondBest(other);
    }

    /// <summary>Empty where nothing is known of it.</summary>
    public static string Sure(ShelfAnswer answer) => answer.Doubt is not { } doubt ? "" : doubt.ChanceCheapestPercent switch
    {
        >= 99.5 => "Whatever the costs turn out to be within their intervals, no other shelf told here is cheaper.",
        var chance => $"With costs as uncertain as they are, this shelf is the cheapest of those told here in {Figures.Whole(chance)} of 100 possible worlds.",
    };

    private static string Dearer(OtherShelf other, Estimate? extra, ShelfAnswer answer)
    {
        var sure = other.MonthlyCost - other.Bound <= ShownGapPercent / 100 * Math.Abs(other.MonthlyCost) ? "" : $" (the cheapest of its kind costs {Figures.Exact(other.Bound)} or more)";
        if (other.Extra >= 0 && extra is not null && Figures.Interval(extra) is { Length: > 0 } interval)
            return $"costs {Figures.More(extra)} a month ({interval}{Currency(answer)}){sure}";
        return other.Extra >= 0 ? $"costs {Amount(other.Extra, null, answer)} more a month{sure}" : $"would cost {Figures.Exact(-other.Extra)} a month less{sure}, but the case does not allow it";
    }

    /// <summary>Money with its interval, as far as they are known.</summary>
    private static string Amount(double value, Estimate? estimate, ShelfAnswer answer)
    {
        return estimate is { } known && Figures.Interval(known) is { Length: > 0 } interval
            ? $"{Figures.Value(known)}{Currency(answer)} ({interval})"
            : $"{Figures.Exact(value)}{Currency(answer)}";
    }

    /// <summary>Today's cost, no finer than what is saved beside it.</summary>
    private static string Today(double cost, ShelfAnswer answer) => answer.Doubt?.SavesPerMonth is { } saves && saves.High > saves.Low
        ? $"{Figures.Like(saves, cost)}{Currency(answer)}"
        : Amount(cost, null, answer);

    private static string Currency(ShelfAnswer answer) => answer.Currency is { } name ? $" {name}" : "";

    private static string List(IReadOnlyList<string> ids) => string.Join(", ", ids);
}
