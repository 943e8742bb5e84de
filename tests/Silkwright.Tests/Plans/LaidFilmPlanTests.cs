using CsCheck;
using Silkwright.Answers;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Plans;
using Silkwright.Stock;

namespace Silkwright.Tests.Plans;

/// <summary>Film laid with emulsion beside film laid with water and liquid emulsions, in one comparison.</summary>
public sealed class LaidFilmPlanTests
{
    private static readonly StencilEmulsion Film = new()
    {
        Id = "Swift",
        Family = EmulsionFamily.CapillaryFilm,
        FilmThicknessUm = 30,
        Resists = [InkKind.Plastisol, InkKind.WaterBased],
    };

    private static readonly StencilEmulsion Wren = new() { Id = "Wren", Family = EmulsionFamily.DualCure, Resists = [InkKind.Plastisol] };
    private static readonly StencilEmulsion Dunlin = new() { Id = "Dunlin", Family = EmulsionFamily.Diazo, Resists = [InkKind.WaterBased] };

    [Fact]
    public void A_film_on_hand_stands_twice_in_the_comparison()
    {
        var answer = Ask(InkKind.Plastisol, Film, Wren);

        Assert.Equal(["Swift", "Swift laid with Wren", "Wren"], answer.Contenders.Select(contender => contender.Id).Order());
        Assert.Equal("Wren", Assert.Single(answer.Handling, handling => handling.LaidWith is not null).LaidWith);
    }

