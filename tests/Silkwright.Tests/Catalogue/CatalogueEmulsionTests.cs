using Silkwright.Answers;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;
using static Silkwright.Tests.Catalogue.CatalogueSheetTests;

namespace Silkwright.Tests.Catalogue;

/// <summary>A sheet as the emulsion that plans and comparisons reckon with.</summary>
public sealed class CatalogueEmulsionTests
{
    [Fact]
    public void Without_a_family_there_is_nothing_to_reckon_with() => Assert.Null(CatalogueEmulsion.Of(Sheet(Solids(30, Ground.Datasheet, 2025))));

    [Theory]
    [InlineData(Ground.MeasuredHere)]
    [InlineData(Ground.MeasuredElsewhere)]
    [InlineData(Ground.Datasheet)]
    [InlineData(Ground.CommonPractice)]
    public void The_ground_of_a_used_value_reaches_the_estimate(Ground ground)
    {
        var emulsion = Diazo(
            Solids(31, ground, 2025), At(CatalogueProperties.PotLife, 21, 30, ground), Number(CatalogueProperties.ShelfLife, 9, ground),
            Number(CatalogueProperties.RelativeExposure, 0.9, ground), At(CatalogueProperties.Price, 900, 23, ground), Word(CatalogueProperties.ToDischarge, "fair", ground));

        Assert.Equal((31, ground), Told(FamilyValues.SolidsPercent(emulsion)));
        Assert.Equal((30, ground), Told(FamilyValues.PotLifeDaysAt21(emulsion)));
        Assert.Equal((9, ground), Told(FamilyValues.ShelfLifeMonths(emulsion)));
        Assert.Equal((0.9, ground), Told(FamilyValues.RelativeExposure(emulsion)));
        Assert.Equal(ground, FamilyValues.PricePerKg(emulsion).Ground);
        Assert.Equal((ResistanceGrade.Fair, ground), (Resistance.To(InkKind.Discharge, emulsion).Grade, Resistance.To(InkKind.Discharge, emulsion).Ground));
    }

    [Fact]
    public void A_films_gauged_thickness_stands_before_its_sheets_and_says_so()
    {
        var film = CatalogueEmulsion.Of(Sheet(
            Word(CatalogueProperties.Family, "capillaryFilm", Ground.Datasheet),
            Number(CatalogueProperties.FilmThickness, 35, Ground.Datasheet), Number(CatalogueProperties.FilmThickness, 33.6, Ground.MeasuredHere)))!;

        Assert.Equal((33.6, Ground.MeasuredHere), Told(FamilyValues.FilmThicknessUm(film)));
    }

    [Fact]
    public void The_firmer_the_ground_the_narrower_the_interval()
    {
        double[] widths =
        [
            .. new[] { Ground.MeasuredHere, Ground.MeasuredElsewhere, Ground.Datasheet, Ground.CommonPractice }
                .Select(ground => FamilyValues.SolidsPercent(Diazo(Solids(31, ground, 2025)))).Select(solids => solids.High - solids.Low),
        ];

        Assert.Equal(widths.Order(), widths);
        Assert.Equal(widths.Length, widths.Distinct().Count());
    }

    [Fact]
    public void What_the_sheet_leaves_open_the_family_answers_and_says_so()
    {
        var emulsion = Diazo();

        Assert.Equal(Ground.CommonPractice, FamilyValues.SolidsPercent(emulsion).Ground);
        Assert.Equal(Ground.CommonPractice, FamilyValues.PricePerKg(emulsion).Ground);
        Assert.Equal(Ground.CommonPractice, Resistance.To(InkKind.Discharge, emulsion).Ground);
        Assert.Null(emulsion.SeeThrough);
    }

    /// <summary>98 for 4500 g is 21.8 a kilogram, 23 for 900 g is 25.6: by hand.</summary>
    [Fact]
    public void The_container_with_the_cheapest_kilogram_is_priced()
    {
        var emulsion = Diazo(At(CatalogueProperties.Price, 900, 23), At(CatalogueProperties.Price, 4500, 98));

        Assert.Equal(4500, emulsion.Price!.Grams);
        Assert.Equal(21.8, FamilyValues.PricePerKg(emulsion).Value, 0.05);
    }

