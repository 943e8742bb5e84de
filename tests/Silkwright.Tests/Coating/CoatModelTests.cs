using CsCheck;
using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating;

public sealed class CoatModelTests
{
    private static readonly Trough Round = new("round", 1.5);
    private static readonly Trough Sharp = new("sharp", 0.5);

    private static readonly Gen<WovenMesh> Meshes = Gen.OneOf(
        [.. new (double Count, double Thread)[]
        {
            (24, 140), (34, 100), (43, 80), (48, 70), (59, 48), (61, 64), (77, 55), (90, 40), (90, 48), (120, 34), (140, 34),
        }.Select(named => Gen.Const(Mesh(named.Count, named.Thread)))]);

    private static readonly Gen<Stroke> AnyStroke = Gen.Select(
        Gen.Bool, Gen.Double[0, 1], Gen.Double[0, 1],
        (print, scrape, dried) => new Stroke(print ? StrokeSide.Print : StrokeSide.Squeegee, scrape < 0.15, dried < 0.05));

    private static readonly Gen<Stroke[]> Strokes = Gen.Select(
        Gen.Bool, AnyStroke.Array[0, 5],
        (print, rest) => (Stroke[])[new Stroke(print ? StrokeSide.Print : StrokeSide.Squeegee), .. rest]);

    /// <summary>Enough draws to meet the rare order in which a wrong sign shows: tried with one put in on purpose.</summary>
    private const int Draws = 3000;

    private static readonly Gen<double> Solids = Gen.Double[15, 60];
    private static readonly Gen<double> Radius = Gen.Double[0.2, 3];

    /// <summary>
    /// Thickness seeds of the trade for a round edge and 35 to 40 % solids, wet on wet (common practice, no source, ±50 %). The
    /// model's best value lies in the seed's range and its interval covers it, at the middle of those solids.
    /// </summary>
    [Theory]
    [InlineData(43, 80, 1, 1, 6, 12)]
    [InlineData(43, 80, 2, 1, 12, 22)]
    [InlineData(43, 80, 2, 2, 20, 32)]
    [InlineData(61, 64, 1, 1, 5, 9)]
    [InlineData(61, 64, 2, 1, 10, 16)]
    [InlineData(61, 64, 2, 2, 14, 22)]
    [InlineData(90, 48, 1, 1, 4, 7)]
    [InlineData(90, 48, 1, 2, 6, 10)]
    [InlineData(90, 48, 2, 2, 8, 14)]
    [InlineData(120, 34, 1, 1, 2, 5)]
    [InlineData(120, 34, 1, 2, 4, 8)]
    [InlineData(120, 34, 2, 2, 6, 10)]
    public void Agrees_with_the_trades_seeds(double countPerCm, double threadUm, int print, int squeegee, double leastUm, double mostUm)
    {
        var eom = CoatModel.Predict(Mesh(countPerCm, threadUm), WithSolids(37.5), Round, WetOnWet(print, squeegee)).EomUm;

        Assert.InRange(eom.Value, leastUm, mostUm);
        Assert.InRange(leastUm, eom.Low, eom.High);
        Assert.InRange(mostUm, eom.Low, eom.High);
    }

    /// <summary>About half solids: one stroke a side makes a good stencil, 10 to 20 % of the fabric. Common practice, no source.</summary>
    [Theory]
    [InlineData(34, 100)]
    [InlineData(43, 80)]
    [InlineData(48, 70)]
    [InlineData(61, 64)]
    [InlineData(77, 55)]
    [InlineData(90, 48)]
    [InlineData(120, 34)]
    public void Half_solids_want_one_stroke_a_side_on_every_mesh(double countPerCm, double threadUm)
    {
        var mesh = Mesh(countPerCm, threadUm);
        var coat = CoatModel.For(0.15 * mesh.FabricThicknessUm.Value, mesh, WithSolids(50), Round);

        Assert.Equal(WetOnWet(1, 1), coat.Strokes);
        Assert.InRange(100 * coat.EomUm.Value / mesh.FabricThicknessUm.Value, 10, 20);
    }

