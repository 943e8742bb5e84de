using Silkwright.Emulsion;
using Silkwright.Light;
using Silkwright.Light.Surface;
using Silkwright.Mesh;

namespace Silkwright.Tests.Light.Surface;

/// <summary>Places that the fitted light is tried at.</summary>
internal static class SurfacePlaces
{
    internal static readonly IReadOnlyList<(string Name, Func<SurfaceFigures, double> Of)> Figures =
    [
        ("print", figures => figures.Print),
        ("throughMean", figures => figures.ThroughMean),
        ("throughWorst", figures => figures.ThroughWorst),
        ("undercutAt35Um", figures => figures.UndercutAt35Um),
        ("undercutAt15Um", figures => figures.UndercutAt15Um),
        ("undercutAt05Um", figures => figures.UndercutAt05Um),
        ("lineSpreadUm", figures => figures.LineSpreadUm),
        ("lineSpreadSqueegeeSideUm", figures => figures.LineSpreadSqueegeeSideUm),
        ("sawtoothUm", figures => figures.SawtoothUm),
    ];

    /// <summary>A coat at the usual optics on a mesh, in good contact under a lamp near a point.</summary>
    internal static SurfacePlace Common(MeshFabric fabric, EmulsionFamily family = EmulsionFamily.DualCure) => new SurfacePlace
    {
        ThreadUm = 1,
        Cover = 1,
        ThicknessPerThread = 1,
        PrintSideUm = 8,
        SqueegeeSideUm = UsualOptics.SqueegeeSideUm.Value,
        CoatAbsorptionPerCm = UsualOptics.CoatAbsorption(family).Value,
        CoatScatteringPerCm = UsualOptics.CoatScattering(family).Value,
        CoatAnisotropy = UsualOptics.CoatAnisotropy.Value,
        ThreadAbsorptionPerCm = UsualOptics.ThreadAbsorption(fabric.Dyed).Value,
        ThreadScatteringPerCm = UsualOptics.ThreadScattering.Value,
        GapUm = UsualOptics.GapUm.Value,
        HalfAngleDegrees = 5,
        BackingReflectance = UsualOptics.BlackBlanket.Value,
    }.On(fabric);
}
