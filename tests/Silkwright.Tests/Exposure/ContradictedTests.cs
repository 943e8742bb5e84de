using Silkwright.Emulsion;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>
/// Step tests of simulated shops (<see cref="SimulatedShop"/>), spoilt by hand until strips contradict each other: the interval never comes out narrower than that of the test before it was spoilt,
/// and still holds what the shop truly needs.
/// </summary>
public sealed class ContradictedTests
{
    private static readonly ExposureCase Case = ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { FinestGapUm = null };
    private static readonly ExposureWindow Before = ExposureModel.Window(Case);

    [Fact]
    public void A_strip_misread_swapped_or_turned_widens_and_the_truth_is_held()
    {
        var outcomes = Enumerable.Range(0, 300).AsParallel().Select(Spoilt).OfType<(bool IsWider, bool Held)>().ToArray();
        TestContext.Current.TestOutputHelper!.WriteLine($"{outcomes.Length} contradicted tests, {outcomes.Count(outcome => outcome.Held)} hold the truth");
        Assert.True(outcomes.Length > 150);
        Assert.All(outcomes, outcome => Assert.True(outcome.IsWider));
        Assert.True(outcomes.Count(outcome => outcome.Held) >= 0.9 * outcomes.Length);
    }

    /// <summary>Readings drawn at random say nothing of a shop: what is told then is about as wide as before any strip, a factor of ten.</summary>
    [Fact]
    public void Strips_without_rhyme_or_reason_leave_the_truth_open()
    {
        var held = Enumerable.Range(0, 200).AsParallel().Select(seed =>
        {
            var random = new Random(seed);
            var shop = new SimulatedShop(seed, Before.Least.Value, Before.Most.Value, Case.FinestLineUm!.Value);
            var window = With([.. Enumerable.Range(0, 9).Select(i => new StepTest(shop.Through / 3 * Math.Pow(2, i / 2.0), random.Next(15), random.Next(2) == 0, random.Next(2) == 0 ? 100 : 200))]);
            return (Told: Contradicts(window), Held: window.Least.Low <= shop.Through && shop.Through <= window.Least.High);
        }).Where(outcome => outcome.Told).ToArray();
        Assert.True(held.Length > 150);
        Assert.True(held.Count(outcome => outcome.Held) >= 0.9 * held.Length);
    }

    /// <summary>Hundreds of chances multiplied are less than any number a computer has.</summary>
    [Fact]
    public void Hundreds_of_strips_at_odds_on_one_day_or_two_are_answered()
    {
        var random = new Random(1);
        StepTest[] muddle = [.. Enumerable.Range(0, 400).Select(i => new StepTest(5 + (0.4 * i), random.Next(15), random.Next(2) == 0))];
        Assert.True(double.IsFinite(With(muddle).Least.Value));
        StepTest[] days = [.. Enumerable.Range(0, 400).Select(i => new StepTest(60, i < 200 ? 3 : 14) { On = new DateOnly(2026, 5, i < 200 ? 4 : 5) })];
        Assert.True(double.IsFinite(With(days).Least.Value));
    }

    /// <summary>Nothing says which of two strips is right: step 7 stands at 10 s by the one and at 80 s by the other.</summary>
    [Fact]
    public void Two_strips_that_contradict_each_other_leave_more_open_than_either_alone()
    {
        StepTest[] pair = [new(20, 9, false), new(40, 5, true)];
        var both = Width(With(pair));
        Assert.All(pair, strip => Assert.True(both.Least > Width(With(strip)).Least));
    }

    /// <summary>Against the same strips with the one line read as more light would have it.</summary>
    [Fact]
    public void A_line_that_opens_with_more_light_leaves_the_most_less_sure()
    {
        StepTest[] Strips(params double[] lines) => [.. lines.Select((line, i) => new StepTest(30 * Math.Pow(2, i / 2.0), 5 + i, i < 2, line))];
        Assert.True(Width(With(Strips(100, 200, 100, 100, 200, 200))).Most > Width(With(Strips(100, 100, 100, 100, 200, 200))).Most);
        Assert.True(Width(With(Strips(100, 100, 100, 200, 200, 100))).Most > Width(With(Strips(100, 100, 100, 200, 200, 200))).Most);
    }

    [Fact]
    public void A_contradicted_day_among_others_is_worth_less_than_a_day_in_agreement()
    {
        StepTest[] Day(int day, int last) => [.. new[] { 42.0, 60, 85, 120 }.Zip([6, 7, 8, last], (amount, step) => new StepTest(amount, step, amount < 50) { On = new DateOnly(2026, 5, day) })];
        var agreed = Width(With([.. Day(4, 9), .. Day(5, 9)]));
        var contradicted = Width(With([.. Day(4, 9), .. Day(5, 4)]));
        Assert.True(contradicted.Least > agreed.Least);
        Assert.True(contradicted.Most > agreed.Most);
    }

    private static (bool IsWider, bool Held)? Spoilt(int seed)
    {
        var random = new Random(seed);
        var shop = new SimulatedShop(seed, Before.Least.Value, Before.Most.Value, Case.FinestLineUm!.Value);
        var count = random.Next(3, 10);
        var start = shop.Through * 1.3 / Math.Pow(Math.Sqrt(2), (count - 1) / 2.0) * Math.Exp(0.6 * (random.NextDouble() - 0.5));
        var strips = shop.Test([.. Enumerable.Range(0, count).Select(i => start * Math.Pow(2, i / 2.0))], new DateOnly(2026, 5, 4));
        var (one, other) = (random.Next(count), random.Next(count));
        var spoilt = strips.ToArray();
        switch (seed % 3)
        {
            case 0:
                spoilt[one] = strips[one] with { SolidStep = random.Next(15) };
                break;
            case 1:
                (spoilt[one], spoilt[other]) = (strips[other] with { Amount = strips[one].Amount }, strips[one] with { Amount = strips[other].Amount });
                break;
            default:
                spoilt[one] = strips[one] with { SolidStep = random.Next(15), SqueegeeSideSoft = !strips[one].SqueegeeSideSoft };
                break;
        }

        var (good, bad) = (With(strips), With(spoilt));
        if (Contradicts(good) || !Contradicts(bad))
            return null;
        var (before, after) = (Width(good), Width(bad));
        return (after.Least > before.Least && after.Most > before.Most && (bad.Aim is null || good.Aim is null || after.Aim > before.Aim), bad.Aim is null || (bad.Aim.Low <= shop.Best && shop.Best <= bad.Aim.High));
    }

    private static ExposureWindow With(params StepTest[] strips) => ExposureModel.Window(Case with { Tests = strips });

    private static bool Contradicts(ExposureWindow window) => window.Notes.Any(note => note.Text.Contains("contradict", StringComparison.Ordinal));

    private static (double Least, double Most, double Aim) Width(ExposureWindow window) =>
        (window.Least.High / window.Least.Low, window.Most.High / window.Most.Low, window.Aim is { } aim ? aim.High / aim.Low : 0);
}
