using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>Reads CASE.json of <c>shelf</c>: docs/schema/shelf-case.json.</summary>
public static class ShelfReader
{
    /// <param name="json">The document.</param>
    /// <param name="where">The file's name, for messages.</param>
    /// <exception cref="InputProblemException">Every fault of the document.</exception>
    public static ShelfCase Read(string json, string where)
    {
        var problems = new ProblemList();
        var root = DocumentField.Root(json, where, problems);
        problems.ThrowIfAny();
        var shelf = new ShelfCase([.. root["emulsions"].Entries(ShelfCaseCheck.MostEmulsions).Select(Emulsion)], [.. root["jobs"].Entries(ShelfCaseCheck.MostJobs).Select(Job)])
        {
            Currency = root["currency"].Text(),
            Most = root["most"].Count(1, ShelfCaseCheck.MostEmulsions),
            Scenarios = [.. root["scenarios"].Entries(ShelfCaseCheck.MostScenarios).Select(Scenario)],
        };
        ShelfCaseCheck.Check(shelf, where, problems);
        root.RefuseSlips();
        problems.ThrowIfAny();
        return shelf;
    }

    private static ShelfEmulsion Emulsion(DocumentField field)
    {
        var (keeping, range) = field["fixedCostPerMonth"].RequiredNumberOrRange("money/month", 0, ShelfCaseCheck.MostAmount);
        return new ShelfEmulsion(field["id"].RequiredText(), keeping)
        {
            FixedCostRange = range,
            MinimumScreensPerMonth = Optional(field["minimumScreensPerMonth"], "screens/month"),
            KeptToday = field["keptToday"].YesNo() ?? false,
            SwitchingCostPerMonth = Optional(field["switchingCostPerMonth"], "money/month"),
            Containers = [.. field["containers"].Entries(ShelfCaseCheck.MostSizes).Select(Container)],
            GramsPerScreen = Optional(field["gramsPerScreen"], "g/screen"),
        };
    }

    private static ShelfContainer Container(DocumentField field) => new(
        field["grams"].RequiredNumber("g", ShelfCaseCheck.LeastGrams, ShelfCaseCheck.MostAmount), Required(field["price"], "money"))
    {
        FixedCostPerMonth = Optional(field["fixedCostPerMonth"], "money/month"),
    };

    private static ShelfJob Job(DocumentField field)
    {
        var ranges = new Dictionary<string, Estimate>();
        return new(field["id"].RequiredText(), Required(field["screensPerMonth"], "screens/month"), field["costs"].Numbers("money/screen", 0, ShelfCaseCheck.MostAmount, ranges))
        {
            CostRanges = ranges,
            MustStayOn = field["mustStayOn"].Text(),
            GramsPerScreen = field["gramsPerScreen"].Numbers("g/screen", 0, ShelfCaseCheck.MostAmount),
        };
    }

    private static ShelfScenario Scenario(DocumentField field, int index) => new(
        field["name"].Text() ?? $"Scenario {index + 1}",
        field["weight"].Number("share", double.Epsilon, ShelfCaseCheck.MostAmount) ?? 1,
        field["screensPerMonth"].Numbers("screens/month", 0, ShelfCaseCheck.MostAmount));

    private static double Required(DocumentField field, string unit) => field.RequiredNumber(unit, 0, ShelfCaseCheck.MostAmount);

    private static double Optional(DocumentField field, string unit) => field.Number(unit, 0, ShelfCaseCheck.MostAmount) ?? 0;
}
