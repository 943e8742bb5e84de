using System.Text.Json;
using CsCheck;
using Silkwright.Coating;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

public class PlannerTests
{
    private const int ManyShops = 2000;
    private const int ManySmallShops = 100_000;

    /// <summary>Judged here from the emulsion's own entry, apart from the code that sets the limits.</summary>
    [Fact]
    public void No_recommended_emulsion_is_one_that_the_ink_attacks_or_whose_life_is_over() =>
        Gen.Select(RandomShops.Job, RandomShops.Shop).Sample(HoldsTheHardLimits, iter: ManyShops);

    /// <summary>
    /// One colour, and a few emulsions to choose from: the same judgement over many more shops. No halftones, whose beats take longer to look
    /// for than all the rest; the many shops above have them.
    /// </summary>
    [Fact]
    public void Nor_in_a_hundred_thousand_small_shops() =>
        Gen.Select(RandomShops.Job, RandomShops.Shop).Sample(
            (job, shop) => HoldsTheHardLimits(
                job with { Colours = [WithoutHalftone(job.Colours[0])] },
                shop with { Meshes = [.. shop.Meshes.Take(1)], Lamps = [.. shop.Lamps.Take(1)], Emulsions = [.. shop.Emulsions.Take(3)] }),
            iter: ManySmallShops);

    private static JobColour WithoutHalftone(JobColour colour) => colour with
    {
        Kind = colour.Kind == WorkKind.FullFrontHalftone ? WorkKind.FullFrontSpot : colour.Kind,
        Needs = colour.Needs is { } needs ? needs with { RulingLpi = null } : null,
    };

    private static void HoldsTheHardLimits(Job job, Shop shop)
    {
        var plan = Planner.Plan(job, shop);
        foreach (var colour in plan.Colours)
        {
            if (colour.Emulsion is not { } emulsion)
            {
                Assert.False(string.IsNullOrWhiteSpace(colour.NearestFix), "a plan without an emulsion names the way out");
                Assert.All(colour.Beaten, beaten => Assert.True(beaten.RuledOut));
                continue;
            }

            HoldsTheHardLimits(emulsion, colour.Colour.Ink, shop);
            if (emulsion.LaidWith is { } laying)
                HoldsTheHardLimits(laying, colour.Colour.Ink, shop);
        }
    }

    private static void HoldsTheHardLimits(StencilEmulsion emulsion, InkKind ink, Shop shop)
    {
        if (emulsion.Resists is { } resists)
            Assert.Contains(ink, resists);
        else if (emulsion.Family == EmulsionFamily.Photopolymer)
            Assert.True(ink is not (InkKind.WaterBased or InkKind.Discharge), "an unspecified photopolymer never meets water");
        Assert.False(IsOver(emulsion), $"{emulsion} is over");
        if (shop.Room.Light == RoomLight.White)
            Assert.NotEqual(EmulsionFamily.Photopolymer, emulsion.Family);
        Assert.False(shop.PressWash == PressWash.Solvent && emulsion.ResistsCleaner?.Grade == ResistanceGrade.Poor, "a solvent meets what it attacks");
        // no lamp for stencils gives light below 350 nm: their bands begin there (trade practice, no source)
        Assert.False(emulsion.SensitiveToNm is <= 335 && shop.Lamps.Count > 0, "no lamp reaches it");
    }

    /// <summary>A lot kept at or above 21 °C for longer than its own pot life is over whatever else is said. Trade rule, common practice.</summary>
    private static bool IsOver(StencilEmulsion emulsion) =>
        emulsion is { SensitisedOn: { } mixed, PotLifeDays: { } life, StoredCelsius: { } celsius }
        && celsius >= 21
        && RandomShops.Today.DayNumber - mixed.DayNumber > life * Math.Pow(0.5, (celsius - 21) / 5.6);

    /// <summary>Read from the document, as another program would, not from the values that made it.</summary>
    [Fact]
    public void Every_quantity_of_a_plan_lies_inside_its_interval_and_names_its_ground() =>
        Gen.Select(RandomShops.Job, RandomShops.Shop).Sample(
            (job, shop) =>
            {
                using var document = JsonDocument.Parse(PlanDocument.Of(Planner.Plan(job, shop)).ToJsonString());
                // mesh and artwork alone show six a colour, with or without an emulsion
                Assert.True(QuantitiesHeld(document.RootElement) >= 6 * job.Colours.Count);
            },
            iter: 500);

    [Fact]
    public void A_coat_read_behind_a_trough_that_nobody_knows_teaches_nothing()
    {
        var shop = new Shop { Emulsions = [new StencilEmulsion { Id = "Wren", Family = EmulsionFamily.DualCure }], Troughs = [new Trough("round", 1.5)] };
        var reading = new CoatReading { EmulsionId = "Wren", Mesh = new MeshFabric(61, 64), Strokes = [new Stroke(StrokeSide.Print), new Stroke(StrokeSide.Squeegee)], EomUm = 90 };
        Assert.NotEqual(Eom(shop), Eom(shop with { CoatReadings = [reading with { TroughId = "round" }] }));
        Assert.Equal(Eom(shop), Eom(shop with { CoatReadings = [reading with { TroughId = "a lent one" }] }));

        static Estimate Eom(Shop shop) => Planner.Plan(
            new Job { Name = "x", Date = RandomShops.Today, Run = 100, Colours = [new JobColour { Name = "x", Ink = InkKind.Plastisol, Kind = WorkKind.LeftChestSpot }] },
            shop).Colours[0].Coat!.EomUm;
    }

