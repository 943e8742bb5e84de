using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>What can be wrong with a case's values, every fault at once.</summary>
internal static class ShelfCaseCheck
{
    /// <summary>Largest cost or count taken: sums of many stay exact to far below a cent.</summary>
    public const double MostAmount = 1e12;

    public const int MostEmulsions = 1_000;
    public const int MostJobs = 50_000;
    public const int MostScenarios = 100;

    /// <summary>Sizes that one emulsion is sold in.</summary>
    public const int MostSizes = 20;

    /// <summary>Smallest container. [g]</summary>
    public const double LeastGrams = 1;

    /// <summary>Costs held at once, 8 bytes each: jobs by emulsions, and with minimum use by scenarios too.</summary>
    public const long MostCosts = 20_000_000;

    public static void Check(ShelfCase shelf, string where, ProblemList problems)
    {
        Counts(shelf, where, problems);
        Once(shelf.Emulsions.Select(emulsion => emulsion.Id), $"{where}: emulsions", "an emulsion", problems);
        Once(shelf.Jobs.Select(job => job.Id), $"{where}: jobs", "a job", problems);
        var emulsions = shelf.Emulsions.Select(emulsion => emulsion.Id).ToHashSet();
        for (var i = 0; i < shelf.Emulsions.Count; i++)
        {
            var (emulsion, at) = (shelf.Emulsions[i], $"{where}: emulsions[{i}]");
            Amount(emulsion.FixedCostPerMonth, at, "fixedCostPerMonth", problems);
            Amount(emulsion.MinimumScreensPerMonth, at, "minimumScreensPerMonth", problems);
            Amount(emulsion.SwitchingCostPerMonth, at, "switchingCostPerMonth", problems);
            Sizes(shelf, emulsion, at, problems);
        }

        for (var j = 0; j < shelf.Jobs.Count; j++)
            Job(shelf.Jobs[j], emulsions, $"{where}: jobs[{j}]", problems);
        var jobs = shelf.Jobs.Select(job => job.Id).ToHashSet();
        for (var s = 0; s < shelf.Scenarios.Count; s++)
            Scenario(shelf.Scenarios[s], jobs, $"{where}: scenarios[{s}]", problems);
    }

    private static void Counts(ShelfCase shelf, string where, ProblemList problems)
    {
        if (shelf.Emulsions.Count is 0 or > MostEmulsions)
            problems.Add($"A case has 1 to {MostEmulsions} emulsions.", $"{where}: emulsions", "List those that could be kept: \"emulsions\": [{\"id\": \"A\", \"fixedCostPerMonth\": 60}].");
        if (shelf.Jobs.Count is 0 or > MostJobs)
            problems.Add($"A case has 1 to {MostJobs} jobs.", $"{where}: jobs", "List those of a month: \"jobs\": [{\"id\": \"Tees\", \"screensPerMonth\": 40, \"costs\": {\"A\": 6.5}}].");
        if (shelf.Scenarios.Count > MostScenarios)
            problems.Add($"A case has at most {MostScenarios} scenarios.", $"{where}: scenarios", "Keep the months that differ most.");
        var months = shelf.Emulsions.Any(emulsion => emulsion.MinimumScreensPerMonth > 0) ? Math.Max(1, shelf.Scenarios.Count) : 1;
        if ((long)shelf.Jobs.Count * shelf.Emulsions.Sum(emulsion => Math.Max(1, emulsion.Containers.Count)) * months > MostCosts)
            problems.Add($"This case is too large: jobs by emulsions{(months > 1 ? " by scenarios, since there is minimum use," : "")} are more than {MostCosts}.", where, "Put jobs that are alike together, or leave out emulsions or scenarios.");
        if (shelf.Most is < 1)
            problems.Add("A shelf of no emulsion makes nothing.", $"{where}: most", "Give 1 or more, or leave it out.");
    }

