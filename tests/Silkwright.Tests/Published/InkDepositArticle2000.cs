using Silkwright.Ink;
using Silkwright.Mesh;

namespace Silkwright.Tests.Published;

/// <summary>Trade magazine article on ink consumption, 2000, table 1 and figure 1: an empirical rule for plain weaves.</summary>
public sealed class InkDepositArticle2000
{
    [Fact]
    public void Coarse_mesh_39_of_55_um_lays_61_76_um() =>
        Assert.Equal(61.76, EmpiricalDeposit.WetUm(WovenMesh.Of(new MeshFabric(39, 55))), 0.01);

    [Fact]
    public void Middle_mesh_lays_0_285_of_its_thickness() =>
        Assert.Equal(14.25, EmpiricalDeposit.WetUm(WovenMesh.Of(new MeshFabric(120, 34) { FabricThicknessUm = 50 })), 1e-9);

    [Fact]
    public void Fine_mesh_lays_0_35_of_its_thickness() =>
        Assert.Equal(17.5, EmpiricalDeposit.WetUm(WovenMesh.Of(new MeshFabric(140, 34) { FabricThicknessUm = 50 })), 1e-9);
}
