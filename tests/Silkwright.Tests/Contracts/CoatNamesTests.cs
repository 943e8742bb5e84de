using Silkwright.Coating.Learning;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>A shop, a person and a trough are each one, however their names are spelled.</summary>
public sealed class CoatNamesTests
{
    private const string Header = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses,eomUm\n";

    /// <summary>The last two differ in how Unicode composes the accent (UAX #15: U+00E9, and e with U+0301).</summary>
    [Theory]
    [InlineData("Shop A", "shop a", true)]
    [InlineData("Shop A", "Shop  A", true)]
    [InlineData("Shop A", "Shop\u00a0A", true)]
    [InlineData("Atelier \u00c9t\u00e9", "atelier e\u0301te\u0301", true)]
    [InlineData("Shop A", "Shop B", false)]
    [InlineData("Shop A", "ShopA", false)]
    public void Two_spellings_are_one_shop_and_two_names_are_two(string one, string other, bool same)
    {
        var twice = Table((one, 8), (other, 8));
        var answer = CoatExperienceQuestion.Answer(twice, [], [], TestContext.Current.CancellationToken);
        Assert.Equal(same ? 1 : 2, answer.Experience.Shops);
        Assert.Equal(same, answer.Notes.Any(note => note.Text.Contains("taken as one shop", StringComparison.Ordinal)));
        if (same)
            Assert.Equal(CoatExperienceDocument.Of(Made(Table((one, 16)))).ToJsonString(), CoatExperienceDocument.Of(answer.Experience).ToJsonString());
    }

