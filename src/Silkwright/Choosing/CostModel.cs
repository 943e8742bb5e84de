using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>Expected cost of one colour's screens over the run.</summary>
/// <remarks>docs/engines/choosing.md, equations 1 to 4. Sums of expectations; no discounting, no fixed cost of keeping an emulsion.</remarks>
public static class CostModel
{
    public static ScreenCost Of(CostCase cost)
    {
        var grams = new Uncertain("emulsion on the screen", cost.GramsPerScreen);
        var price = new Uncertain("price of the emulsion", cost.PricePerKg);
        var minutes = new Uncertain("hands-on minutes", cost.MinutesPerScreen);
        var rate = new Uncertain("labour rate", cost.LabourPerHour);
        var waste = new Uncertain("share thrown away", cost.WastePercent);
        var failures = new Uncertain("stencil life", cost.ExpectedFailures);
        var remake = new Uncertain("remakes before printing", cost.RemakeChance);
        var stop = new Uncertain("stopped press", cost.StopForRemake);
        var swap = new Uncertain("putting on a spare", cost.StopForSpare);
        var finish = new Uncertain("finish", cost.FinishPerScreen);
        Uncertain[] all = [grams, price, minutes, rate, waste, failures, remake, stop, finish, swap];

        var total = Propagation.Through(x => OnScreen(x) + Hands(x) + ThrownAway(x) + Risk(x), all, floor: 0);
        return new ScreenCost
        {
            Total = total.Estimate,
            Drivers = total.Drivers,
            EmulsionOnScreen = Propagation.Through(OnScreen, all, floor: 0).Estimate,
            Labour = Propagation.Through(Hands, all, floor: 0).Estimate,
            Waste = Propagation.Through(ThrownAway, all, floor: 0).Estimate,
            Remakes = Propagation.Through(Risk, all, floor: 0).Estimate,
        };

        // The order of the values is that of `all` above.
        double OnScreen(IReadOnlyList<double> x) => cost.Screens * x[0] / 1000 * x[1];
        double Hands(IReadOnlyList<double> x) => cost.Screens * ((x[2] * x[3] / 60) + x[8]);
        double ThrownAway(IReadOnlyList<double> x) => OnScreen(x) * x[4] / (100 - Math.Min(x[4], 99));
        double Making(IReadOnlyList<double> x) => (OnScreen(x) + Hands(x) + ThrownAway(x)) / cost.Screens;
        double Risk(IReadOnlyList<double> x)
        {
            var remade = ExpectedBeyond(x[5], cost.Screens - 1);
            return (remade * (Making(x) + x[7])) + ((x[5] - remade) * x[9]) + (cost.Screens * x[6] * Making(x));
        }
    }

    /// <summary>How much dearer one choice is than another, with what both share (the labour rate) kept the same on both sides.</summary>
    public static Estimate Difference(ScreenCost dearer, ScreenCost cheaper)
    {
        var value = dearer.Total.Value - cheaper.Total.Value;
        Estimate[] own = [dearer.EmulsionOnScreen, dearer.Waste, dearer.Remakes, cheaper.EmulsionOnScreen, cheaper.Waste, cheaper.Remakes];
        var half = Math.Sqrt(own.Sum(part => Square((part.High - part.Low) / 2)));
        return new Estimate(value, value - half, value + half, dearer.Total.Ground);
    }

    /// <summary>Failures beyond the spares: E[max(0, N − spares)] for a Poisson count N, which errs on the side of more.</summary>
    private static double ExpectedBeyond(double expectedFailures, int spares)
    {
        if (expectedFailures <= 0)
            return 0;
        var beyond = expectedFailures;
        var none = Math.Exp(-expectedFailures);
        var (term, reached) = (none, none);
        for (var count = 0; count < spares; count++)
        {
            beyond -= 1 - reached;
            term *= expectedFailures / (count + 1);
            reached += term;
        }

        return Math.Max(0, beyond);
    }

    private static double Square(double x) => x * x;
}
