using Silkwright.Estimates;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

/// <summary>Where no shelf serves every job, the answer names who is in the way.</summary>
public sealed class ShelfConflictsTests
{
    private static readonly ShelfEmulsion[] Three = [new("A", 10), new("B", 10), new("C", 10)];

    [Fact]
    public void Jobs_that_nothing_serves_are_named()
    {
        var told = Refused(new ShelfCase(Three, [Job("tees", "A"), Job("flags"), Job("caps")]));
        Assert.Contains("'flags', 'caps'", told, StringComparison.Ordinal);
        Assert.DoesNotContain("'tees'", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Jobs_that_share_no_emulsion_are_named_where_the_cap_is_too_low()
    {
        var told = Refused(new ShelfCase(Three, [Job("tees", "A"), Job("flags", "A", "B"), Job("caps", "C")]) { Most = 1 });
        Assert.Contains("'tees', 'caps'", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cap_too_low_for_jobs_that_share_in_a_ring_says_how_many_serve()
    {
        var told = Refused(new ShelfCase(Three, [Job("tees", "A", "B"), Job("flags", "B", "C"), Job("caps", "C", "A")]) { Most = 1 });
        Assert.Contains("keeps 2", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_minimum_that_the_jobs_of_one_emulsion_cannot_reach_is_named()
    {
        var told = Refused(new ShelfCase([new("A", 10) { MinimumScreensPerMonth = 6 }, new("B", 10)], [Job("tees", "A")]));
        Assert.Contains("'A'", told, StringComparison.Ordinal);
        Assert.DoesNotContain("'B'", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_beyond_the_memory_of_a_desk_machine_is_refused_before_it_is_begun()
    {
        var costs = new Dictionary<string, double> { ["E0"] = 1 };
        var told = Refused(new ShelfCase([.. Enumerable.Range(0, 1000).Select(i => new ShelfEmulsion($"E{i}", 1))], [.. Enumerable.Range(0, 20_001).Select(j => new ShelfJob($"J{j}", 1, costs))]));
        Assert.Contains("too large", told, StringComparison.Ordinal);
    }

    private static ShelfJob Job(string id, params string[] emulsions) => new(id, 5, emulsions.ToDictionary(emulsion => emulsion, _ => 3.0));

    private static string Refused(ShelfCase shelf) => Assert.Throws<InputProblemException>(() => ShelfChoice.Of(shelf, TimeProvider.System)).Message;
}
