using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

public sealed class CoatNextQuestionTests
{
    private const string Header = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses";
    private const string Coat = "Ada,long,Copper,38,61,64,2,1";

    private static readonly string[] Shops = ["Harbour", "Mill", "Cellar"];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static IReadOnlyList<CoatRow> Cases => CoatTable.Cases($"{Header}\n{string.Join('\n', Shops.Select(shop => $"{shop},{Coat}"))}\n", "c.csv");

    private static IReadOnlyList<CoatRow> Readings(params string[] shops) => CoatTable.Readings(
        $"{Header},eomUm\n{string.Join('\n', shops.SelectMany((shop, s) => Enumerable.Range(0, 5).Select(i => FormattableString.Invariant($"{shop},{Coat},{11 + s + (i * 0.4)}"))))}\n", "r.csv");

    /// <summary>A shop that shares nothing and one that was never among the others stand alike: the others are answered as without its rows, and it as by its rows alone.</summary>
    [Fact]
    public void A_shop_that_shares_nothing_neither_teaches_nor_learns()
    {
        var apart = CoatNextQuestion.Answer(Readings(Shops), Cases, ["cellar"], cancel: Cancel);
        var others = CoatNextQuestion.Answer(Readings("Harbour", "Mill"), [.. Cases.Take(2)], cancel: Cancel);
        var alone = CoatNextQuestion.Answer(CoatTable.Readings(Text(Readings(Shops), "Cellar"), "r.csv"), [Cases[2]], cancel: Cancel);

        Assert.Equal(3, apart.Worths.Count);
        foreach (var worth in apart.Worths)
        {
            var (same, at) = worth.Case < 2 ? (others.Worths.Single(other => other.Case == worth.Case), worth.Case) : (alone.Worths.Single(), 0);
            Assert.Equal(same.ShrinksUm, worth.ShrinksUm, 1e-9);
            Assert.Equal(same.Narrowed[at].AfterUm, worth.Narrowed[worth.Case].AfterUm, 1e-9);
            var elsewhere = worth.Case < 2 ? worth.Narrowed.Skip(2) : worth.Narrowed.Take(2);
            Assert.All(elsewhere, one => Assert.Equal(one.BeforeUm, one.AfterUm));
        }

        Assert.Contains(apart.Notes, note => note.Text.StartsWith("Cellar shares nothing", StringComparison.Ordinal));
        Assert.All(CoatNextQuestion.Answer(Readings(Shops), Cases, cancel: Cancel).Worths, worth => Assert.All(worth.Narrowed, one => Assert.True(one.AfterUm < one.BeforeUm)));
    }

    [Fact]
    public void A_shop_named_that_is_not_among_the_readings_is_told() =>
        Assert.Equal("without", Assert.Single(Assert.Throws<InputProblemException>(() => CoatNextQuestion.Answer(Readings(Shops), Cases, ["Attic"], cancel: Cancel)).Problems).Where);

    private static string Text(IReadOnlyList<CoatRow> rows, string shop) =>
        $"{Header},eomUm\n{string.Join('\n', rows.Where(row => row.Coat.Shop == shop).Select(row => FormattableString.Invariant($"{shop},{Coat},{row.EomUm}")))}\n";
}
