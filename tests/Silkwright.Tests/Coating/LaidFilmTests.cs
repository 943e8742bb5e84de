using CsCheck;
using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating;

/// <summary>A capillary film laid with a stroke of liquid emulsion.</summary>
public sealed class LaidFilmTests
{
    private static readonly Trough Round = new("round", 1.5);

    private static readonly Gen<(double CountPerCm, double ThreadUm)> Mesh = Gen.OneOf((34.0, 100.0), (43, 80), (61, 64), (90, 48), (120, 34));

    /// <summary>Mesh filled with what dries solid swallows less film than mesh filled with water. Common practice, no source.</summary>
    [Fact]
    public void It_stands_higher_than_the_film_laid_with_water_and_lower_than_the_film_is_thick() =>
        Gen.Select(Mesh, Gen.Double[15, 300], Gen.Double[15, 60]).Sample((mesh, filmUm, solids) =>
        {
            var woven = WovenMesh.Of(new MeshFabric(mesh.CountPerCm, mesh.ThreadUm));
            var laid = CoatModel.For(15, woven, Film(filmUm, solids), Round).EomUm.Value;
            var wetted = CoatModel.For(15, woven, Film(filmUm, solids).WithoutLaying(), Round).EomUm.Value;

            Assert.InRange(laid, wetted, filmUm);
        });

    [Fact]
    public void The_more_solids_it_is_laid_with_the_less_the_film_sinks() =>
        Gen.Select(Mesh, Gen.Double[15, 300], Gen.Double[15, 50], Gen.Double[1, 10]).Sample((mesh, filmUm, solids, more) =>
        {
            var woven = WovenMesh.Of(new MeshFabric(mesh.CountPerCm, mesh.ThreadUm));
            Assert.True(
                CoatModel.For(15, woven, Film(filmUm, solids + more), Round).EomUm.Value
                >= CoatModel.For(15, woven, Film(filmUm, solids), Round).EomUm.Value);
        });

    /// <summary>Its thickness is bought, not stroked: its interval is narrower than a coat's of the same height. Common practice, no source.</summary>
    [Fact]
    public void Its_thickness_is_better_known_than_that_of_as_high_a_coat()
    {
        var mesh = WovenMesh.Of(new MeshFabric(61, 64));
        var laid = CoatModel.For(15, mesh, Film(30, 38), Round).EomUm;
        var stroked = CoatModel.For(laid.Value, mesh, Liquid(38), Round).EomUm;

        Assert.True((laid.High - laid.Low) / laid.Value < (stroked.High - stroked.Low) / stroked.Value);
    }

    /// <summary>Half a millilitre and more of emulsion for every hundred square centimetres of a coarse mesh's voids: geometry of the mesh.</summary>
    [Fact]
    public void The_emulsion_used_is_at_least_what_fills_the_voids()
    {
        var mesh = WovenMesh.Of(new MeshFabric(43, 80));
        var coat = CoatModel.For(15, mesh, Film(30, 38), Round);

        Assert.True(coat.GramsPerM2.Value > mesh.VoidUm.Value);
        Assert.Equal([new Stroke(StrokeSide.Squeegee)], coat.Strokes);
        Assert.InRange(coat.SolidsPercent.Value, 38, 100);
    }

    private static StencilEmulsion Film(double um, double solids) => new()
    {
        Id = "invented film",
        Family = EmulsionFamily.CapillaryFilm,
        FilmThicknessUm = um,
        LaidWith = Liquid(solids),
    };

    private static StencilEmulsion Liquid(double solids) => new() { Id = "invented emulsion", Family = EmulsionFamily.DualCure, SolidsPercent = solids };
}