    /// <summary>Mid-thirties solids want two on the print side and one or two on the squeegee side. Common practice, no source.</summary>
    [Theory]
    [InlineData(34, 100)]
    [InlineData(43, 80)]
    [InlineData(48, 70)]
    [InlineData(61, 64)]
    [InlineData(77, 55)]
    [InlineData(90, 48)]
    [InlineData(120, 34)]
    public void Mid_thirties_solids_want_two_and_one_or_two(double countPerCm, double threadUm)
    {
        var mesh = Mesh(countPerCm, threadUm);
        var coat = CoatModel.For(0.15 * mesh.FabricThicknessUm.Value, mesh, WithSolids(35), Round);

        Assert.Contains(coat.Strokes.ToArray(), new[] { WetOnWet(2, 1), WetOnWet(2, 2) });
        Assert.True(CoatModel.Predict(mesh, WithSolids(35), Round, WetOnWet(1, 1)).EomUm.Value < 0.1 * mesh.FabricThicknessUm.Value);
    }

    /// <summary>One stroke a side of half solids builds as much as about four of a low-solids diazo (a trade article); ±50 %.</summary>
    [Fact]
    public void Half_solids_1_and_1_builds_like_a_low_solids_diazo_2_and_2()
    {
        var mesh = Mesh(61, 64);
        var one = CoatModel.Predict(mesh, WithSolids(50), Round, WetOnWet(1, 1)).EomUm.Value;
        var four = CoatModel.Predict(mesh, WithSolids(26), Round, WetOnWet(2, 2)).EomUm.Value;

        Assert.InRange(four / one, 0.5, 1.5);
    }

    /// <summary>A round edge lays 1.5 to 2 times a sharp one a stroke; a face coat of a sharp edge dries to 2 to 5 µm. Common practice, no source.</summary>
    [Fact]
    public void Edges_and_face_coats_do_what_the_trade_says()
    {
        var mesh = Mesh(61, 64);
        var byRound = StrokeGain(Round);
        var bySharp = StrokeGain(Sharp);
        var bare = CoatModel.Predict(mesh, WithSolids(37.5), Sharp, WetOnWet(2, 2)).EomUm.Value;
        var faced = CoatModel.Predict(
            mesh, WithSolids(37.5), Sharp, [.. WetOnWet(2, 2), new Stroke(StrokeSide.Print, AfterDrying: true)]).EomUm.Value;

        Assert.InRange(byRound / bySharp, 1.5, 2);
        Assert.InRange(faced - bare, 2, 5);

        double StrokeGain(Trough trough) =>
            CoatModel.Predict(mesh, WithSolids(37.5), trough, WetOnWet(4, 2)).EomUm.Value
            - CoatModel.Predict(mesh, WithSolids(37.5), trough, WetOnWet(3, 2)).EomUm.Value;
    }

    /// <summary>
    /// Square metres a litre, reckoned in the trade for a fully filled mesh and then times 0.9 to 1.3 (trade practice): 43/80 at
    /// 35 % and 45 %, 61/64 and 120/34 between them.
    /// </summary>
    [Theory]
    [InlineData(43, 80, 35, 2, 2, 3.3, 3.7)]
    [InlineData(43, 80, 45, 2, 1, 4.2, 4.8)]
    [InlineData(61, 64, 40, 2, 1, 4.3, 6.4)]
    [InlineData(90, 48, 40, 2, 1, 6.1, 8.9)]
    [InlineData(120, 34, 40, 2, 1, 8, 12)]
    public void A_litre_goes_as_far_as_the_trade_reckons(
        double countPerCm, double threadUm, double solidsPercent, int print, int squeegee, double least, double most)
    {
        var emulsion = WithSolids(solidsPercent);
        var coat = CoatModel.Predict(Mesh(countPerCm, threadUm), emulsion, Round, WetOnWet(print, squeegee));
        var gramsPerLitre = 1000 * FamilyValues.DensityGPerCm3(emulsion).Value;

        Assert.InRange(gramsPerLitre / coat.GramsPerM2.Value, 0.9 * least, 1.3 * most);
    }

    [Fact]
    public void A_filled_stroke_never_thins_the_stencil() =>
        Gen.Select(Meshes, Solids, Radius, Strokes, Gen.Bool, Gen.Bool).Sample((mesh, solids, radius, strokes, print, dried) =>
        {
            var more = new Stroke(print ? StrokeSide.Print : StrokeSide.Squeegee, AfterDrying: dried);
            return Eom(mesh, solids, radius, [.. strokes, more]) >= Eom(mesh, solids, radius, strokes) - 1e-9;
        }, iter: Draws);

    [Fact]
    public void An_empty_edge_never_thickens_the_stencil() =>
        Gen.Select(Meshes, Solids, Radius, Strokes, Gen.Bool, Gen.Bool).Sample((mesh, solids, radius, strokes, print, dried) =>
        {
            var scrape = new Stroke(print ? StrokeSide.Print : StrokeSide.Squeegee, Scrape: true, AfterDrying: dried);
            return Eom(mesh, solids, radius, [.. strokes, scrape]) <= Eom(mesh, solids, radius, strokes) + 1e-9;
        }, iter: Draws);

