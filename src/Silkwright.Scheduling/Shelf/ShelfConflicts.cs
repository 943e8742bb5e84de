using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>Why no shelf serves every job.</summary>
internal static class ShelfConflicts
{
    private const string Jobs = "shelf: jobs";

    /// <summary>Jobs told by name; of more the number.</summary>
    private const int MostNamed = 20;

    /// <exception cref="InputProblemException">Jobs that no emulsion serves.</exception>
    public static void ThrowIfUnserved(ShelfCase shelf)
    {
        var unserved = shelf.Jobs.Where(job => job.Costs.Count == 0).Select(job => job.Id).ToList();
        if (unserved.Count > 0)
            throw new InputProblemException(new Problem($"No emulsion serves {Names("job", unserved)}.", Jobs, "Give what a screen costs with an emulsion that can serve it, or leave the job out."));
    }

    /// <summary>Why the rules leave no shelf, although every job has an emulsion.</summary>
    public static Problem Of(ShelfCase shelf, ShelfProblem problem, CancellationToken cancel)
    {
        if (shelf.Most is { } most)
        {
            var apart = Apart(shelf);
            if (apart.Count > most)
            {
                return new Problem(
                    $"At most {most} may be kept, but no two of {Names("job", [.. apart.Take(most + 1)])} share an emulsion.",
                    Jobs, $"Allow {apart.Count} or more with \"most\", or let one of these jobs be made with another's emulsion.");
            }

            for (var more = most + 1; ShelfCover.Find(problem, new ShelfRules(0, most), cancel) is null && more <= problem.Emulsions; more++)
            {
                if (ShelfCover.Find(problem, new ShelfRules(0, more), cancel) is not null)
                {
                    return new Problem(
                        $"No {most} emulsions serve every job.", "shelf: most",
                        $"The smallest shelf that serves all keeps {more}: raise \"most\", or let some job be made with more emulsions.");
                }
            }
        }

        return new Problem(
            $"No shelf uses every emulsion on it enough: {Names("emulsion", [.. shelf.Emulsions.Where(e => e.MinimumScreensPerMonth > 0).Select(e => e.Id)])} ask for a minimum.",
            "shelf: emulsions", "Lower a minimumScreensPerMonth, or let more jobs be made with that emulsion.");
    }

    /// <summary>Jobs of which no two can be made with one emulsion: each needs one of its own. Found greedily, the choosiest first.</summary>
    private static List<string> Apart(ShelfCase shelf)
    {
        var taken = new HashSet<string>();
        var apart = new List<string>();
        foreach (var job in shelf.Jobs.OrderBy(job => job.MustStayOn is null ? job.Costs.Count : 1))
        {
            var serves = job.MustStayOn is { } only ? [only] : job.Costs.Keys.ToList();
            if (serves.Any(taken.Contains))
                continue;
            taken.UnionWith(serves);
            apart.Add(job.Id);
        }

        return apart;
    }

    private static string Names(string what, List<string> ids)
    {
        var named = string.Join(", ", ids.Take(MostNamed).Select(id => $"'{id}'"));
        return ids.Count == 1 ? $"{what} {named}" : $"{what}s {named}{(ids.Count > MostNamed ? $" and {ids.Count - MostNamed} more" : "")}";
    }
}
