using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>Plans a step test: the fewest strips on a geometric ladder that bring the wanted certainty.</summary>
/// <remarks>
/// Whatever the truth may be after what is believed, strips are drawn by equation 13 and read by it; the middle of the intervals that follow is what to expect:
/// docs/engines/exposure.md, "Planning a test".
/// </remarks>
public static class StepLadder
{
    private const int FewestStrips = 3;

    /// <summary>More do not fit on a screen beside their wedges. Common practice, no source.</summary>
    public const int MostStrips = 9;

    /// <summary>Strips nearer than this tell the same twice; the trade's ladder is root two. [1]</summary>
    private const double LeastRatio = 1.12;

    /// <summary>A time that a shop has worked with is right to about this factor. Common practice, no source.</summary>
    private const double AroundFactor = 2;

    private const int Draws = 15;
    private const int Seed = 19750701;

    /// <exception cref="ArgumentOutOfRangeException">The case or the wish makes no sense; a machine that counts units without a strip and without a guess.</exception>
    public static LadderPlan Plan(ExposureCase exposure, LadderWish wish)
    {
        var window = ExposureModel.Window(exposure);
        var belief = Belief(exposure, wish);
        var (from, to) = Range(belief);
        var best = Try(MostStrips);
        if (best.Half <= wish.WantedHalf)
        {
            var (fewest, most) = (FewestStrips, MostStrips - 1);
            while (fewest <= most)
            {
                var count = (fewest + most) / 2;
                if (Try(count) is var fewer && fewer.Half <= wish.WantedHalf)
                    (best, most) = (fewer, count - 1);
                else
                    fewest = count + 1;
            }
        }

        var usual = belief.Through + Math.Log(CoatOptics.GoodOverLeast);
        return new LadderPlan
        {
            Counts = exposure.Lamp.Counts == ExposureCount.Units ? ExposureCount.Units : window.Counts,
            Amounts = best.Amounts,
            SmallestSetting = wish.SmallestSetting,
            SharedSettings = [.. best.Steps.GroupBy(step => Set(step, wish.SmallestSetting)).Where(steps => steps.Count() > 1).Select(steps => new SharedSetting(steps.Key, [.. steps]))],
            WeakerLight = Math.Max(1, wish.SmallestSetting / (best.Steps[1] - best.Steps[0])),
            Ratio = Math.Pow(best.Amounts[^1] / best.Amounts[0], 1.0 / Math.Max(1, best.Amounts.Length - 1)),
            ExpectedHalf = best.Half,
            MayBeShut = belief.Room <= 0,
            HalfNow = HalfOf(belief),
            WantedHalf = wish.WantedHalf,
            ExpectedSteps = [.. best.Amounts.Select(amount =>
                Math.Max(0, StepWedge.UsualSolidStep + ((Math.Log(amount) - usual) / Math.Log(StepWedge.FactorPerStep()))))],
        };

        (double[] Steps, double[] Amounts, double Half) Try(int count)
        {
            var steps = Ladder(from, to, count);
            double[] amounts = [.. steps.Select(step => Set(step, wish.SmallestSetting)).Distinct()];
            return (steps, amounts, Expected(exposure, wish, belief, amounts));
        }
    }

    private static LogBelief Belief(ExposureCase exposure, LadderWish wish)
    {
        var believed = ExposureModel.Believe(exposure);
        if (wish.Around is { } around)
        {
            var deviation = Math.Log(AroundFactor) / LogBelief.UsualReach;
            return believed with { Through = Math.Log(around / CoatOptics.GoodOverLeast), ThroughVariance = deviation * deviation, Covariance = 0 };
        }

        if (exposure.Lamp.Counts == ExposureCount.Units && !exposure.Tests.Any(strip => !strip.Damp))
            throw new ArgumentOutOfRangeException(nameof(wish), wish, "Units of a machine can be planned only around a number of them.");
        return believed;
    }

    /// <summary>From the least that may cure to the most that may hold, but no farther than an aim may lie.</summary>
    private static (double From, double To) Range(LogBelief belief)
    {
        var least = belief.Amount(0, 0, Ground.Model);
        return (least.Low, Math.Max(least.High, Math.Min(belief.Amount(0, 1, Ground.Model).High, ExposureAim.AtMostOverLeast * least.High)));
    }

    private static double[] Ladder(double from, double to, int count)
    {
        var ratio = Math.Max(LeastRatio, Math.Pow(to / from, 1.0 / (count - 1)));
        var start = Math.Sqrt(from * to) / Math.Pow(ratio, (count - 1) / 2.0);
        return [.. Enumerable.Range(0, count).Select(i => start * Math.Pow(ratio, i))];
    }

    /// <summary>What the shutter or the counter makes of a step.</summary>
    private static double Set(double step, double smallest) => Math.Round(Math.Max(smallest, Math.Round(step / smallest) * smallest), 6);

    private static double Expected(ExposureCase exposure, LadderWish wish, LogBelief belief, double[] amounts)
    {
        var halves = new double[Draws];
        for (var draw = 0; draw < Draws; draw++)
        {
            var strips = DrawnStrips.Of(new Random(Seed + draw), exposure, belief, amounts, wish.MeasuresCoat);
            halves[draw] = HalfOf(ExposureModel.Believe(exposure with { Tests = [.. exposure.Tests, .. strips] }));
        }

        return halves.Order().ElementAt(Draws / 2);
    }

    /// <summary>Half of the aim's interval; of the middle between least and most where they lie the wrong way round.</summary>
    private static double HalfOf(LogBelief belief)
    {
        var (above, roomShare) = ExposureAim.IfKnown(0, Math.Max(0, belief.Room));
        var aim = belief.Amount(above, roomShare, Ground.Model);
        return (aim.High - aim.Low) / 2 / aim.Value;
    }
}
