using Silkwright.Emulsion;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>What step tests are worth, over 2000 simulated shops (<see cref="SimulatedShop"/>) whose truth is known.</summary>
/// <remarks>
/// A good test: nine strips over everything that is believed possible, on a dry coat whose thickness is measured, with the wedge, the squeegee side and the finest line read on each.
/// </remarks>
public class StepTestCertaintyTests
{
    private const int Shops = 2000;
    private const int Strips = 9;

    private static readonly ExposureCase Case = ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { FinestGapUm = null };

    /// <summary>Wanted: before any test the window spans three times and more; one good test within ±25 %, three within ±15 %; nine intervals in ten hold the truth.</summary>
    [Fact]
    public void Tests_narrow_the_aim_as_far_as_they_say_and_hold_the_truth_as_often()
    {
        var before = ExposureModel.Window(Case);
        Assert.True(before.Most.High / before.Least.Low >= 3);
        var outcomes = Enumerable.Range(0, Shops).AsParallel().Select(seed => Follow(seed, before)).ToArray();
        double[] wanted = [0.25, 0.25, 0.15];
        for (var test = 0; test < wanted.Length; test++)
        {
            var halves = outcomes.Select(outcome => outcome[test].Half).Order().ToArray();
            var held = 100.0 * outcomes.Count(outcome => outcome[test].Held) / Shops;
            TestContext.Current.TestOutputHelper!.WriteLine(
                $"{test + 1} test(s): half of the 90 % interval {halves[Shops / 2]:P1} in the middle shop, below {halves[Shops * 9 / 10]:P1} in nine of ten; {held:0.0} % hold the truth");
            Assert.True(halves[Shops * 9 / 10] < wanted[test]);
            Assert.InRange(held, 87, 93);
        }
    }

    private static (double Half, bool Held)[] Follow(int seed, ExposureWindow before)
    {
        var shop = new SimulatedShop(seed, before.Least.Value, before.Most.Value, Case.FinestLineUm!.Value);
        var truth = shop.Best;
        var strips = new List<StepTest>();
        var outcomes = new (double, bool)[3];
        var window = before;
        for (var test = 0; test < outcomes.Length; test++)
        {
            var (low, high) = (window.Least.Low, window.Most.High);
            var ratio = Math.Max(Math.Pow(high / low, 1.0 / (Strips - 1)), 1.12);
            var start = Math.Sqrt(low * high) / Math.Pow(ratio, (Strips - 1) / 2.0);
            strips.AddRange(shop.Test([.. Enumerable.Range(0, Strips).Select(i => start * Math.Pow(ratio, i))], new DateOnly(2026, 5, 4 + test)));
            window = ExposureModel.Window(Case with { Tests = strips });
            outcomes[test] = window.Aim is { } aim ? ((aim.High - aim.Low) / 2 / aim.Value, aim.Low <= truth && truth <= aim.High) : (1, false);
        }

        return outcomes;
    }
}
