using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>The aim is where an exposure most likely cures through and holds the detail: held against days drawn one by one.</summary>
public class ExposureAimTests
{
    private const double Wall = 0.05;

    private static readonly Gen<LogBelief> Beliefs = Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.02, 0.6], Gen.Double[0.02, 0.5], Gen.Double[-0.8, 0.8], (room, through, width, correlation) =>
        new LogBelief(4, Wall + room, through * through, width * width, correlation * through * width));

    private static readonly Gen<DayScatter> Days = Gen.Select(Gen.Double[0.05, 0.3], Gen.Double[0, 0.12], Gen.Double[-0.1, 0.1], (dose, least, most) => new DayScatter(dose, least, most));

    /// <summary>Ten thousand shops as they may be, each on a day of its own; every amount between least and most is tried on all of them.</summary>
    [Fact]
    public void No_amount_does_better_over_drawn_shops_and_days() => Gen.Select(Beliefs, Days, Gen.Int[1, 1_000_000]).Sample((belief, day, seed) =>
    {
        const int drawn = 10_000, tried = 60;
        var aim = ExposureAim.Of(belief, Wall, day, Ground.Model);
        var random = new Random(seed);
        var shops = Enumerable.Range(0, drawn).Select(_ => Shop(random, belief, day)).ToArray();
        double Share(double over) => shops.Count(shop => shop.Least < over && over < shop.Most) / (double)drawn;
        var highest = Math.Min(belief.Room, Wall + Math.Log(2));
        var best = Enumerable.Range(0, tried + 1).Max(i => Share(Wall + ((highest - Wall) * i / tried)));
        var error = Math.Sqrt(0.25 / drawn);
        Assert.Equal(aim.Chance, Share(aim.OverThrough), 4.5 * error);
        Assert.True(Share(aim.OverThrough) >= best - (3 * error), $"{Share(aim.OverThrough)} at the aim, {best} at best");
    }, iter: 60);

    [Fact]
    public void The_aim_lies_inside_the_window_and_never_does_worse_than_the_middle() => Gen.Select(Beliefs, Days).Sample((belief, day) =>
    {
        var aim = ExposureAim.Of(belief, Wall, day, Ground.Model);
        var middle = (Wall + belief.Room) / 2;
        return aim.OverThrough >= Wall && aim.OverThrough <= Math.Min(belief.Room, Wall + Math.Log(2)) + 1e-12
            && aim.Amount.Low <= aim.Amount.Value && aim.Amount.Value <= aim.Amount.High
            && (middle > Wall + Math.Log(2) || aim.Chance >= aim.MiddleChance - 1e-9)
            && aim.Because.Length > 0;
    });

    /// <summary>A step test has placed the least, and the detail is known less: the aim comes down, and the less is known of the detail the farther.</summary>
    [Fact]
    public void Detail_that_is_known_less_lowers_the_aim() => Gen.Double[0.05, 0.2].Sample(width =>
    {
        double Over(double deviation) => ExposureAim.Of(new LogBelief(4, 0.7, 1e-4, deviation * deviation, 0), 0, new DayScatter(0.1, 0, 0), Ground.Model).OverThrough;
        return Over(width) < 0.35 && Over(width * 1.2) < Over(width) && Math.Abs(Over(1e-3) - 0.35) < 1e-3;
    });

    /// <summary>Where the level of both ends is all that is not known, wide windows are easier met than narrow ones.</summary>
    [Fact]
    public void The_reason_told_is_the_one_that_moves_it()
    {
        var day = new DayScatter(0.1, 0, 0);
        Assert.Contains("below the middle: where the detail closes is less sure", ExposureAim.Of(new LogBelief(4, 0.7, 1e-4, 0.04, 0), 0, day, Ground.Model).Because, StringComparison.Ordinal);
        Assert.Contains("above the middle: where the coat cures through is less sure", ExposureAim.Of(new LogBelief(4, 0.7, 0.04, 0.04, -0.04), 0, day, Ground.Model).Because, StringComparison.Ordinal);
        Assert.Contains("above the middle: the ends are less sure", ExposureAim.Of(new LogBelief(4, 0.4, 0.3, 0.04, 0), 0, day, Ground.Model).Because, StringComparison.Ordinal);
        Assert.Contains("twice the least", ExposureAim.Of(new LogBelief(4, 3, 1e-4, 1e-4, 0), 0, day, Ground.Model).Because, StringComparison.Ordinal);
        Assert.Contains("is the middle", ExposureAim.Of(new LogBelief(4, 0.5, 1e-6, 1e-6, 0), 0, day, Ground.Model).Because, StringComparison.Ordinal);
    }

    /// <summary>On the window itself: a fast emulsion's second at the shutter, the coat's thickness and the level that nobody knows are all in the chance.</summary>
    [Fact]
    public void A_window_tells_the_chance_at_its_aim_and_strips_raise_it()
    {
        var exposure = ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { FinestLineUm = 150 };
        var before = ExposureModel.Window(exposure);
        var least = before.Least.Value;
        var after = ExposureModel.Window(exposure with
        {
            Tests = [.. new[] { 0.5, 0.7, 1, 1.4, 2, 2.8, 4 }.Select(times => new StepTest(times * least, (int)Math.Round(7 + (Math.Log(times / 1.25) / 0.345)), times < 1, times < 2.4 ? 150 : 300) { EomUm = 5 })],
        });
        Assert.InRange(before.AimChancePercent!.Value, 20, 75);
        Assert.True(after.AimChancePercent > before.AimChancePercent + 10);
        Assert.InRange(after.AimChancePercent!.Value, after.MiddleChancePercent!.Value - 1e-9, 100);
        Assert.Null(ExposureModel.Window(exposure with { FinestLineUm = 20 }).AimChancePercent);
    }

    /// <summary>Strips that were all damp, on a machine that counts units: nothing is known, and it is told in the machine's units.</summary>
    [Fact]
    public void Damp_strips_of_a_machine_that_counts_units_are_answered_in_units()
    {
        var exposure = ExposureCases.Usual() with { Tests = [new StepTest(800, 5, Damp: true), new StepTest(1200, 6, Damp: true)] };
        var window = ExposureModel.Window(exposure with { Lamp = exposure.Lamp with { Counts = ExposureCount.Units } });
        Assert.Equal(ExposureCount.Units, window.Counts);
        Assert.True(window.Least.High / window.Least.Low > 500);
        Assert.InRange(Math.Sqrt(800 * 1200), window.Least.Low, window.Least.High);
        Assert.Equal(Ground.CommonPractice, window.Least.Ground);
        Assert.Contains(window.Notes, note => note.Text.Contains("No strip was dry", StringComparison.Ordinal));
    }

    private static (double Least, double Most) Shop(Random random, LogBelief belief, DayScatter day)
    {
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var (common, own) = (Normal(), Normal());
        var through = Math.Sqrt(belief.ThroughVariance) * common;
        var correlation = belief.Covariance / Math.Sqrt(belief.ThroughVariance * belief.RoomVariance);
        var room = belief.Room + (Math.Sqrt(belief.RoomVariance) * ((correlation * common) + (Math.Sqrt(1 - (correlation * correlation)) * own)));
        var (dose, coat) = (day.Dose * Normal(), Normal());
        return (Wall + through + dose + (day.LeastByCoat * coat), through + room + dose + (day.MostByCoat * coat));
    }
}
