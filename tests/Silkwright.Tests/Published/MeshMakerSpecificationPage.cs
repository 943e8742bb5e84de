using Silkwright.Mesh;

namespace Silkwright.Tests.Published;

/// <summary>
/// A public specification page of a mesh maker (name withheld), three fabrics of one count, with measured thickness. The page
/// calls the count 90/cm; its own openings follow from 225/inch, which is used here.
/// </summary>
public sealed class MeshMakerSpecificationPage
{
    private const double CountPerCm = 225 / 2.54;

    /// <summary>The page prints whole numbers: tolerance half of one.</summary>
    [Theory]
    [InlineData(40, 59, 73, 42, 25)]
    [InlineData(48, 72, 65, 33, 24)]
    [InlineData(54, 84, 59, 27, 23)]
    public void Printed_figures_follow_from_count_thread_and_thickness(
        double threadUm, double thicknessUm, double openingUm, double openAreaPercent, double inkVolume)
    {
        var mesh = WovenMesh.Of(new MeshFabric(CountPerCm, threadUm) { FabricThicknessUm = thicknessUm });

        Assert.Equal(openingUm, mesh.OpeningUm, 0.5);
        Assert.Equal(openAreaPercent, mesh.OpenAreaPercent, 0.5);
        Assert.Equal(inkVolume, mesh.InkVolumeCm3PerM2.Value, 0.5);
    }

    /// <summary>The same three before rounding, worked out from the definitions.</summary>
    [Theory]
    [InlineData(40, 59, 72.89, 41.689, 24.596)]
    [InlineData(48, 72, 64.89, 33.040, 23.789)]
    [InlineData(54, 84, 58.89, 27.212, 22.858)]
    public void Unrounded_figures_agree_to_a_hundredth(
        double threadUm, double thicknessUm, double openingUm, double openAreaPercent, double inkVolume)
    {
        var mesh = WovenMesh.Of(new MeshFabric(CountPerCm, threadUm) { FabricThicknessUm = thicknessUm });

        Assert.Equal(openingUm, mesh.OpeningUm, 0.01);
        Assert.Equal(openAreaPercent, mesh.OpenAreaPercent, 0.01);
        Assert.Equal(inkVolume, mesh.InkVolumeCm3PerM2.Value, 0.01);
    }

    [Theory]
    [InlineData(40, 59)]
    [InlineData(48, 72)]
    [InlineData(54, 84)]
    public void Estimated_thickness_holds_the_printed_one_and_stays_below_two_threads(double threadUm, double thicknessUm)
    {
        var estimated = WovenMesh.Of(new MeshFabric(CountPerCm, threadUm)).FabricThicknessUm;

        Assert.InRange(thicknessUm, estimated.Low, estimated.High);
        Assert.True(estimated.High < 2 * threadUm);
    }
}
