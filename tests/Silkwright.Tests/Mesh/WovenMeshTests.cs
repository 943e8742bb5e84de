using CsCheck;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Tests.Mesh;

public sealed class WovenMeshTests
{
    private static readonly Gen<MeshFabric> Fabrics = Gen.Select(
        Gen.Double[20, 170], Gen.Double[0.15, 0.7], (count, filled) => new MeshFabric(count, filled * 10_000 / count));

    /// <summary>Worked out from the definitions p = 10 000/n, w = p − d, open area (w/p)².</summary>
    [Theory]
    [InlineData(120, 34, 83.333, 49.333, 35.046)]
    [InlineData(43, 80, 232.558, 152.558, 43.033)]
    [InlineData(77, 48, 129.870, 81.870, 39.741)]
    public void Pitch_opening_and_open_area_follow_the_definitions(
        double countPerCm, double threadUm, double pitchUm, double openingUm, double openAreaPercent)
    {
        var mesh = WovenMesh.Of(new MeshFabric(countPerCm, threadUm));

        Assert.Equal(pitchUm, mesh.PitchUm, 1e-3);
        Assert.Equal(openingUm, mesh.OpeningUm, 1e-3);
        Assert.Equal(openAreaPercent, mesh.OpenAreaPercent, 1e-3);
    }

    /// <summary>380/inch in the three threads a trade article of 2012 discusses; figures from the definitions.</summary>
    [Theory]
    [InlineData(27, 39.84, 35.53)]
    [InlineData(31, 35.84, 28.75)]
    [InlineData(34, 32.84, 24.14)]
    public void Thinner_thread_of_the_same_count_opens_the_mesh(double threadUm, double openingUm, double openAreaPercent)
    {
        var mesh = WovenMesh.Of(new MeshFabric(380 / 2.54, threadUm));

        Assert.Equal(openingUm, mesh.OpeningUm, 0.01);
        Assert.Equal(openAreaPercent, mesh.OpenAreaPercent, 0.01);
    }

    /// <summary>Common practice, no source: two threads and an opening, 117 µm for 120/34; three threads or a pitch.</summary>
    [Fact]
    public void Smallest_dot_and_line_of_120_34()
    {
        var mesh = WovenMesh.Of(new MeshFabric(120, 34));

        Assert.Equal(117, mesh.SmallestDotUm.Value, 0.5);
        Assert.Equal(102, mesh.SmallestLineUm.Value, 1e-9);
        Assert.Equal(Ground.CommonPractice, mesh.SmallestDotUm.Ground);
    }

    /// <summary>Voids as the trade-practice table lists them in whole µm, from the volume of threads 3 % longer than the fabric.</summary>
    [Theory]
    [InlineData(24, 140, 141)]
    [InlineData(43, 80, 80)]
    [InlineData(61, 64, 59)]
    [InlineData(90, 48, 41)]
    [InlineData(120, 34, 30)]
    [InlineData(140, 34, 27)]
    public void Voids_are_what_the_threads_leave(double countPerCm, double threadUm, double voidUm) =>
        Assert.Equal(voidUm, WovenMesh.Of(new MeshFabric(countPerCm, threadUm)).VoidUm.Value, 0.6);

    [Fact]
    public void A_measured_thickness_comes_first_and_says_so()
    {
        var mesh = WovenMesh.Of(new MeshFabric(61, 64) { FabricThicknessUm = 105 });

        Assert.Equal(105, mesh.FabricThicknessUm.Value);
        Assert.Equal(Ground.MeasuredHere, mesh.FabricThicknessUm.Ground);
        Assert.Empty(mesh.Notes);
        Assert.NotEmpty(WovenMesh.Of(new MeshFabric(61, 64)).Notes);
    }

    [Theory]
    [InlineData(0, 64)]
    [InlineData(-61, 64)]
    [InlineData(double.NaN, 64)]
    [InlineData(61, 0)]
    [InlineData(61, -1)]
    [InlineData(61, double.PositiveInfinity)]
    [InlineData(100, 100)]
    [InlineData(120, 90)]
    public void A_fabric_that_cannot_be_woven_is_refused(double countPerCm, double threadUm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WovenMesh.Of(new MeshFabric(countPerCm, threadUm)));

    [Theory]
    [InlineData(0)]
    [InlineData(63.9)]
    [InlineData(double.NaN)]
    public void A_fabric_thinner_than_its_thread_is_refused(double thicknessUm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WovenMesh.Of(new MeshFabric(61, 64) { FabricThicknessUm = thicknessUm }));

    [Fact]
    public void Volumes_fit_inside_the_fabric() => Fabrics.Sample(fabric =>
    {
        var mesh = WovenMesh.Of(fabric);
        return mesh.InkVolumeCm3PerM2.Value < mesh.FabricThicknessUm.Value
            && mesh.VoidUm.High < mesh.FabricThicknessUm.High
            && mesh.VoidUm.Value >= mesh.InkVolumeCm3PerM2.Value - 1e-9
            && mesh.FabricThicknessUm.High < 2 * fabric.ThreadUm;
    });

    [Fact]
    public void Thicker_thread_never_opens_the_mesh() => Gen.Select(Fabrics, Gen.Double[1, 1.3]).Sample((fabric, factor) =>
        WovenMesh.Of(fabric with { ThreadUm = fabric.ThreadUm * factor }).OpenAreaPercent <= WovenMesh.Of(fabric).OpenAreaPercent);
}
