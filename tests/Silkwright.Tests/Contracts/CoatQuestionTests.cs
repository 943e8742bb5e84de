using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

public sealed class CoatQuestionTests
{
    private const string Header = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses,eomUm,screen,point,repeat";
    private const string Harbour = "Harbour,Ada,long,Copper,38,61,64,2,1";

    /// <summary>Standard deviation of repeats by hand: places (10, 12), (11, 11, 14) have squares 2 and 6 about their means, over 1 + 2 degrees of freedom.</summary>
    [Fact]
    public void Repeatability_is_pooled_over_places_that_were_read_again_and_over_no_others()
    {
        var answer = Ask([$"{Harbour},10,H1,1,1", $"{Harbour},12,H1,1,2", $"{Harbour},11,H1,2,1", $"{Harbour},11,H1,2,2", $"{Harbour},14,H1,2,3", $"{Harbour},19,H2,1,1", $"{Harbour},25,,,"]);

        Assert.Equal(Math.Sqrt(8.0 / 3), answer.RepeatabilityUm!.Value, 1e-12);
        Assert.Null(Ask([$"{Harbour},10,H1,1,1", $"{Harbour},12,H2,1,1", $"{Harbour},10,,,", $"{Harbour},12,,,"]).RepeatabilityUm);
    }

    /// <summary>n = (1.645 s / x)² rounded up; s = 1.633 µm as above, x = 1 µm: 7.2.</summary>
    [Fact]
    public void Readings_needed_follow_from_the_repeats()
    {
        var rows = Rows([$"{Harbour},10,H1,1,1", $"{Harbour},12,H1,1,2", $"{Harbour},11,H1,2,1", $"{Harbour},11,H1,2,2", $"{Harbour},14,H1,2,3"]);

        Assert.Equal(8, Needed(1));
        Assert.Equal(2, Needed(2));
        _ = Assert.Throws<InputProblemException>(() => Needed(0));

        int? Needed(double wantedUm) => CoatReadingsQuestion.Answer(rows, wantedUm, TestContext.Current.CancellationToken).Needed;
    }

    [Theory]
    [InlineData("0.55,,,", "mil", false)]
    [InlineData("112,,,", "mesh and all", false)]
    [InlineData("14.5,H1,1,1", "same line", false)]
    [InlineData("15.5,,,", "same line", true)]
    public void Slips_are_flagged_with_line_and_remedy_and_the_rest_is_learnt(string reading, string what, bool used)
    {
        var answer = Ask([$"{Harbour},14.5,H1,1,1", $"{Harbour},15.5,,,", $"{Harbour},{reading}"]);

        var flag = Assert.Single(answer.Flags);
        Assert.Equal((4, used), (flag.Line, flag.Used));
        Assert.Contains(what, flag.What, StringComparison.Ordinal);
        Assert.NotEmpty(flag.Remedy);
        Assert.Equal((3, used ? 3 : 2), (answer.Given, answer.Used));
    }

    [Fact]
    public void Readings_draw_and_narrow_and_ground_tells_whose_they_are()
    {
        string[] heavy = [.. Enumerable.Range(0, 8).Select(i => string.Create(CultureInfo.InvariantCulture, $"{Harbour},{18 + (0.3 * i)},,,"))];
        string[] cases = [Harbour, "Harbour,Ada,long,Copper,38,77,48,2,1", "Mill,Ben,short,Copper,38,61,64,2,1"];
        var (before, after) = (Ask([], cases), Ask(heavy, cases));

        Assert.All(before.Cases, one => Assert.Equal(Ground.CommonPractice, one.EomUm.Ground));
        Assert.Equal([Ground.MeasuredHere, Ground.Model, Ground.MeasuredElsewhere], after.Cases.Select(one => one.EomUm.Ground));
        Assert.InRange(after.Cases[0].EomUm.Value, 17.5, 20);
        for (var i = 0; i < cases.Length; i++)
            Assert.True(after.Cases[i].EomUm.Value > before.Cases[i].EomUm.Value);
        Assert.True(Width(after.Cases[0].EomUm) < Width(before.Cases[0].EomUm) / 2);
    }

    [Fact]
    public void A_shop_that_shares_nothing_teaches_nobody_and_learns_from_nobody()
    {
        string[] harbour = [.. Enumerable.Range(0, 6).Select(i => $"{Harbour},{17 + (i % 3)},,,")], mill = [.. Enumerable.Range(0, 6).Select(i => $"Mill,Ben,short,Copper,38,61,64,2,1,{7 + (i % 3)},,,")];
        string[] cases = [Harbour, "Mill,Ben,short,Copper,38,61,64,2,1"];
        var apart = Ask([.. harbour, .. mill], cases, "Mill");

        Assert.Equal(Ask(harbour, cases).Cases[0].EomUm, apart.Cases[0].EomUm);
        Assert.Equal(Ask(mill, cases).Cases[1].EomUm, apart.Cases[1].EomUm);
        Assert.DoesNotContain(apart.Effects, effect => effect.Name.Contains("Mill", StringComparison.Ordinal));
        Assert.Contains(apart.Notes, note => note.Text.Contains("Mill shares nothing", StringComparison.Ordinal));
    }

    private static double Width(Estimate estimate) => estimate.High - estimate.Low;

    private static IReadOnlyList<CoatRow> Rows(string[] readings) => CoatTable.Readings($"{Header}\n{string.Join('\n', readings)}", "r.csv");

    private static CoatAnswer Ask(string[] readings, string[]? cases = null, params string[] without) => CoatQuestion.Answer(
        Rows(readings), CoatTable.Cases($"{string.Join(',', CoatTable.Columns)}\n{string.Join('\n', cases ?? [Harbour])}", "c.csv"), without, cancel: TestContext.Current.CancellationToken);
}
