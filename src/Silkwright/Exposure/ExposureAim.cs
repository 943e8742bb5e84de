using Silkwright.Estimates;
using Silkwright.Statistics;

namespace Silkwright.Exposure;

/// <summary>Where to aim: at what most likely both cures through and holds the detail.</summary>
/// <param name="OverThrough">Above the best value of through-cure. [log exposure]</param>
/// <param name="Amount">The aim; its interval is where the best exposure of this shop lies.</param>
/// <param name="Chance">Of an exposure there to do both, with all that is not known. [1]</param>
/// <param name="MiddleChance">The same at the window's geometric middle. [1]</param>
/// <param name="Because">Why it lies where it does, in a sentence.</param>
/// <remarks>docs/engines/exposure.md, equation 19. With both ends known as well as each other the aim is the geometric middle.</remarks>
public sealed record ExposureAim(double OverThrough, Estimate Amount, double Chance, double MiddleChance, string Because)
{
    /// <summary>Even a wide window is aimed at no higher than this over its least. [1]: two wedge steps. Common practice.</summary>
    public const double AtMostOverLeast = 2;

    /// <summary>Nearer to the middle than this is the middle. [log exposure]</summary>
    private const double Beside = 0.005;

    /// <param name="belief">What is believed of an open window.</param>
    /// <param name="wall">What the finest wall asks beyond through-cure. [log exposure]</param>
    /// <param name="day">What single days stand off it.</param>
    /// <param name="ground">What through-cure rests on.</param>
    public static ExposureAim Of(LogBelief belief, double wall, DayScatter day, Ground ground)
    {
        var roomShare = IfKnown(wall, belief.Room).RoomShare;
        var middle = (wall + belief.Room) / 2;
        var highest = Math.Min(belief.Room, wall + Math.Log(AtMostOverLeast));
        var limits = Limits(belief, wall, day);
        var aim = limits.Best(wall, highest);
        // Once both ends are known, days alone are left, and the best lies a little off the middle where the coat moves one end more than the other.
        var known = Limits(belief with { ThroughVariance = 0, RoomVariance = 0, Covariance = 0 }, wall, day).Best(wall, highest);
        var best = belief.Amount(known - (roomShare * belief.Room), roomShare, ground);
        var amount = Math.Exp(belief.Through + aim);
        return new ExposureAim(
            aim, new Estimate(amount, Math.Min(best.Low, amount), Math.Max(best.High, amount), ground), limits.ChanceBetween(aim), limits.ChanceBetween(middle), Why(aim, middle, highest, limits));
    }

    /// <summary>Half way up a window whose ends are known, but never more than two wedge steps over the least: so much, and such a share of the room.</summary>
    internal static (double Above, double RoomShare) IfKnown(double wall, double room)
    {
        var most = Math.Log(AtMostOverLeast);
        return (room - wall) / 2 > most ? (wall + most, 0) : (wall / 2, 0.5);
    }

    /// <summary>Both ends, over the best value of through-cure, as one exposure of one day meets them.</summary>
    private static NormalLimits Limits(LogBelief belief, double wall, DayScatter day)
    {
        var (dose, least, most) = (day.Dose * day.Dose, day.LeastByCoat, day.MostByCoat);
        return new NormalLimits(
            wall, belief.Room,
            belief.ThroughVariance + dose + (least * least),
            belief.ThroughVariance + belief.RoomVariance + (2 * belief.Covariance) + dose + (most * most),
            belief.ThroughVariance + belief.Covariance + dose + (least * most));
    }

    private static string Why(double aim, double middle, double highest, NormalLimits limits)
    {
        var off = Figures.Plain(100 * Math.Abs(Math.Exp(aim - middle) - 1), 0);
        var detailLess = limits.HighVariance > limits.LowVariance;
        return Math.Abs(aim - middle) < Beside ? "The aim is the middle of the window: nothing known of either end moves it."
            : aim >= highest && highest < limits.High ? "The aim is held at twice the least, as the trade does: the window is wide, and more light than that gains nothing but closed detail."
            : (aim < middle, detailLess) switch
            {
                (true, true) => $"The aim lies {off} % below the middle: where the detail closes is less sure than where the coat cures through, so it keeps away from there.",
                (false, false) => $"The aim lies {off} % above the middle: where the coat cures through is less sure than where the detail closes, so it keeps away from there.",
                (false, true) => $"The aim lies {off} % above the middle: the ends are less sure than the window is wide, a wide window is easier to meet than a narrow one, and it would reach higher.",
                (true, false) => $"The aim lies {off} % below the middle: the ends are less sure than the window is wide, a wide window is easier to meet than a narrow one, and it would reach lower.",
            };
    }
}
