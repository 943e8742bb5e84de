using Silkwright.Mesh;
using Silkwright.Moire;

namespace Silkwright.Tests.Moire;

/// <summary>What the search advises against what the trade has long advised. Common practice, no source, unless said.</summary>
public class MoireSearchTests
{
    /// <summary>Mesh makers' guidance seen: a straight mesh with films at 7.5, 22.5, 52.5 or 82.5 degrees; a single colour at 22.5.</summary>
    [Fact]
    public void Four_threads_to_a_line_are_quietest_at_the_angle_the_trade_uses()
    {
        var best = MoireSearch.BestAngles(Case(120, 34, 30, 0))[0];
        Assert.Contains(best.AngleDegrees, (double[])[22.5, 67.5]);
        Assert.True(best.VisibilityAtWorst < Visibility.JustSeen);
    }

    /// <summary>Guidance seen: a film square to the threads is to be avoided.</summary>
    [Fact]
    public void A_film_along_the_threads_is_plainer_than_one_at_22_5_degrees() =>
        Assert.True(MoireSearch.AsAsked(Case(90, 48, 22.5, 0)).VisibilityAtWorst > MoireSearch.AsAsked(Case(90, 48, 22.5, 22.5)).VisibilityAtWorst);

    /// <summary>Guidance seen: 2.5, 3.75 and 5 threads to a line, the fewer the riskier.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(7.5)]
    [InlineData(22.5)]
    [InlineData(45)]
    public void The_fewer_threads_to_a_line_the_plainer(double degrees)
    {
        double[] ratios = [2.5, 3.75, 5];
        var seen = ratios.Select(ratio => MoireSearch.AsAsked(Case(90, 48, 90 / ratio, degrees)).VisibilityAtWorst).ToArray();
        Assert.True(seen[0] > seen[1] && seen[1] > seen[2], string.Join(", ", seen));
        Assert.True(seen[0] > Visibility.JustSeen && seen[2] < Visibility.JustSeen);
    }

    [Fact]
    public void Every_angle_and_ruling_advised_is_no_plainer_than_what_was_asked_nearby()
    {
        var asked = Case(61, 64, 45 / 2.54, 22.5);
        foreach (var choice in MoireSearch.BestAngles(asked))
            Assert.Equal(choice.VisibilityAtWorst, MoireSearch.AsAsked(asked with { AngleDegrees = choice.AngleDegrees }).VisibilityAtWorst, 1e-12);
        Assert.All(MoireSearch.BestRulings(asked), choice => Assert.True(choice.Pattern is null || choice.Pattern.Visibility <= choice.VisibilityAtWorst + 1e-12));
        Assert.All(MoireSearch.BestRulings(asked), choice => Assert.Equal(Math.Round(choice.RulingPerCm * 2.54), choice.RulingPerCm * 2.54, 1e-9));
    }

    [Fact]
    public void Meshes_on_hand_come_quietest_first()
    {
        var meshes = MoireSearch.Meshes(Case(61, 64, 45 / 2.54, 22.5), [new MeshFabric(43, 80), new MeshFabric(120, 34), new MeshFabric(77, 55)]);
        Assert.Equal(120, meshes[0].Mesh.CountPerCm);
        Assert.Equal(43, meshes[^1].Mesh.CountPerCm);
    }

    private static MoireCase Case(double countPerCm, double threadUm, double rulingPerCm, double degrees) =>
        new() { Mesh = new MeshFabric(countPerCm, threadUm), RulingPerCm = rulingPerCm, AngleDegrees = degrees };
}