    [Fact]
    public void More_solids_never_thin_the_stencil() =>
        Gen.Select(Meshes, Solids, Radius, Strokes, Gen.Double[0, 30]).Sample((mesh, solids, radius, strokes, more) =>
            Eom(mesh, solids + more, radius, strokes) >= Eom(mesh, solids, radius, strokes) - 1e-9, iter: Draws);

    [Fact]
    public void A_rounder_edge_never_thins_the_stencil() =>
        Gen.Select(Meshes, Solids, Radius, Radius, Strokes).Sample((mesh, solids, one, other, strokes) =>
            Eom(mesh, solids, Math.Max(one, other), strokes) >= Eom(mesh, solids, Math.Min(one, other), strokes) - 1e-9, iter: Draws);

    [Fact]
    public void An_interval_holds_its_value_and_never_goes_below_bare_mesh() =>
        Gen.Select(Meshes, Solids, Radius, Strokes).Sample((mesh, solids, radius, strokes) =>
        {
            var coat = CoatModel.Predict(mesh, WithSolids(solids), new Trough("any", radius), strokes);
            return coat.EomUm.Low >= 0
                && coat.StencilUm.Value >= mesh.FabricThicknessUm.Value - 1e-9
                && coat.WetUm.Value >= mesh.VoidUm.Value - 1e-9
                && coat.GramsPerM2.Low > 0
                && coat.EomUm.Ground == Ground.CommonPractice;
        });

    [Fact]
    public void A_coat_that_shrinks_into_the_mesh_says_so()
    {
        var coat = CoatModel.Predict(Mesh(61, 64), WithSolids(20), Sharp, WetOnWet(1, 1));

        Assert.Equal(0, coat.EomUm.Value);
        Assert.Contains(coat.Notes, note => note.Text.Contains("saw-tooth", StringComparison.Ordinal));
    }

    [Fact]
    public void A_thickness_out_of_reach_says_so_and_gives_the_nearest()
    {
        var coat = CoatModel.For(400, Mesh(120, 34), WithSolids(40), Sharp);

        Assert.Contains(coat.Notes, note => note.Text.Contains("No usual strokes reach 400", StringComparison.Ordinal));
        Assert.InRange(coat.EomUm.Value, 20, 100);
    }

    [Fact]
    public void Strokes_for_a_wanted_thickness_come_near_it() =>
        Gen.Select(Meshes, Gen.Double[35, 50], Gen.Double[0.10, 0.25]).Sample((mesh, solids, share) =>
        {
            var wanted = share * mesh.FabricThicknessUm.Value;
            var coat = CoatModel.For(wanted, mesh, WithSolids(solids), Round);
            return Math.Abs(coat.EomUm.Value - wanted) <= Math.Max(6, 0.5 * wanted)
                && coat.Strokes.Count(stroke => !stroke.AfterDrying) <= 5;
        });

    [Fact]
    public void No_strokes_or_a_first_one_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Eom(Mesh(61, 64), 40, 1, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => Eom(Mesh(61, 64), 40, 1, [new Stroke(StrokeSide.Print, Scrape: true)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Eom(Mesh(61, 64), 40, 1, [new Stroke(StrokeSide.Print, AfterDrying: true)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Eom(Mesh(61, 64), 40, 0.1, WetOnWet(1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Eom(Mesh(61, 64), 40, 5, WetOnWet(1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CoatModel.For(-1, Mesh(61, 64), WithSolids(40), Round));
    }

    private static double Eom(WovenMesh mesh, double solidsPercent, double radiusMm, IReadOnlyList<Stroke> strokes) =>
        CoatModel.Predict(mesh, WithSolids(solidsPercent), new Trough("any", radiusMm), strokes).EomUm.Value;

    private static WovenMesh Mesh(double countPerCm, double threadUm) => WovenMesh.Of(new MeshFabric(countPerCm, threadUm));

    private static StencilEmulsion WithSolids(double percent) =>
        new() { Id = "invented", Family = EmulsionFamily.Photopolymer, SolidsPercent = percent };

    private static Stroke[] WetOnWet(int print, int squeegee) =>
        [.. Enumerable.Repeat(new Stroke(StrokeSide.Print), print), .. Enumerable.Repeat(new Stroke(StrokeSide.Squeegee), squeegee)];
}
