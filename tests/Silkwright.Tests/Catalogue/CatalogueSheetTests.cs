using Silkwright.Catalogue;
using Silkwright.Estimates;

namespace Silkwright.Tests.Catalogue;

/// <summary>What is used, what stands beside it, and what is asked. Spreads are common practice, no source: docs/engines/catalogue.md.</summary>
public sealed class CatalogueSheetTests
{
    [Fact]
    public void The_firmest_ground_is_used_however_old_it_is()
    {
        var line = Line(Solids(50, Ground.Datasheet, 2026), Solids(44, Ground.MeasuredHere, 2020), Solids(47, Ground.MeasuredElsewhere, 2025));

        Assert.Equal(44, line.Used.Value.Number);
        Assert.Equal([Ground.MeasuredElsewhere, Ground.Datasheet], line.Others.Select(other => other.Entry.Ground));
    }

    [Fact]
    public void Among_equals_the_newest_is_used_and_an_undated_one_is_the_oldest() =>
        Assert.Equal([48.0, 50, 46], All(Line(Solids(50, Ground.Datasheet, 2023), Solids(46, Ground.Datasheet, null), Solids(48, Ground.Datasheet, 2025))));

    /// <summary>
    /// Worked by hand with ±5 % for a datasheet: 40 reaches 38 to 42. 41 lies inside. 43 lies outside, and 43's 40.85 to 45.15 does not
    /// hold 40 either. 42.05 lies outside 38 to 42, but its own 39.95 to 44.15 holds 40.
    /// </summary>
    [Theory]
    [InlineData(41, false)]
    [InlineData(42.05, false)]
    [InlineData(43, true)]
    [InlineData(37, true)]
    public void Two_sources_conflict_where_each_lies_outside_the_others_spread(double other, bool conflicts)
    {
        var line = Line(Solids(40, Ground.Datasheet, 2025), Solids(other, Ground.Datasheet, 2024));

        Assert.Equal(conflicts, line.Conflicts);
        Assert.Equal(conflicts, Assert.Single(line.Others).Conflicts);
        Assert.Equal(line.Used.Conflicts(line.Others[0].Entry), line.Others[0].Entry.Conflicts(line.Used));
    }

    /// <summary>42 is no quarrel between two sheets, but a careful measurement of 40 does not reach it and neither does one of 42.</summary>
    [Fact]
    public void Measurements_are_held_to_a_narrower_spread_than_sheets()
    {
        Assert.False(Line(Solids(40, Ground.Datasheet, 2025), Solids(42, Ground.Datasheet, 2024)).Conflicts);
        Assert.True(Line(Solids(40, Ground.MeasuredHere, 2025), Solids(42, Ground.MeasuredHere, 2024)).Conflicts);
    }

    [Fact]
    public void Different_words_conflict_and_equal_ones_do_not()
    {
        Assert.True(Line(Word(CatalogueProperties.Reclaim, "easy", Ground.MeasuredHere), Word(CatalogueProperties.Reclaim, "hard", Ground.Datasheet)).Conflicts);
        Assert.False(Line(Word(CatalogueProperties.Reclaim, "hard", Ground.MeasuredHere), Word(CatalogueProperties.Reclaim, "hard", Ground.Datasheet)).Conflicts);
    }

    [Fact]
    public void Pot_lives_at_two_temperatures_and_prices_of_two_containers_are_lines_of_their_own()
    {
        var sheet = Sheet(At(CatalogueProperties.PotLife, 21, 42), At(CatalogueProperties.PotLife, 30, 9), At(CatalogueProperties.Price, 4500, 98), At(CatalogueProperties.Price, 900, 23));

        Assert.Equal([21.0, 30, 900, 4500], sheet.Lines.Select(line => line.At!.Value));
        Assert.DoesNotContain(sheet.Lines, line => line.Conflicts);
    }

    [Fact]
    public void What_nobody_told_is_a_question_with_a_way_to_measure_it_and_nothing_else_is()
    {
        var sheet = Sheet(Word(CatalogueProperties.Family, "diazo", Ground.Datasheet), Solids(28, Ground.Datasheet, 2025));

        Assert.Equal(CatalogueProperties.All.Count, sheet.Questions.Count + 3);
        Assert.DoesNotContain(sheet.Questions, question => question == CatalogueProperties.Solids || question == CatalogueProperties.FilmThickness);
        Assert.All(sheet.Questions, question => Assert.True(question.HowToMeasure.EndsWith('.') || question.HowToMeasure.EndsWith('?'), question.Name));
    }

    /// <summary>A ready-to-use emulsion has nothing to mix, a film nothing to pour: the trade's words.</summary>
    [Theory]
    [InlineData("photopolymer", "potLifeDays")]
    [InlineData("capillaryFilm", "viscosityPaS")]
    [InlineData("capillaryFilm", "potLifeDays")]
    [InlineData("diazo", "filmThicknessUm")]
    public void Nobody_is_asked_what_its_family_does_not_have(string family, string property)
    {
        Assert.DoesNotContain(Sheet(Word(CatalogueProperties.Family, family, Ground.Datasheet)).Questions, question => question.Name == property);
        Assert.Contains(Sheet(Solids(30, Ground.Datasheet, 2025)).Questions, question => question.Name == property);
    }

    [Fact]
    public void A_pot_life_in_a_hot_room_leaves_the_usual_one_open() =>
        Assert.Contains(CatalogueProperties.PotLife, Sheet(At(CatalogueProperties.PotLife, 30, 9)).Questions);

    [Fact]
    public void Names_that_differ_in_case_are_one_emulsion()
    {
        var catalogue = new EmulsionCatalogue([Solids(40, Ground.Datasheet, 2025), Solids(41, Ground.Datasheet, 2024) with { Emulsion = "INVENTED" }]);

        Assert.Equal("Invented", Assert.Single(catalogue.Sheets).Emulsion);
        Assert.NotNull(catalogue.Sheet("invented"));
        Assert.Null(catalogue.Sheet("another"));
    }

    internal static CatalogueSheet Sheet(params CatalogueEntry[] entries) => Assert.Single(new EmulsionCatalogue(entries).Sheets);

    internal static CatalogueEntry Solids(double percent, Ground ground, int? year) => new(
        "Invented", CatalogueProperties.Solids, null, CatalogueValue.Of(percent), ground, $"source of {year}", year is { } known ? new DateOnly(known, 1, 1) : null);

    internal static CatalogueEntry Word(CatalogueProperty property, string word, Ground ground) =>
        new("Invented", property, null, CatalogueValue.Of(word), ground, "a source", new DateOnly(2025, 1, 1));

    internal static CatalogueEntry At(CatalogueProperty property, double at, double value, Ground ground = Ground.Datasheet) =>
        new("Invented", property, at, CatalogueValue.Of(value), ground, "a source", new DateOnly(2025, 1, 1));

    private static SheetLine Line(params CatalogueEntry[] entries) => Assert.Single(Sheet(entries).Lines);

    private static IEnumerable<double> All(SheetLine line) => line.Others.Select(other => other.Entry).Prepend(line.Used).Select(entry => entry.Value.Number!.Value);
}
