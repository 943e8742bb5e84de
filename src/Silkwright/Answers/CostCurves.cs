using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>Plays one circumstance through its range and finds where the choice turns.</summary>
internal static class CostCurves
{
    /// <summary>Values looked at along a curve.</summary>
    private const int Points = 9;

    /// <summary>Emulsions of either end that are tried between two values: a turn lies among the cheapest.</summary>
    private const int LookedAtInTurns = 4;

    /// <summary>Halvings between two values: the turn is then known to a thousandth of the step.</summary>
    private const int Halvings = 10;

    /// <summary>The curve of one circumstance about the question's own value.</summary>
    /// <param name="axis">The circumstance.</param>
    /// <param name="brief">The question.</param>
    /// <param name="contest">The contest as asked.</param>
    /// <param name="asked">The circumstance's value in the question.</param>
    public static CostCurve Of(TurningAxis axis, ColourBrief brief, EmulsionContest contest, double asked)
    {
        // Only another thickness changes the coats and their exposures.
        var known = axis == TurningAxis.EomUm ? null : contest.Exposed;
        var values = Range(axis, asked);
        var contests = values.Select(value => Hold(value)).ToArray();
        var turns = new List<TurningPoint>();
        for (var i = 1; i < values.Length; i++)
        {
            var (below, above) = (contests[i - 1].Winner?.Emulsion.Id, contests[i].Winner?.Emulsion.Id);
            if (below != above)
            {
                var near = contests[i - 1].Allowed.Take(LookedAtInTurns).Concat(contests[i].Allowed.Take(LookedAtInTurns)).Select(candidate => candidate.Emulsion.Id).ToHashSet();
                turns.Add(Turn(axis, values[i - 1], values[i], below, above, value => Hold(value, near)));
            }
        }

        return new CostCurve(
            axis,
            asked,
            values,
            brief.Shop.Emulsions.Select(emulsion => emulsion.Id).Distinct(StringComparer.Ordinal).ToDictionary(
                id => id,
                id => (IReadOnlyList<double?>)[.. contests.Select(held => held.Allowed
                    .FirstOrDefault(candidate => candidate.Emulsion.Id == id)?.Cost.Total.Value)]),
            turns);

        EmulsionContest Hold(double value, IReadOnlySet<string>? among = null)
        {
            var held = With(brief, axis, value);
            return EmulsionContest.Of(
                among is null ? held : held with { Shop = held.Shop with { Emulsions = [.. held.Shop.Emulsions.Where(emulsion => among.Contains(emulsion.Id))] } }, known);
        }
    }

    /// <summary>Narrows a turn by halving; where a third takes over between, the first change from below is told.</summary>
    private static TurningPoint Turn(
        TurningAxis axis, double low, double high, string? below, string? above, Func<double, EmulsionContest> hold)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var middle = IsRatio(axis) ? Math.Sqrt(low * high) : (low + high) / 2;
            var winner = hold(middle).Winner?.Emulsion.Id;
            if (winner == below)
                low = middle;
            else
                (high, above) = (middle, winner);
        }

        return new TurningPoint(axis, IsRatio(axis) ? Math.Sqrt(low * high) : (low + high) / 2, below, above);
    }

    private static bool IsRatio(TurningAxis axis) => axis is TurningAxis.Run or TurningAxis.ScreensPerDay;

    private static double[] Range(TurningAxis axis, double asked)
    {
        var (low, high) = axis switch
        {
            TurningAxis.Run => (Math.Max(1, asked / 32), Math.Min(MostRun, asked * 32)),
            TurningAxis.ScreensPerDay => (Math.Max(0.1, asked / 32), asked * 32),
            TurningAxis.HumidityPercent => (Math.Min(asked, 30), Math.Max(asked, 90)),
            TurningAxis.EomUm => (asked / 2, asked * 2),
            _ => throw new ArgumentOutOfRangeException(nameof(axis)),
        };
        return [.. Enumerable.Range(0, Points).Select(i => IsRatio(axis)
            ? low * Math.Pow(high / low, i / (Points - 1.0))
            : low + ((high - low) * i / (Points - 1.0)))];
    }

    /// <summary>Longer runs than this are beyond any press. [pieces]</summary>
    private const double MostRun = 5e6;

    private static ColourBrief With(ColourBrief brief, TurningAxis axis, double value) => axis switch
    {
        TurningAxis.Run => brief with { Impressions = (long)Math.Round(Math.Max(1, value) * brief.Colour.ImpressionsPerGarment) },
        TurningAxis.ScreensPerDay => brief with { Shop = brief.Shop with { ScreensPerDay = value } },
        TurningAxis.HumidityPercent => brief with { Shop = brief.Shop with { Room = brief.Shop.Room with { HumidityPercent = value } } },
        TurningAxis.EomUm => brief with { WantedEomUm = value },
        _ => throw new ArgumentOutOfRangeException(nameof(axis)),
    };
}
