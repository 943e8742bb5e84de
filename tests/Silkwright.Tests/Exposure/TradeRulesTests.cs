using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;

namespace Silkwright.Tests.Exposure;

/// <summary>The trade's rules of thumb, held against what the light itself says. Each common practice without a source, unless said otherwise.</summary>
public class TradeRulesTests
{
    /// <summary>Dyed over white mesh of the same geometry: 1.3 to 2.2, on the meshes it is said of; a little more room where threads are stout.</summary>
    [Theory]
    [InlineData(120, 34, 2.2)]
    [InlineData(90, 48, 2.5)]
    [InlineData(77, 55, 2.5)]
    public void Dyed_mesh_asks_for_half_as_much_again_to_twice(double count, double thread, double most)
    {
        var mesh = new MeshFabric(count, thread, Dyed: true);
        Assert.InRange(Least(On(mesh, 6)) / Least(On(mesh with { Dyed = false }, 6)), 1.3, most);
    }

    /// <summary>Thick coats: exposure about as the thickness of the whole stencil for coats that bleach, more for those that do not.</summary>
    [Fact]
    public void Exposure_grows_with_the_thickness_of_the_stencil()
    {
        var mesh = new MeshFabric(120, 34, Dyed: true);
        double Ratio(EmulsionFamily family) => Least(On(mesh, 5 + 58, family)) / Least(On(mesh, 5, family));
        Assert.InRange(Ratio(EmulsionFamily.Diazo), 1.6, 2.6);
        Assert.True(Ratio(EmulsionFamily.Photopolymer) > Ratio(EmulsionFamily.Diazo));
    }

    /// <summary>Dose that still works about a good one: diazo −15/+60 %, dual-cure −15/+40 %, photopolymer −10/+20 %: most over least 1.88, 1.65, 1.33.</summary>
    [Theory]
    [InlineData(EmulsionFamily.Diazo, 1.88)]
    [InlineData(EmulsionFamily.DualCure, 1.65)]
    [InlineData(EmulsionFamily.Photopolymer, 1.33)]
    public void Each_family_keeps_about_its_latitude(EmulsionFamily family, double ratio)
    {
        var window = ExposureModel.Window(ExposureCases.Usual(family) with { FinestLineUm = 80, FinestGapUm = null });
        Assert.InRange(window.Most.Value / window.Least.Value, 1 + ((ratio - 1) * 0.7), 1 + ((ratio - 1) * 1.3));
    }

    /// <summary>60 to 100 µm held on 120/34 or finer.</summary>
    [Fact]
    public void A_stencil_holds_the_lines_that_printers_expect()
    {
        foreach (var family in Enum.GetValues<EmulsionFamily>())
            Assert.InRange(ExposureModel.Window(ExposureCases.Usual(family) with { FinestGapUm = null }).FinestHeldUm.Value, 55, 105);
    }

    /// <summary>Light at all angles undercuts more than a point's; the film's image off the coat more than on it.</summary>
    [Fact]
    public void Tubes_hold_no_finer_lines_than_a_point() =>
        Assert.True(Window(LampKind.TubeBank).Most.Value / Window(LampKind.TubeBank).Least.Value < Window(LampKind.MetalHalide).Most.Value / Window(LampKind.MetalHalide).Least.Value);

    private static ExposureWindow Window(LampKind lamp) => ExposureModel.Window(ExposureCases.Usual(lamp: lamp) with { FinestGapUm = null });

    private static double Least(ExposureCase exposure) => ExposureModel.Window(exposure).Least.Value;

    private static ExposureCase On(MeshFabric mesh, double eomUm, EmulsionFamily family = EmulsionFamily.Diazo) => ExposureCases.Usual(family) with
    {
        Mesh = mesh,
        EomUm = Estimate.Exact(eomUm, Ground.Model),
        StencilUm = StencilThickness.Of(mesh, Estimate.Exact(eomUm, Ground.Model)),
        FinestGapUm = null,
    };
}