    private static int QuantitiesHeld(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Array)
            return element.EnumerateArray().Sum(QuantitiesHeld);
        if (element.ValueKind != JsonValueKind.Object)
            return 0;
        if (!element.TryGetProperty("coverPercent", out var cover))
            return element.EnumerateObject().Sum(field => QuantitiesHeld(field.Value));
        var value = element.GetProperty("value").GetDouble();
        Assert.InRange(value, element.GetProperty("low").GetDouble(), element.GetProperty("high").GetDouble());
        Assert.InRange(cover.GetDouble(), 50, 100);
        Assert.Contains(element.GetProperty("ground").GetString(), Names.All<Ground>());
        return 1;
    }

    [Fact]
    public void More_pieces_never_raise_the_chance_that_a_stencil_finishes() =>
        Gen.Select(RandomShops.Job, RandomShops.Shop, Gen.Int[2, 20]).Sample(
            (job, shop, times) =>
            {
                var before = Planner.Plan(job, shop);
                var after = Planner.Plan(job with { Run = job.Run * times }, shop);
                for (var i = 0; i < before.Colours.Count; i++)
                {
                    var (less, more) = (before.Colours[i], after.Colours[i]);
                    // The longer run may be given a harder finish or another emulsion; then the chances are of different stencils.
                    if (less.Life is null || less.Emulsion != more.Emulsion || less.Finish != more.Finish)
                        continue;
                    Assert.True(more.Life!.FinishPercent.Value <= less.Life.FinishPercent.Value + 1e-9);
                }
            },
            iter: 500);

    [Fact]
    public void The_same_job_and_shop_give_the_same_plan() =>
        Gen.Select(RandomShops.Job, RandomShops.Shop).Sample(
            (job, shop) => Assert.Equal(
                PlanDocument.Of(Planner.Plan(job, shop)).ToJsonString(),
                PlanDocument.Of(Planner.Plan(job, shop)).ToJsonString()),
            iter: 100);

    [Fact]
    public void A_shop_that_says_nothing_still_gets_a_plan_that_says_what_it_assumed()
    {
        var plan = Planner.Plan(Asking(InkKind.WaterBased, run: 300), new Shop());
        var colour = Assert.Single(plan.Colours);
        Assert.NotNull(colour.Emulsion);
        Assert.Contains(plan.Notes, note => note.Ground == Ground.CommonPractice && note.Text.Contains("meshes", StringComparison.Ordinal));
        Assert.NotNull(plan.MeasureNext);
        Assert.True(colour.Exposure!.Most.High / colour.Exposure.Least.Low >= 3, "before any test the window is wide");
    }

    [Fact]
    public void When_no_emulsion_fits_the_plan_says_so_and_names_the_nearest_way_out()
    {
        var shop = new Shop
        {
            Emulsions =
            [
                new StencilEmulsion { Id = "Dunlin", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol] },
                new StencilEmulsion
                {
                    Id = "Kestrel", Family = EmulsionFamily.Diazo, Resists = [InkKind.WaterBased], PotLifeDays = 35,
                    SensitisedOn = RandomShops.Today.AddDays(-90), StoredCelsius = 22,
                },
            ],
        };
        var colour = Assert.Single(Planner.Plan(Asking(InkKind.WaterBased, run: 300), shop).Colours);
        Assert.Null(colour.Emulsion);
        Assert.Equal("mix a fresh container of Kestrel", colour.NearestFix);
        Assert.Equal(2, colour.Beaten.Count);
    }

    [Fact]
    public void With_two_lamps_the_plan_says_why_it_takes_one()
    {
        var shop = new Shop
        {
            Emulsions = [new StencilEmulsion { Id = "Wren", Family = EmulsionFamily.DualCure }],
            Lamps = [new Lamp { Id = "array", Kind = LampKind.LedArray }, new Lamp { Id = "halide", Kind = LampKind.MetalHalide }],
        };
        Assert.Contains(Because(shop), reason => reason.Contains("no lamp has a step test of Wren", StringComparison.Ordinal));
        var tested = shop with { ExposureReadings = [new ExposureReading { EmulsionId = "Wren", LampId = "halide", Test = new StepTest(60, 7) }] };
        Assert.Contains(Because(tested), reason => reason.Contains("a step test of Wren", StringComparison.Ordinal) && reason.EndsWith("not on array.", StringComparison.Ordinal));
        Assert.DoesNotContain(Because(shop with { Lamps = [shop.Lamps[0]] }), reason => reason.Contains("Exposed with", StringComparison.Ordinal));

        static IReadOnlyList<string> Because(Shop shop) => Planner.Plan(Asking(InkKind.Plastisol, run: 300), shop).Colours[0].Because;
    }

    [Fact]
    public void A_job_without_colours_or_pieces_is_told_both_faults()
    {
        var job = new Job { Name = "empty", Date = RandomShops.Today, Run = 0, Colours = [] };
        var fault = Assert.Throws<InputProblemException>(() => Planner.Plan(job, new Shop()));
        Assert.Equal(2, fault.Problems.Count);
    }

    private static Job Asking(InkKind ink, long run) => new()
    {
        Name = "asked by phone",
        Date = RandomShops.Today,
        Run = run,
        Colours = [new JobColour { Name = "one", Ink = ink }],
    };
}