    [Fact]
    public void A_pot_life_in_a_hot_room_is_not_taken_for_the_usual_one() =>
        Assert.Null(Diazo(At(CatalogueProperties.PotLife, 30, 9)).PotLifeDays);

    [Fact]
    public void A_poor_grade_rules_an_emulsion_out_and_says_who_found_it()
    {
        var answer = Resistance.To(InkKind.WaterBased, Diazo(Word(CatalogueProperties.ToWaterBased, "poor", Ground.MeasuredHere)));

        Assert.Equal((ResistanceGrade.Poor, Ground.MeasuredHere), (answer.Grade, answer.Ground));
        Assert.Contains("water-based ink attacks it", answer.Reason, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_shop_has_its_own_emulsions_first_and_the_catalogues_others_stand_after_them()
    {
        var shop = new Shop { Emulsions = [new StencilEmulsion { Id = "invented", Family = EmulsionFamily.Diazo, SolidsPercent = 45 }] };
        var catalogue = new EmulsionCatalogue(
        [
            Word(CatalogueProperties.Family, "diazo", Ground.Datasheet),
            Solids(30, Ground.MeasuredHere, 2025),
            Word(CatalogueProperties.Family, "dualCure", Ground.Datasheet) with { Emulsion = "Other" },
            Solids(30, Ground.Datasheet, 2025) with { Emulsion = "Nameless kind" },
        ]);

        var (both, notes) = CatalogueShelf.Add(shop, catalogue);

        Assert.Equal(["invented", "Other"], both.Emulsions.Select(emulsion => emulsion.Id));
        Assert.Equal(45, both.Emulsions[0].SolidsPercent);
        Assert.Collection(
            notes,
            note => Assert.EndsWith("Other.", note.Text, StringComparison.Ordinal),
            note => Assert.Contains("Nameless kind is left out", note.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_shop_leaves_open_the_catalogue_tells_with_its_source_and_ground()
    {
        var shop = new Shop
        {
            Emulsions =
            [
                new StencilEmulsion { Id = "Invented", Family = EmulsionFamily.Diazo, SolidsPercent = 45, Lot = "I-1", Grounds = new GivenGrounds { Solids = Ground.MeasuredHere } },
            ],
        };
        var catalogue = new EmulsionCatalogue(
        [
            Solids(30, Ground.Datasheet, 2025),
            At(CatalogueProperties.PotLife, 21, 30, Ground.MeasuredElsewhere),
            Number(CatalogueProperties.RelativeExposure, 0.9, Ground.MeasuredHere),
            At(CatalogueProperties.Price, 900, 23),
        ]);

        var (known, notes) = CatalogueShelf.Complete(shop, catalogue);
        var emulsion = Assert.Single(known.Emulsions);

        Assert.Equal("I-1", emulsion.Lot);
        Assert.Equal((45, Ground.MeasuredHere), Told(FamilyValues.SolidsPercent(emulsion)));
        Assert.Equal((30, Ground.MeasuredElsewhere), Told(FamilyValues.PotLifeDaysAt21(emulsion)));
        Assert.Equal((0.9, Ground.MeasuredHere), Told(FamilyValues.RelativeExposure(emulsion)));
        Assert.Equal(23, emulsion.Price!.Cost);
        Assert.DoesNotContain(notes, note => note.Text.Contains("solids", StringComparison.Ordinal));
        Assert.Contains(notes, note => note.Ground == Ground.MeasuredElsewhere && note.Text.Contains("pot life once mixed at 21 °C: 30 d", StringComparison.Ordinal));
        Assert.Contains(notes, note => note.Ground == Ground.MeasuredHere && note.Text.Contains("exposure beside a plain diazo 0.9, from the catalogue (a source, 2025-01-01)", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_an_emulsion_of_another_family_nothing_is_taken_and_that_is_told()
    {
        var shop = new Shop { Emulsions = [new StencilEmulsion { Id = "Invented", Family = EmulsionFamily.Photopolymer }] };
        var (known, notes) = CatalogueShelf.Complete(shop, new EmulsionCatalogue([Word(CatalogueProperties.Family, "diazo", Ground.Datasheet), Solids(30, Ground.Datasheet, 2025)]));
        Assert.Equal(shop.Emulsions, known.Emulsions);
        Assert.Contains("another family", Assert.Single(notes).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_shops_list_of_inks_and_its_working_curve_are_not_mixed_with_the_catalogues()
    {
        var own = new StencilEmulsion { Id = "Invented", Family = EmulsionFamily.Diazo, Resists = [InkKind.Plastisol], PenetrationDepthUm = 80 };
        var (completed, taken) = CatalogueEmulsion.Complete(own, Sheet(
            Word(CatalogueProperties.ToWaterBased, "good", Ground.MeasuredHere),
            Number(CatalogueProperties.PenetrationDepth, 120, Ground.MeasuredHere), Number(CatalogueProperties.CriticalDose, 40, Ground.MeasuredHere)));
        Assert.Empty(taken);
        Assert.Equal(own, completed);

        var (graded, _) = CatalogueEmulsion.Complete(
            own with { Resists = null, Resistances = new Dictionary<InkKind, GivenResistance> { [InkKind.WaterBased] = new(ResistanceGrade.Poor, Ground.MeasuredHere) } },
            Sheet(Word(CatalogueProperties.ToWaterBased, "good", Ground.MeasuredHere), Word(CatalogueProperties.ToDischarge, "fair", Ground.Datasheet)));
        Assert.Equal(ResistanceGrade.Poor, Resistance.To(InkKind.WaterBased, graded).Grade);
        Assert.Equal((ResistanceGrade.Fair, Ground.Datasheet), (Resistance.To(InkKind.Discharge, graded).Grade, Resistance.To(InkKind.Discharge, graded).Ground));
    }

    [Fact]
    public void The_emulsion_that_a_film_is_laid_with_is_completed_too()
    {
        var laying = new StencilEmulsion { Id = "Invented", Family = EmulsionFamily.Diazo };
        var shop = new Shop { Emulsions = [laying, new StencilEmulsion { Id = "Film", Family = EmulsionFamily.CapillaryFilm, LaidWith = laying }] };
        var (known, notes) = CatalogueShelf.Complete(shop, new EmulsionCatalogue([Solids(30, Ground.Datasheet, 2025)]));
        Assert.Equal(known.Emulsions[0], known.Emulsions[1].LaidWith);
        Assert.Single(notes);
    }

    [Fact]
    public void A_catalogue_without_any_family_is_refused_where_a_choice_is_asked() =>
        Assert.Throws<InputProblemException>(() => CatalogueShelf.Add(new Shop(), new EmulsionCatalogue([Solids(30, Ground.Datasheet, 2025)])));

    [Fact]
    public void A_choice_out_of_a_catalogue_names_its_emulsions_alone()
    {
        var catalogue = CatalogueReader.Read(
            """
            emulsion,property,value,ground,source,date
            Left,family,diazo,datasheet,sheet,2025-01-01
            Left,resistanceWaterBased,good,measuredHere,coupon,2025-02-01
            Right,family,photopolymer,datasheet,sheet,2025-01-01
            Right,resistanceWaterBased,poor,measuredHere,coupon,2025-02-01
            """, "c.csv");
        var (shop, _) = CatalogueShelf.Add(new Shop(), catalogue);

        var answer = EmulsionQuestion.Answer(new GivenTexts(new Dictionary<string, string> { ["ink"] = "water-based", ["run"] = "800" }), shop, new DateOnly(2026, 11, 25));

        Assert.Equal("Left", answer.Plan.Emulsion!.Id);
        Assert.Equal("Right", Assert.Single(answer.Plan.Beaten, beaten => beaten.RuledOut).Emulsion.Id);
    }

    private static StencilEmulsion Diazo(params CatalogueEntry[] entries) =>
        CatalogueEmulsion.Of(Sheet([Word(CatalogueProperties.Family, "diazo", Ground.Datasheet), .. entries]))!;

    private static CatalogueEntry Number(CatalogueProperty property, double value, Ground ground) =>
        new("Invented", property, null, CatalogueValue.Of(value), ground, "a source", new DateOnly(2025, 1, 1));

    private static (double Value, Ground Ground) Told(Estimate estimate) => (estimate.Value, estimate.Ground);
}
