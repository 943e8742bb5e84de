using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>A planned step test as other programs read it: silkwright/expose-ladder/1, docs/schema/expose-ladder.json.</summary>
public static class LadderDocument
{
    public static JsonObject Of((LadderPlan Plan, IReadOnlyList<Note> Notes) answer)
    {
        var plan = answer.Plan;
        var name = plan.Counts == ExposureCount.Seconds ? "seconds" : "units";
        var document = DocumentJson.Start("expose-ladder");
        document["strips"] = new JsonArray([.. plan.Amounts.Select((amount, i) => (JsonNode)new JsonObject
        {
            [name] = amount,
            ["add"] = plan.Increments[i],
            ["expectedSolidStep"] = plan.ExpectedSteps[i],
        })]);
        document["sharedSettings"] = new JsonArray([.. plan.SharedSettings.Select(shared => (JsonNode)new JsonObject
        {
            [name] = shared.Amount,
            ["steps"] = new JsonArray([.. shared.Steps.Select(step => (JsonNode)step)]),
        })]);
        document["ratio"] = plan.Ratio;
        document["aimWithinPercentNow"] = 100 * plan.HalfNow;
        document["aimWithinPercentAfter"] = 100 * plan.ExpectedHalf;
        document["wantedWithinPercent"] = 100 * plan.WantedHalf;
        document["enough"] = plan.IsEnough;
        document["why"] = Why(plan);
        document["cautions"] = DocumentJson.Of([LampCaution.BeforeExposing]);
        document["notes"] = DocumentJson.Of(answer.Notes);
        return document;
    }

    /// <summary>Why so many strips, in a sentence.</summary>
    public static string Why(LadderPlan plan)
    {
        var strips = Text($"{plan.Amounts.Count} strips, each about {plan.Ratio:0.00} times the one before");
        // Rounded up where it falls short, or it would read as if it did not.
        var half = plan.IsEnough ? 100 * plan.ExpectedHalf : Math.Ceiling(100 * plan.ExpectedHalf);
        // An interval from a / f to a f is (f - 1 / f) / 2 of a either way.
        var within = plan.ExpectedHalf < 1 ? Text($"{half:0} %") : Text($"a factor of {Math.Exp(Math.Asinh(plan.ExpectedHalf)):0}");
        var after = $"expected to bring the aim within {within} either way";
        return plan.IsEnough
            ? Text($"{strips}: the fewest that are {after}; {100 * plan.WantedHalf:0} % was wanted.")
            : Text($"{strips}: as many as {(plan.SharedSettings.Count == 0 ? "fit" : "the machine can tell apart")}, {after}. For {100 * plan.WantedHalf:0} % make another test on another day, around what this one finds.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>What to know before exposing.</summary>
    public static IEnumerable<Note> NotesOn(LadderPlan plan)
    {
        yield return new Note("Coat, dry and expose as for production, with the wedge and the finest lines and gaps on every strip; wash all strips out alike.");
        yield return new Note("Begin with the whole screen uncovered and cover one strip more after each exposure.");
        if (plan.Amounts[0] < FewSettings * Setting(plan))
            yield return new Note("The shortest strips are a few settings of the shutter: its own scatter blurs them. A weaker light or a greater distance makes the test sharper.", Ground.CommonPractice);
        if (plan.SharedSettings.Count > 0)
            yield return new Note(Shared(plan));
        if (plan.MayBeShut)
            yield return new Note("By these guesses no exposure both cures through and holds the finest line: the test will tell which end is wrong. See expose window for what would open it.", Ground.Model);
    }

    /// <summary>Which steps fall on one setting, and what to do about it.</summary>
    private static string Shared(LadderPlan plan)
    {
        var which = plan.SharedSettings.Select(shared =>
            Text($"{string.Join(", ", shared.Steps.SkipLast(1).Select(Figures.TwoDigits))} and {Figures.TwoDigits(shared.Steps[^1])} fall on {Amount(shared.Amount)}"));
        return Text($"The ladder is finer than the machine's settings, {Amount(plan.SmallestSetting)} apart: {string.Join("; ", which)}, each but one strip. Make the {plan.Amounts.Count} told, which is the coarser ladder; or weaken the light about {Figures.TwoDigits(plan.WeakerLight)} times by a grey filter over all strips whose density in this light is known, plan around as many times the exposure, and divide what the test finds by what the filter holds back.");

        string Amount(double amount) => $"{Figures.AsGiven(amount)} {(plan.Counts == ExposureCount.Seconds ? "s" : amount == 1 ? "unit" : "units")}";
    }

    private const double FewSettings = 5;

    private static double Setting(LadderPlan plan) => plan.Counts == ExposureCount.Seconds ? Forgiveness.ShutterScatterSeconds : 0;
}
