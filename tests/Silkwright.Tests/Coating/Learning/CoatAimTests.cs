using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating.Learning;

public sealed class CoatAimTests
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;
    private static readonly Stroke P = new(StrokeSide.Print), S = new(StrokeSide.Squeegee);

    /// <summary>A thick coat from few strokes by one hand, a thin one by the other: the readings tell who needs how many.</summary>
    [Fact]
    public void A_heavy_hand_lays_fewer_strokes_and_lands_where_the_readings_were()
    {
        var learnt = CoatHierarchy.Of([.. Reads("anna", 16, P, S), .. Reads("ben", 8, P, S), .. Reads("ben", 15, P, P, S)], cancel: Cancel);
        var anna = CoatAim.Of(16, 3, [Coat("anna")], learnt);
        var ben = CoatAim.Of(16, 3, [Coat("ben")], learnt);

        Assert.Equal([P, S], anna.Best.Coat.Strokes);
        Assert.True(ben.Best.Coat.Strokes.Count > 2);
        Assert.True(anna.Best.ChancePercent > 60);
        Assert.Equal("anna", CoatAim.Of(16, 3, [Coat("ben"), Coat("anna")], learnt).Best.Coat.Operator);
    }

    [Fact]
    public void Far_above_what_wet_strokes_lay_face_coats_come_and_readings_raise_the_chance()
    {
        var aim = CoatAim.Of(45, 8, [Coat("anna")], CoatHierarchy.Of([], cancel: Cancel));

        Assert.Contains(aim.Best.Coat.Strokes, stroke => stroke.AfterDrying);
        Assert.True(aim.ChanceAfterReadingsPercent > aim.Best.ChancePercent + 10);
        Assert.True(aim.Shorter!.Effort < aim.Best.Effort && aim.Shorter.ChancePercent < aim.Best.ChancePercent);
        _ = Assert.Throws<ArgumentOutOfRangeException>(() => CoatAim.Of(-1, 8, [Coat("anna")], CoatHierarchy.Of([], cancel: Cancel)));
    }

    [Fact]
    public void Out_of_reach_the_nearest_strokes_are_told_and_a_thicker_wish_never_gets_a_thinner_coat()
    {
        var got = new[] { 60.0, 100, 400, 1000 }.Select(wanted => CoatAim.Of(wanted, 10, [Coat("anna")], CoatHierarchy.Of([], cancel: Cancel)).Best.MeanUm.Value).ToArray();

        Assert.Equal(got.Order(), got);
        Assert.True(got[^1] > 40);
    }

    private static IEnumerable<CoatRead> Reads(string operatorName, double um, params Stroke[] strokes) =>
        Enumerable.Range(0, 6).Select(i => new CoatRead(Coat(operatorName) with { Strokes = strokes }, um + (0.2 * (i - 2.5))));

    private static CoatObservation Coat(string operatorName) => new()
    {
        Shop = "one",
        Operator = operatorName,
        Trough = new Trough("round", 1.5),
        Emulsion = new StencilEmulsion { Id = "invented", Family = EmulsionFamily.DualCure, SolidsPercent = 40 },
        Mesh = WovenMesh.Of(new MeshFabric(61, 64)),
        Strokes = [],
    };
}
