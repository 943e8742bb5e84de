using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>What a plan says of the measurement worth most.</summary>
public sealed class NextReadingTests
{
    /// <summary>
    /// Brute force: a reading of the coat is drawn from what is believed of it, everything is fitted again with it, spreads too, and the intervals of all coats of the job are
    /// compared; averaged over many draws. The plan's figure keeps the spreads, so that it need not be equal.
    /// </summary>
    [Fact]
    public void A_coat_readings_worth_is_what_refitting_with_drawn_readings_shrinks()
    {
        var shop = Shop(reads: 3);
        var job = Job("Wren", "Tern");
        var plan = Planner.Plan(job, shop);
        var told = new[] { plan.MeasureNext! }.Concat(plan.MeasureNext!.Others).Where(next => next.What.Contains("coat on", StringComparison.Ordinal)).ToArray();
        Assert.Equal(2, told.Length);
        var reads = LearntShopCoats.ReadsOf(shop);
        CoatObservation[] coats = [.. plan.Colours.Select(colour => new CoatObservation { Shop = shop.Name, Trough = colour.Trough!, Emulsion = colour.Emulsion!, Mesh = colour.Mesh, Strokes = colour.Coat!.Strokes })];
        var before = CoatHierarchy.Of(reads, cancel: TestContext.Current.CancellationToken);
        var random = new Random(4);
        for (var k = 0; k < coats.Length; k++)
        {
            var (believed, sum) = (before.Expect(coats[k]), 0.0);
            const int draws = 300;
            for (var draw = 0; draw < draws; draw++)
            {
                var read = believed.Value + ((believed.High - believed.Value) / 1.645 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()));
                var after = CoatHierarchy.Of([.. reads, new CoatRead(coats[k], read)], cancel: TestContext.Current.CancellationToken);
                sum += coats.Sum(coat => 2 * (Half(before.Expect(coat)) - Half(after.Expect(coat))) / before.Expect(coat).Value) / draws;
            }

            var worth = told.Single(next => next.What.Contains(coats[k].Emulsion.Id, StringComparison.Ordinal)).Narrows;
            TestContext.Current.TestOutputHelper!.WriteLine(FormattableString.Invariant($"{coats[k].Emulsion.Id}: told {worth:0.000}, by drawn readings {sum:0.000}"));
            Assert.InRange(worth / sum, 0.7, 1.4);
        }

        static double Half(Estimate of) => of.High - of.Value;
    }

    [Fact]
    public void A_coat_read_often_is_not_the_one_to_read_and_an_untested_exposure_comes_forward()
    {
        var often = Planner.Plan(Job("Wren"), Shop(reads: 60));
        var never = Planner.Plan(Job("Wren"), Shop(reads: 0));

        Assert.Contains("thickness of the Wren coat", never.MeasureNext!.What, StringComparison.Ordinal);
        Assert.Contains("step test", often.MeasureNext!.What, StringComparison.Ordinal);
        Assert.Equal([.. often.MeasureNext.Others.OrderByDescending(other => other.NarrowsPerMinute)], often.MeasureNext.Others);
    }

    private static readonly MeshFabric Fabric = new(61, 64);

    private static Job Job(params string[] emulsions) => new()
    {
        Name = "Two",
        Garment = new Garment { Dark = false },
        Run = 200,
        Date = new DateOnly(2026, 11, 29),
        Colours = [.. emulsions.Select((name, i) => new JobColour { Name = name, Ink = i == 0 ? InkKind.WaterBased : InkKind.Plastisol, Role = InkRole.Colour, Kind = WorkKind.LargeSolid })],
    };

    /// <summary>Wren alone resists water-based ink, Tern alone plastisol, so that each colour has its own.</summary>
    private static Shop Shop(int reads) => new()
    {
        Name = "Quay",
        Meshes = [Fabric],
        Troughs = [new Trough("round", 1.5)],
        Emulsions =
        [
            new StencilEmulsion { Id = "Wren", Family = EmulsionFamily.DualCure, SolidsPercent = 38, Resists = [InkKind.WaterBased] },
            new StencilEmulsion { Id = "Tern", Family = EmulsionFamily.DualCure, SolidsPercent = 42, Resists = [InkKind.Plastisol] },
        ],
        CoatReadings =
        [
            .. Enumerable.Range(0, reads).Select(i => new CoatReading
            {
                EmulsionId = "Wren",
                Mesh = Fabric,
                TroughId = "round",
                Strokes = [.. Enumerable.Repeat(new Stroke(StrokeSide.Print), 1 + (i % 3)), new Stroke(StrokeSide.Squeegee)],
                EomUm = (i % 3 * 5) + 8 + (i * 7 % 5 * 0.4),
            }),
        ],
    };
}
