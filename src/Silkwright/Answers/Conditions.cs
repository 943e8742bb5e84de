using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What ends a recommendation when it happens.</summary>
internal static class Conditions
{
    public static IReadOnlyList<string> For(ColourBrief brief, EmulsionContest contest, IReadOnlyList<CostCurve> curves)
    {
        if (contest.Winner is not { } winner)
            return [];
        var conditions = new List<string>();
        foreach (var curve in curves)
            conditions.AddRange(Turns(curve, winner.Emulsion.Id));
        conditions.Add("A screen that feels tacky, or a film that sticks in the vacuum frame: stop, dry longer, read the air.");
        conditions.Add(string.Create(
            CultureInfo.InvariantCulture,
            $"Less than step {Math.Max(1, (winner.Exposure.SolidStepAtAim ?? UsualSolidStep) - 1):0} solid on the wedge, or a soft squeegee side: stop, expose longer before any screen goes to press."));
        if (winner.Lot.DaysLeft is { } left)
        {
            conditions.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The day after {brief.On.AddDays((int)Math.Clamp(left.Low, 0, MostDaysTold)):d MMMM yyyy}: this lot of {winner.Emulsion.Id} may be over; test a coupon, or mix anew."));
        }

        return conditions;
    }

    private const double UsualSolidStep = 7;

    /// <summary>No lot is told to last longer. [d]</summary>
    private const double MostDaysTold = 3650;

    /// <summary>The nearest turn on either side of what was asked.</summary>
    private static IEnumerable<string> Turns(CostCurve curve, string chosen)
    {
        if (curve.Turns.LastOrDefault(turn => turn.At <= curve.Asked) is { } below && below.Above == chosen)
            yield return $"{Say(curve.Axis, below.At, "less")}: {Then(below.Below)}.";
        if (curve.Turns.FirstOrDefault(turn => turn.At >= curve.Asked) is { } above && above.Below == chosen)
            yield return $"{Say(curve.Axis, above.At, "more")}: {Then(above.Above)}.";
    }

    private static string Then(string? other) => other is null ? "none on the shelf may be used" : $"{other} costs less";

    private static string Say(TurningAxis axis, double at, string side) => axis switch
    {
        TurningAxis.Run => $"A run of {side} than about {Figures.TwoDigits(at)} pieces",
        TurningAxis.ScreensPerDay => $"A pace of {side} than about {Figures.TwoDigits(at)} screens a day",
        TurningAxis.HumidityPercent => $"Humidity of {side} than about {Figures.TwoDigits(at)} %",
        TurningAxis.EomUm => $"A stencil of {side} than about {Figures.TwoDigits(at)} µm ({Figures.TwoDigits(at / UmPerMil)} mil) over the mesh",
        _ => throw new ArgumentOutOfRangeException(nameof(axis)),
    };

    private const double UmPerMil = 25.4;
}
