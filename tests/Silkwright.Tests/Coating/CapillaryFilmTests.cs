using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating;

public sealed class CapillaryFilmTests
{
    /// <summary>Film adds roughly its thickness less what the openings swallow. Common practice, no source.</summary>
    [Theory]
    [InlineData(30, 120, 34)]
    [InlineData(40, 61, 64)]
    [InlineData(80, 43, 80)]
    public void A_film_adds_less_than_its_thickness_and_more_than_the_voids_leave(double filmUm, double countPerCm, double threadUm)
    {
        var mesh = WovenMesh.Of(new MeshFabric(countPerCm, threadUm));
        var coat = CoatModel.For(15, mesh, Film(filmUm), new Trough("none", 1));

        Assert.Empty(coat.Strokes);
        Assert.InRange(coat.EomUm.Value, Math.Max(0, filmUm - mesh.VoidUm.Value), filmUm);
        Assert.NotEmpty(coat.Notes);
    }

    [Fact]
    public void A_thicker_film_never_thins_the_stencil()
    {
        var mesh = WovenMesh.Of(new MeshFabric(90, 48));
        var eoms = new[] { 10.0, 20, 40, 80, 200 }.Select(um => CoatModel.Predict(mesh, Film(um), new Trough("none", 1), []).EomUm.Value).ToArray();

        Assert.Equal(eoms.Order(), eoms);
        Assert.True(eoms[^1] > eoms[0]);
    }

    private static StencilEmulsion Film(double um) =>
        new() { Id = "invented film", Family = EmulsionFamily.CapillaryFilm, FilmThicknessUm = um };
}
