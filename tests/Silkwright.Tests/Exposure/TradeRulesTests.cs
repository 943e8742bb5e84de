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

    /// <summary>
    /// Thick coats: exposure about as the thickness of the whole stencil for coats that bleach, which no coat that keeps its absorption can do at twice and at thrice the thickness, and more for
    /// those that do not bleach.
    /// </summary>
    [Fact]
    public void Exposure_grows_as_the_thickness_of_a_stencil_that_bleaches()
    {
        double Ratio(EmulsionFamily family, double times) => Times(new StencilEmulsion { Id = "any", Family = family }, times);
        Assert.InRange(Ratio(EmulsionFamily.Diazo, 2), 1.7, 2.3);
        Assert.InRange(Ratio(EmulsionFamily.Diazo, 3), 2.5, 3.5);
        Assert.True(Ratio(EmulsionFamily.Photopolymer, 3) > Ratio(EmulsionFamily.DualCure, 3));
        Assert.True(Ratio(EmulsionFamily.DualCure, 3) > Ratio(EmulsionFamily.Diazo, 3));
    }

    /// <summary>The more of one coat's absorption bleaches, the less a thicker one asks; told and not by family.</summary>
    [Fact]
    public void Coats_that_bleach_more_ask_less_for_thickness()
    {
        double[] ratios = [.. new[] { 0.0, 30, 60, 90 }.Select(percent => Times(
            new StencilEmulsion { Id = "any", Family = EmulsionFamily.DualCure, PenetrationDepthUm = 50, CriticalDoseMjPerCm2 = 20, BleachingPercent = percent, BleachDoseMjPerCm2 = 20 }, 2))];
        Assert.Equal(ratios.OrderDescending(), ratios);
        Assert.True(ratios[0] > 1.3 * ratios[^1]);
    }

    private static double Times(StencilEmulsion emulsion, double times)
    {
        var usual = On(new MeshFabric(120, 34, Dyed: true), 5, emulsion.Family) with { Emulsion = emulsion };
        return Least(On(usual.Mesh, 5 + ((times - 1) * usual.StencilUm.Value), emulsion.Family) with { Emulsion = emulsion }) / Least(usual);
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
