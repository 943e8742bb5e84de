using Silkwright.Estimates;
using Silkwright.Statistics;

namespace Silkwright.Exposure;

/// <summary>Watches a shop's dated step tests for drift.</summary>
/// <remarks>
/// Each day read by itself, on today's lamp and the case's coat; the logarithms go on a control chart (<see cref="EwmaChart"/>) about the level of the first tests, and through
/// Bayes' rule for one jump (<see cref="LevelChange"/>): docs/engines/exposure.md, "History and drift".
/// </remarks>
public static class StepTestHistory
{
    /// <summary>Tests that set the level. Common practice wants twenty; no shop has them, so the limits carry the level's own error.</summary>
    private const int UsualLevelTests = 3;

    /// <summary>Before a test, level and jump are thought of as this wide. Common practice: relamp at 30 to 50 % more. [log exposure]</summary>
    private const double LevelDeviation = 2;
    private const double JumpDeviation = 0.3;

    /// <exception cref="ArgumentOutOfRangeException">The case is out of range.</exception>
    /// <param name="exposure">The case; its strips with a day are the history.</param>
    public static ExposureDrift Of(ExposureCase exposure)
    {
        var days = exposure.Tests.Where(strip => !strip.Damp && strip.On is not null)
            .GroupBy(strip => strip.On!.Value).OrderBy(day => day.Key).TakeLast(MostDays).Select(day => day.ToArray()).ToArray();
        var counts = exposure.Lamp.Counts;
        if (days.Length == 0)
            return new ExposureDrift { Counts = counts, Tests = [], LevelTests = 0, Notes = [.. NotesOn(exposure, days)] };
        var beliefs = days.Select(day => ExposureModel.BelieveDay(exposure with { Tests = day, On = day[0].On })).ToArray();
        double[] values = [.. beliefs.Select(belief => belief.Through)];
        double[] deviations = [.. beliefs.Select(belief => Math.Sqrt(belief.ThroughVariance))];
        var level = Math.Min(UsualLevelTests, days.Length);
        var weights = deviations.Take(level).Select(deviation => 1 / (deviation * deviation)).ToArray();
        var centre = weights.Select((weight, i) => weight * values[i]).Sum() / weights.Sum();
        var usual = Math.Sqrt(deviations.Average(deviation => deviation * deviation));
        var chart = EwmaChart.Of(values[level..], centre, usual, centreError: 1 / Math.Sqrt(weights.Sum()));
        var tests = days.Select((day, i) =>
        {
            var point = i < level ? null : chart[i - level];
            return new DatedTest(
                day[0].On!.Value, beliefs[i].Amount(0, 0, Ground.MeasuredHere), Percent(values[i] - centre),
                point is null ? null : Percent(point.Average - centre), point is null ? null : Percent(point.Low - centre), point is null ? null : Percent(point.High - centre));
        }).ToArray();
        var change = days.Length > level ? LevelChange.Of(values, deviations, LevelDeviation, JumpDeviation) : null;
        var reach = change is null ? 0 : LogBelief.UsualReach * change.ShiftDeviation;
        return new ExposureDrift
        {
            Counts = counts,
            Tests = tests,
            LevelTests = level,
            SignalOn = tests.FirstOrDefault(test => test.IsOut)?.On,
            Since = change is null ? null : tests[change.At].On,
            ChangePercent = change is null ? null : new Estimate(Percent(change.Shift), Percent(change.Shift - reach), Percent(change.Shift + reach), Ground.MeasuredHere),
            ChancePercent = change is null ? null : 100 * change.Chance,
            Because = change is null ? [] : [.. DriftCauses.Of(exposure.Lamp, days[..change.At], days[change.At..], change.Shift)],
            Notes = [.. NotesOn(exposure, days)],
        };
    }

    private const int MostDays = 60;

    private static double Percent(double log) => 100 * (Math.Exp(log) - 1);

    private static IEnumerable<Note> NotesOn(ExposureCase exposure, StepTest[][] days)
    {
        if (days.Length <= UsualLevelTests)
            yield return new Note($"{Told(days.Length)}: a drift can be told from the {UsualLevelTests + 1}th on. Put the day with every test.");
        if (exposure.Tests.Any(strip => strip.On is null && !strip.Damp))
            yield return new Note("Strips without a day were left out of the history.");
        if (exposure.Tests.Any(strip => strip.Damp))
            yield return new Note("Strips that may not have been dry were left out: a damp coat looks like a drift.");
        if (days.Length > 0 && exposure.Lamp.Counts == ExposureCount.Seconds && days.Any(day => day.All(strip => strip.LampHours is null)))
            yield return new Note("Lamp hours were not told with every test: a lamp that ages shows as drift.");
        yield return new Note("Limits rest on what a day, a hand and a finger are out by in common practice, not on this shop's own scatter.", Ground.CommonPractice);
    }

    private static string Told(int days) => days switch { 0 => "No dated test", 1 => "One dated test", _ => $"{days} dated tests" };
}