    private static void Sizes(ShelfCase shelf, ShelfEmulsion emulsion, string where, ProblemList problems)
    {
        Amount(emulsion.GramsPerScreen, where, "gramsPerScreen", problems);
        if (emulsion.Containers.Count > MostSizes)
            problems.Add($"An emulsion has at most {MostSizes} sizes.", $"{where}.containers", "Keep those that a shop might buy.");
        if (emulsion.Containers.DistinctBy(container => container.Grams).Count() < emulsion.Containers.Count)
            problems.Add("A size is listed more than once.", $"{where}.containers", "List each size once, at the price the shop would pay.");
        for (var k = 0; k < emulsion.Containers.Count; k++)
        {
            var (container, at) = (emulsion.Containers[k], $"{where}.containers[{k}]");
            if (!(container.Grams is >= LeastGrams and <= MostAmount))
                problems.Add($"{container.Grams} is not a number from {LeastGrams} to {MostAmount:0}.", $"{at}.grams", "Give what the container holds, in grams.");
            Amount(container.Price, at, "price", problems);
            Amount(container.FixedCostPerMonth, at, "fixedCostPerMonth", problems);
        }

        if (emulsion.Containers.Count > 0 && emulsion.GramsPerScreen <= 0 && !shelf.Jobs.Any(job => job.GramsPerScreen.ContainsKey(emulsion.Id)))
            problems.Add($"How much of '{emulsion.Id}' a screen takes is not said, so its sizes have no price.", $"{where}.gramsPerScreen", "Give the grams on a screen, here or with each job; costs are then without the emulsion itself.");
    }

    private static void Job(ShelfJob job, HashSet<string> emulsions, string where, ProblemList problems)
    {
        Amount(job.ScreensPerMonth, where, "screensPerMonth", problems);
        foreach (var (id, cost) in job.Costs)
        {
            if (!emulsions.Contains(id))
                Unknown(id, "emulsion", $"{where}.costs", problems);
            else if (!IsAmount(cost))
                Amount(cost, $"{where}.costs", id, problems);
        }

        foreach (var (id, grams) in job.GramsPerScreen)
        {
            if (!emulsions.Contains(id))
                Unknown(id, "emulsion", $"{where}.gramsPerScreen", problems);
            else if (!IsAmount(grams))
                Amount(grams, $"{where}.gramsPerScreen", id, problems);
        }

        if (job.MustStayOn is not { } stays)
            return;
        if (!emulsions.Contains(stays))
            Unknown(stays, "emulsion", $"{where}.mustStayOn", problems);
        else if (!job.Costs.ContainsKey(stays))
            problems.Add($"Job '{job.Id}' must stay on '{stays}', which has no cost for it.", $"{where}.costs", $"Give what a screen of it costs with '{stays}'.");
    }

    private static void Scenario(ShelfScenario scenario, HashSet<string> jobs, string where, ProblemList problems)
    {
        if (!(scenario.Weight > 0 && scenario.Weight <= MostAmount))
            problems.Add("A scenario's weight is a number above 0.", $"{where}.weight", "Give how likely it is against the others, or leave the scenario out.");
        foreach (var (id, screens) in scenario.ScreensPerMonth)
        {
            if (!jobs.Contains(id))
                Unknown(id, "job", $"{where}.screensPerMonth", problems);
            else if (!IsAmount(screens))
                Amount(screens, $"{where}.screensPerMonth", id, problems);
        }
    }

    private static void Once(IEnumerable<string> ids, string where, string what, ProblemList problems)
    {
        var seen = new HashSet<string>();
        var told = new HashSet<string>();
        foreach (var id in ids)
        {
            if (!seen.Add(id) && told.Add(id))
                problems.Add($"'{id}' names {what} more than once.", where, "Give each a name of its own.");
        }
    }

    private static void Unknown(string id, string what, string where, ProblemList problems) =>
        problems.Add($"No {what} is called '{id}'.", where, $"Use the id of one of the case's {what}s, letter by letter.");

    private static bool IsAmount(double value) => value is >= 0 and <= MostAmount;

    private static void Amount(double value, string where, string field, ProblemList problems)
    {
        if (!IsAmount(value))
            problems.Add($"{value} is not a number from 0 to {MostAmount:0}.", $"{where}.{field}", "Check the unit and the figure.");
    }
}
