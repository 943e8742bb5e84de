using Silkwright.Mesh;

namespace Silkwright.Tests.Published;

/// <summary>A public wire-cloth reference page, formula for rectangular openings, examples 1 and 2; inches.</summary>
public sealed class WireClothReferencePage
{
    private const double UmPerInch = 25_400;

    [Theory]
    [InlineData(24, 0.015, 70, 0.010, 0.192, 1e-12)]
    [InlineData(72, 0.008, 36, 0.013, 0.2256, 1e-4)]
    public void Open_area_of_unequal_warp_and_shute(
        double warpPerInch, double warpInch, double shutePerInch, double shuteInch, double expected, double tolerance) =>
        Assert.Equal(
            expected,
            WovenMesh.OpenArea(warpPerInch / 2.54, warpInch * UmPerInch, shutePerInch / 2.54, shuteInch * UmPerInch),
            tolerance);
}