    [Fact]
    public void It_is_laid_with_an_emulsion_that_the_ink_does_not_attack()
    {
        Assert.Contains(Ask(InkKind.WaterBased, Film, Wren, Dunlin).Contenders, contender => contender.Id == "Swift laid with Dunlin");
        Assert.DoesNotContain(Ask(InkKind.WaterBased, Film, Wren).Contenders, contender => contender.Id.Contains("laid with", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pair_that_the_shop_names_is_ruled_out_by_either_part()
    {
        var answer = Ask(InkKind.WaterBased, Film with { Id = "pair", LaidWith = Wren }, Wren, Dunlin);
        var beaten = Assert.Single(answer.Plan.Beaten, beaten => beaten.Emulsion.Id == "pair");

        Assert.True(beaten.RuledOut);
        Assert.Contains("of Wren, which it is laid with", beaten.Why, StringComparison.Ordinal);
    }

    /// <summary>Film costs by the sheet, and the emulsion comes on top: dearer in material than either. Common practice, no source.</summary>
    [Fact]
    public void Its_material_costs_more_than_the_films_or_the_emulsions_alone()
    {
        var answer = Ask(InkKind.Plastisol, Film, Wren);
        var material = answer.Contenders.ToDictionary(contender => contender.Id, contender => contender.Cost.EmulsionOnScreen.Value / contender.Cost.Case.Screens);

        Assert.True(material["Swift laid with Wren"] > material["Swift"]);
        Assert.True(material["Swift laid with Wren"] > material["Wren"]);
    }

    /// <summary>
    /// Bound into the mesh by emulsion a film lasts longer than laid with water, and not longer than the emulsion that wraps the mesh
    /// from both sides. Common practice, no source.
    /// </summary>
    [Fact]
    public void It_lasts_between_the_film_and_the_emulsion() =>
        Gen.Select(Gen.Enum<InkKind>(), Gen.Bool, Gen.OneOf(EmulsionFamily.Diazo, EmulsionFamily.DualCure, EmulsionFamily.Photopolymer), Gen.Bool).Sample(
            (ink, filmMade, family, layingMade) =>
            {
                var film = Median(EmulsionFamily.CapillaryFilm, filmMade, null);
                var laying = Median(family, layingMade, null);
                var pair = Median(EmulsionFamily.CapillaryFilm, filmMade, new LayingEmulsion(family, layingMade));
                Assert.InRange(pair.Value, Math.Min(film.Value, laying.Value) * 0.999, Math.Max(film.Value, laying.Value) * 1.001);
                if (filmMade == layingMade)
                    Assert.True(pair.High / pair.Low >= Math.Max(film.High / film.Low, laying.High / laying.Low) * 0.999, "a pair is known no better than its parts");

                Estimate Median(EmulsionFamily of, bool made, LayingEmulsion? with) => StencilLife.Of(new LifeCase
                {
                    Family = of,
                    Ink = ink,
                    MadeForInk = made,
                    LaidWith = with,
                    EomUm = Estimate.Exact(10, Ground.Model),
                    Impressions = 1000,
                }).MedianImpressions;
            });

    /// <summary>A wide doubt about a life is no life of a single impression: the cost of such a stencil stays that of some dozens of screens.</summary>
    [Fact]
    public void A_doubtful_pair_is_dear_and_not_absurd()
    {
        var unsaid = Film with { Resists = null };
        var answer = Ask(InkKind.WaterBased, unsaid, Dunlin);
        var (pair, film) = (Cost("Swift laid with Dunlin"), Cost("Swift"));
        Assert.InRange(pair, film / 3, film * 3);

        double Cost(string id) => answer.Contenders.Single(contender => contender.Id == id).Cost.Total.Value;
    }

    /// <summary>Both must cure: light that is enough for the slower part is enough for both. Common practice, no source.</summary>
    [Fact]
    public void It_is_exposed_as_long_as_its_slower_part_asks() =>
        Gen.Select(Gen.Double[0.05, 2], Gen.Double[0.05, 2]).Sample((film, laying) =>
        {
            var slow = Least(Film with { RelativeExposure = Math.Max(film, laying) });
            var pair = Least(Film with { RelativeExposure = film, LaidWith = Wren with { RelativeExposure = laying } });
            Assert.Equal(slow, pair, slow * 1e-9);

            static double Least(StencilEmulsion emulsion) => ExposureModel.Window(new ExposureCase
            {
                Mesh = new(61, 64),
                EomUm = Estimate.Within(20, 0.2, Ground.Model),
                StencilUm = Estimate.Within(120, 0.1, Ground.Model),
                Emulsion = emulsion,
                Lamp = new Lamp { Kind = LampKind.MetalHalide },
            }).Least.Value;
        });

    [Fact]
    public void It_keeps_no_longer_than_the_mixed_emulsion_it_is_laid_with()
    {
        var mixed = Wren with { PotLifeDays = 30, SensitisedOn = RandomShops.Today.AddDays(-25), StoredCelsius = 21 };
        var fresh = Film with { ReceivedOn = RandomShops.Today.AddDays(-30), StoredCelsius = 21 };

        Assert.Equal(PotLife.Of(mixed, RandomShops.Today).DaysLeft, PotLife.Of(fresh with { LaidWith = mixed }, RandomShops.Today).DaysLeft);
        Assert.True(PotLife.Of(fresh with { LaidWith = mixed with { SensitisedOn = RandomShops.Today.AddDays(-60) } }, RandomShops.Today).Over);
    }

    /// <summary>What is left in the bucket is over with its pot life, whatever lies over it: waste falls on the emulsion, not on the film.</summary>
    [Fact]
    public void A_short_pot_life_makes_it_dearer()
    {
        var keeps = Waste(Wren with { PotLifeDays = 60 });
        var dies = Waste(Wren with { PotLifeDays = 3 });
        Assert.True(dies > keeps);

        static double Waste(StencilEmulsion laying) => Ask(InkKind.Plastisol, Film with { Id = "pair", LaidWith = laying }).Contenders
            .Single(contender => contender.Id == "pair").Cost.Waste.Value;
    }

    [Fact]
    public void A_plan_names_the_film_as_the_shop_does_and_what_it_is_laid_with()
    {
        var shop = new Shop { Emulsions = [Film with { Id = "pair", LaidWith = Wren }] };
        var colour = PlanDocument.Of(Planner.Plan(Job(InkKind.Plastisol), shop))["colours"]![0]!;

        Assert.Equal(("pair", "Wren"), ((string?)colour["emulsion"], (string?)colour["laidWith"]));
        var offered = PlanDocument.Of(Planner.Plan(Job(InkKind.Plastisol), new Shop { Emulsions = [Film, Wren] }))["colours"]![0]!;
        Assert.Contains(offered["beaten"]!.AsArray(), beaten => (string?)beaten!["emulsion"] == "Swift" && (string?)beaten["laidWith"] == "Wren");
    }

    [Theory]
    [InlineData("diazo", "Wren", "is no capillary film")]
    [InlineData("capillaryFilm", "Robin", "no emulsion called 'Robin'")]
    [InlineData("capillaryFilm", "Swift", "which is a film too")]
    public void A_shop_that_lays_what_cannot_be_laid_is_told_so(string family, string laidWith, string told)
    {
        var json = $$"""{"emulsions": [{"id": "Swift", "family": "{{family}}", "laidWith": "{{laidWith}}"}, {"id": "Wren", "family": "dualCure"}]}""";
        var problem = Assert.Single(Assert.Throws<InputProblemException>(() => ShopReader.Read(json, "shop")).Problems);

        Assert.Contains(told, problem.What, StringComparison.Ordinal);
        Assert.Contains("laidWith", problem.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_says_what_it_lays_a_film_with()
    {
        var shop = ShopReader.Read("""{"emulsions": [{"id": "pair", "family": "capillaryFilm", "laidWith": "wren"}, {"id": "Wren", "family": "dualCure"}]}""", "shop");
        Assert.Equal("Wren", shop.Emulsions[0].LaidWith!.Id);
    }

    private static EmulsionAnswer Ask(InkKind ink, params StencilEmulsion[] emulsions)
    {
        var job = Job(ink);
        return Advisor.Answer(job, job.Colours[0], new Shop { Emulsions = emulsions });
    }

    private static Job Job(InkKind ink) => new()
    {
        Name = "asked",
        Date = RandomShops.Today,
        Run = 500,
        Colours = [new JobColour { Name = "one", Ink = ink, Kind = WorkKind.FullFrontSpot }],
    };
}