    [Fact]
    public void A_shop_that_shares_nothing_shares_nothing_by_any_spelling()
    {
        var rows = Table(("Mill Street", 8), ("MILL  street", 8), ("Harbour", 16));
        var kept = CoatExperienceQuestion.Answer(rows, ["mill street"], [], TestContext.Current.CancellationToken).Experience;
        Assert.Equal((1, 16), (kept.Shops, kept.Readings));
        Assert.Contains("shares nothing", Assert.Throws<InputProblemException>(() => Made(Table(("Mill Street", 16)), "mill street")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_is_of_the_shop_that_its_spelling_means()
    {
        var (readings, asked) = (Table(("Harbour", 20)), CoatTable.Cases(Header.Replace(",eomUm", "", StringComparison.Ordinal) + "Harbour,Ada,long,Copper,38,61,64,2,1\nHARBOUR ,Ada,long,Copper,38,61,64,2,1\n", "c.csv"));
        var cases = CoatQuestion.Answer(readings, asked, cancel: TestContext.Current.CancellationToken).Cases;
        Assert.Equal((cases[0].EomUm, cases[0].MeanUm), (cases[1].EomUm, cases[1].MeanUm));
    }

    [Theory]
    [InlineData("Mill Street Print", "Mill Stret Print", true)]
    [InlineData("Mill Street Print", "Mill-Street Print", true)]
    [InlineData("Atelier A", "Atelier B", false)]
    [InlineData("Harbour 12", "Harbour 13", false)]
    [InlineData("Harbour Shirts", "Cellar Prints", false)]
    public void A_name_that_may_be_another_by_a_slip_is_told_and_not_taken_as_it(string one, string other, bool told)
    {
        var answer = CoatExperienceQuestion.Answer(Table((one, 12), (other, 12)), [], [], TestContext.Current.CancellationToken);
        Assert.Equal(2, answer.Experience.Shops);
        Assert.Equal(told, answer.Notes.Any(note => note.Text.Contains("spell them alike if they are one", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("Ada,long", "ada,LONG", "one person", "one trough")]
    [InlineData("Ada,long", "Ada,long  ", null, null)]
    [InlineData("Ada Lund,long edge", "Ada  Lund,long\u00a0edge", "one person", "one trough")]
    [InlineData("Ren\u00e9e,long", "Rene\u0301e,long", "one person", null)]
    public void A_person_and_a_trough_are_one_by_any_spelling(string one, string other, params string?[] told)
    {
        var (twice, once) = (Answer(Hands(one, other)), Answer(Hands(one, one)));
        Assert.Equal(once.Effects, twice.Effects);
        Assert.Equal(once.Cases.Select(c => c.EomUm), twice.Cases.Select(c => c.EomUm));
        string[] notes = [.. twice.Notes.Except(once.Notes).Select(note => note.Text)];
        Assert.Equal(told.OfType<string>().Count(), notes.Length);
        Assert.All(told.OfType<string>(), words => Assert.Contains(notes, note => note.Contains($"Harbour is also spelled", StringComparison.Ordinal) && note.Contains($"taken as {words}", StringComparison.Ordinal)));
    }

    [Fact]
    public void Another_person_is_another_and_so_is_one_of_that_name_in_another_shop()
    {
        Assert.NotEqual(Answer(Hands("Ada,long", "Ada,long")).Effects, Answer(Hands("Ada,long", "Ben,long")).Effects);
        var (alike, unlike) = (Answer(Of("Harbour,Ada,long", "Mill,Ada,long")), Answer(Of("Harbour,Ada,long", "Mill,ADA,LONG")));
        Assert.Equal(alike.Cases.Select(c => c.EomUm), unlike.Cases.Select(c => c.EomUm));
        Assert.Equal(alike.Notes, unlike.Notes);
    }

    [Theory]
    [InlineData("Johanna", "Johana", true)]
    [InlineData("Ada", "Ida", false)]
    [InlineData("Trainee 1", "Trainee 2", false)]
    public void A_person_who_may_be_another_by_a_slip_is_told(string one, string other, bool told) =>
        Assert.Equal(told, Answer(Hands($"{one},long", $"{other},long")).Notes.Any(note => note.Text.Contains("taken as two people", StringComparison.Ordinal)));

    [Fact]
    public void Strokes_are_asked_for_a_person_and_a_trough_by_any_spelling()
    {
        var (plain, other) = (Aim("Ada", "long"), Aim("ADA", "Long"));
        Assert.Equal(plain.Aim.Best.Coat.Operator, other.Aim.Best.Coat.Operator);
        Assert.Equal(plain.Aim.Best.MeanUm, other.Aim.Best.MeanUm);
        Assert.Contains("No operator 'Eve'", Assert.Throws<InputProblemException>(() => Aim("Eve", "long")).Message, StringComparison.Ordinal);

        static CoatAimAnswer Aim(string person, string trough) => CoatAimQuestion.Answer(
            new GivenTexts(new Dictionary<string, string> { ["wanted"] = "14um", ["emulsion"] = "Copper", ["count"] = "61/cm", ["thread"] = "64um", ["operator"] = person, ["trough"] = trough }),
            Hands("Ada,long", "Ben,short"), cancel: TestContext.Current.CancellationToken);
    }

    /// <summary>Eight readings of each, one another's in thickness apart.</summary>
    private static IReadOnlyList<CoatRow> Hands(string one, string other) => Of($"Harbour,{one}", $"Harbour,{other}");

    private static IReadOnlyList<CoatRow> Of(string one, string other)
    {
        string[] rows = [.. Enumerable.Range(0, 16).Select(i => FormattableString.Invariant($"{(i % 2 == 0 ? one : other)},Copper,38,61,64,2,1,{(i % 2 == 0 ? 11 : 15) + (i * 0.1)}"))];
        return CoatTable.Readings(Header + string.Join('\n', rows) + "\n", "r.csv");
    }

    private static CoatAnswer Answer(IReadOnlyList<CoatRow> rows) =>
        CoatQuestion.Answer(rows, CoatTable.Cases(Header.Replace(",eomUm", "", StringComparison.Ordinal) + "Harbour,Ada,long,Copper,38,61,64,2,1\n", "c.csv"), cancel: TestContext.Current.CancellationToken);

    private static CoatExperience Made(IReadOnlyList<CoatRow> rows, params string[] without) =>
        CoatExperienceQuestion.Answer(rows, without, [], TestContext.Current.CancellationToken).Experience;

    /// <summary>Rows of shops one after another, the reading told by the row's place alone.</summary>
    private static IReadOnlyList<CoatRow> Table(params (string Shop, int Rows)[] shops)
    {
        string[] rows = [.. shops.SelectMany(shop => Enumerable.Repeat(shop.Shop, shop.Rows)).Select((shop, i) => FormattableString.Invariant($"{shop},Ada,long,Copper,38,61,64,2,1,{12 + (i % 7 * 0.3)}"))];
        return CoatTable.Readings(Header + string.Join('\n', rows) + "\n", "r.csv");
    }
}
