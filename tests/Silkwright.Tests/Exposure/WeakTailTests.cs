using Silkwright.Emulsion;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>
/// Step tests of simulated shops (<see cref="SimulatedShop"/>, which shares no code with the engine) whose strips were damp from one on and not marked: damp looks like less light (common practice, no source), and tells
/// itself where it is worth two steps of the wedge or more.
/// </summary>
public sealed class WeakTailTests
{
    private static readonly ExposureCase Case = ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { FinestGapUm = null };
    private static readonly ExposureWindow Before = ExposureModel.Window(Case);

    /// <summary>Nine in ten is what an interval promises; before damp was looked for it was four in ten.</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.35)]
    [InlineData(0.25)]
    public void Damp_that_nobody_marked_is_told_and_the_truth_is_held(double share)
    {
        var tests = Tests(share);
        TestContext.Current.TestOutputHelper!.WriteLine($"{tests.Length} tests, {tests.Count(test => test.Told)} told, {tests.Count(test => test.Held)} hold the truth");
        Assert.True(tests.Count(test => test.Told) >= 0.9 * tests.Length);
        Assert.True(tests.Count(test => test.Held) >= 0.87 * tests.Length);
    }

    [Fact]
    public void Dry_strips_are_hardly_ever_taken_for_damp()
    {
        var tests = Tests(1);
        Assert.True(tests.Count(test => test.Told) <= 0.01 * tests.Length);
    }

    /// <summary>Two steps down at 60 s, by hand: 4, 5, 6 and then 5, 6, 7 at √2 a strip, where dry ones would have shown 7, 8, 9.</summary>
    [Fact]
    public void The_strip_from_which_on_they_are_weak_is_named()
    {
        var note = Assert.Single(Window([4, 5, 6, 5, 6, 7]).Notes, note => note.Text.Contains("not dry", StringComparison.Ordinal)).Text;
        Assert.Contains("From 60 s on the wedge showed some 2 steps fewer", note, StringComparison.Ordinal);
        Assert.DoesNotContain(Window([4, 5, 6, 6, 7, 8]).Notes, other => other.Text.Contains("not dry", StringComparison.Ordinal));
        Assert.DoesNotContain(Window([4, 5, 6, 7, 8, 7]).Notes, other => other.Text.Contains("not dry", StringComparison.Ordinal));
    }

    /// <summary>One amount given twice is no place to part strips at.</summary>
    [Fact]
    public void Strips_of_one_amount_are_answered()
    {
        var window = ExposureModel.Window(Case with { Tests = [new(60, 9), new(60, 9), new(60, 4), new(60, 4)] });
        Assert.True(double.IsFinite(window.Least.Value));
        Assert.DoesNotContain(window.Notes, note => note.Text.Contains("not dry", StringComparison.Ordinal));
    }

    private static ExposureWindow Window(int[] steps) =>
        ExposureModel.Window(Case with { Tests = [.. steps.Select((step, i) => new StepTest(Math.Round(60 * Math.Pow(2, (i - 3) / 2.0), 2), step))] });

    private static (bool Told, bool Held)[] Tests(double share) => [.. Enumerable.Range(0, 200).AsParallel().Select(seed =>
    {
        var random = new Random(seed + 7000);
        var shop = new SimulatedShop(seed, Before.Least.Value, Before.Most.Value, Case.FinestLineUm!.Value);
        var count = random.Next(5, 10);
        var start = shop.Through * 1.3 / Math.Pow(Math.Sqrt(2), (count - 1) / 2.0) * Math.Exp(0.6 * (random.NextDouble() - 0.5));
        var strips = shop.Test([.. Enumerable.Range(0, count).Select(i => start * Math.Pow(2, i / 2.0))], new DateOnly(2026, 5, 4), random.Next(2, count - 1), share);
        var window = ExposureModel.Window(Case with { Tests = strips });
        return (window.Notes.Any(note => note.Text.Contains("not dry", StringComparison.Ordinal)), window.Least.Low <= shop.Through && shop.Through <= window.Least.High);
    })];
}
