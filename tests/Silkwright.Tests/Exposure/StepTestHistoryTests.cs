using Silkwright.Emulsion;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>Drift, told from the tests of simulated shops whose truth is known (<see cref="SimulatedShop"/>).</summary>
public class StepTestHistoryTests
{
    private static readonly ExposureCase Case = ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { FinestGapUm = null };
    private static readonly DateOnly First = new(2026, 1, 5);
    private static readonly ExposureWindow Before = ExposureModel.Window(Case);

    private static ExposureDrift Follow(int seed, double asks, int tests = 10, int steady = 5)
    {
        var shop = new SimulatedShop(seed, Before.Least.Value, Before.Most.Value, Case.FinestLineUm!.Value);
        var strips = new List<StepTest>();
        for (var test = 0; test < tests; test++)
        {
            shop.Asks = test < steady ? 1 : asks;
            double[] amounts = [.. Enumerable.Range(-3, 7).Select(i => shop.Through * 1.1 * Math.Pow(2, i / 2.0))];
            strips.AddRange(shop.Test(amounts, First.AddDays(14 * test)));
        }

        return StepTestHistory.Of(Case with { Tests = strips });
    }

    [Fact]
    public void A_shop_that_stays_as_it_is_is_left_in_peace()
    {
        var alarms = Enumerable.Range(0, 200).AsParallel().Count(seed => Follow(seed, 1).HasDrifted);
        Assert.InRange(alarms, 0, 12);
    }

    [Fact]
    public void Half_as_much_light_again_is_seen_sized_and_dated()
    {
        var drifts = Enumerable.Range(0, 200).AsParallel().Select(seed => Follow(seed, 1.5)).ToArray();
        Assert.True(drifts.Count(drift => drift.HasDrifted) >= 180);
        Assert.InRange(drifts.Count(drift => drift.ChangePercent!.Low <= 50 && 50 <= drift.ChangePercent.High), 165, 196);
        Assert.True(drifts.Count(drift => Math.Abs(drift.Since!.Value.DayNumber - First.AddDays(14 * 5).DayNumber) <= 14) >= 160);
    }

    [Fact]
    public void A_new_batch_is_named()
    {
        var told = Follow(7, 1.6);
        var strips = Enumerable.Range(0, 10).SelectMany(test => new[] { 30.0, 42, 60, 85, 120 }.Select(amount =>
        {
            var usual = test < 4 ? 60 : 95;
            return new StepTest(amount, (int)Math.Round(7 + (Math.Log10(amount / usual) / 0.15)), amount < usual / 1.25)
            {
                On = First.AddDays(7 * test),
                Batch = test < 4 ? "A" : "B",
                HumidityPercent = 45,
            };
        })).ToArray();
        var drift = StepTestHistory.Of(Case with { Tests = strips });
        Assert.True(drift.HasDrifted);
        Assert.Equal(First.AddDays(28), drift.Since);
        Assert.Contains(drift.Because, text => text.Contains("batch, B", StringComparison.Ordinal));
        Assert.DoesNotContain(drift.Because, text => text.Contains("air", StringComparison.Ordinal));
        Assert.Contains("Nothing told", told.Because[0], StringComparison.Ordinal);
    }

    /// <summary>After a rise of 60 % the window stands where the tests since then put it, not between old and new.</summary>
    [Fact]
    public void After_a_drift_the_window_rests_on_the_tests_since()
    {
        var strips = Enumerable.Range(0, 10).SelectMany(test => new[] { 30.0, 42, 60, 85, 120 }.Select(amount =>
        {
            var usual = test < 5 ? 60 : 96;
            return new StepTest(amount, (int)Math.Round(7 + (Math.Log10(amount / usual) / 0.15)), amount < usual / 1.25) { On = First.AddDays(7 * test) };
        })).ToArray();
        var all = StepTestReading.Of(Case with { Tests = strips });
        var since = ExposureModel.Window(Case with { Tests = [.. strips.Where(strip => strip.On >= all.History!.Since)] });
        Assert.True(all.History!.HasDrifted);
        Assert.Equal(since.Least, all.Window.Least);
        Assert.Contains(all.Window.Notes, note => note.Text.Contains("has drifted since", StringComparison.Ordinal));
    }

    [Fact]
    public void Too_few_tests_say_so()
    {
        var drift = Follow(3, 1.5, tests: 2);
        Assert.False(drift.HasDrifted);
        Assert.Null(drift.ChangePercent);
        Assert.Contains(drift.Notes, note => note.Text.Contains("from the 4th on", StringComparison.Ordinal));
    }
}
