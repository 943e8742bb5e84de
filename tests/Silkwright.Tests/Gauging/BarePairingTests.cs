using Silkwright.Gauging;

namespace Silkwright.Tests.Gauging;

public sealed class BarePairingTests
{
    /// <summary>R's t.test of two samples of unequal variance: References/study.R.</summary>
    [Fact]
    public void Means_are_paired_where_places_are_not_known()
    {
        var expected = StudyReferences.Figures("welch");
        var found = BarePairing.Of([.. new[] { 55.2, 54.1, 56.3, 55.0 }.Select(um => ((string?)null, um))], [.. new[] { 63.1, 62.4, 64.0, 63.3, 62.2 }.Select(um => ((string?)null, um))]);
        Assert.Equal(7.85, found.EomUm, 1e-9);
        Assert.Equal(expected[0], found.StandardErrorUm!.Value, 1e-9);
        Assert.Equal(expected[1], found.Freedom, 1e-9);
        Assert.Equal(0, found.Pairs);
    }

    /// <summary>By hand: differences 8, 8.2 and 7.8; their standard deviation 0.2, over the root of 3.</summary>
    [Fact]
    public void Places_are_paired_where_they_are_known_and_the_mesh_drops_out()
    {
        var found = BarePairing.Of([("1", 50), ("2", 60), ("3", 55), ("9", 99)], [("3", 62.8), ("1", 58), ("2", 68.2)]);
        Assert.Equal(8, found.EomUm, 1e-9);
        Assert.Equal(0.2 / Math.Sqrt(3), found.StandardErrorUm!.Value, 1e-9);
        Assert.Equal(3, found.Pairs);
    }

    [Fact]
    public void One_reading_each_has_a_difference_and_no_error_to_tell() => Assert.Null(BarePairing.Of([(null, 55)], [(null, 63)]).StandardErrorUm);
}
