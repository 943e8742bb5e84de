using Silkwright.Mesh;

namespace Silkwright.Light.Surface;

/// <summary>A coated mesh in the exposure unit as the surface knows it: what a shop has, in numbers without kinds.</summary>
/// <remarks>Not in it, and taken at their usual values: indices of coat and thread, how far forward threads scatter, slanted light, single diodes.</remarks>
public readonly record struct SurfacePlace
{
    /// <summary>Thread diameter. [µm]</summary>
    public required double ThreadUm { get; init; }

    /// <summary>Count times thread: the share of the pitch that a thread takes. [1]</summary>
    public required double Cover { get; init; }

    /// <summary>Fabric over thread. [1]</summary>
    public required double ThicknessPerThread { get; init; }

    /// <summary>Coat over the mesh on the print side. [µm]</summary>
    public required double PrintSideUm { get; init; }

    /// <summary>Coat over the mesh on the squeegee side. [µm]</summary>
    public required double SqueegeeSideUm { get; init; }

    /// <summary>[1/cm]</summary>
    public required double CoatAbsorptionPerCm { get; init; }

    /// <summary>[1/cm]</summary>
    public required double CoatScatteringPerCm { get; init; }

    /// <summary>Mean cosine of scattering in the coat. [1]</summary>
    public required double CoatAnisotropy { get; init; }

    /// <summary>[1/cm]</summary>
    public required double ThreadAbsorptionPerCm { get; init; }

    /// <summary>[1/cm]</summary>
    public required double ThreadScatteringPerCm { get; init; }

    /// <summary>Air between film and coat. [µm]</summary>
    public double GapUm { get; init; }

    /// <summary>Film between image and coat, where it lies the wrong way round. [µm]</summary>
    public double CarrierUm { get; init; }

    /// <summary>Half angle of the light in air. [degrees]</summary>
    public required double HalfAngleDegrees { get; init; }

    /// <summary>Share that the backing throws back. [1]</summary>
    public required double BackingReflectance { get; init; }

    /// <summary>Coat and mesh together. [µm]</summary>
    public double StencilUm => PrintSideUm + (ThicknessPerThread * ThreadUm) + SqueegeeSideUm;

    /// <summary>Absorption lengths from face to face. [1]</summary>
    public double AbsorptionLengths => CoatAbsorptionPerCm * StencilUm * 1e-4;

    /// <summary>A fabric's share of the place.</summary>
    public SurfacePlace On(MeshFabric fabric)
    {
        var thickness = WovenMesh.Of(fabric).FabricThicknessUm.Value;
        return this with { ThreadUm = fabric.ThreadUm, Cover = fabric.CountPerCm * fabric.ThreadUm / 1e4, ThicknessPerThread = thickness / fabric.ThreadUm };
    }

    /// <summary>The same, to be followed photon by photon.</summary>
    /// <param name="photons">How many.</param>
    /// <param name="seed">Where their numbers begin.</param>
    public StencilCase Case(long photons, ulong seed) => new()
    {
        Lamp = new LampLight { HalfAngleDegrees = HalfAngleDegrees },
        GapUm = GapUm,
        CarrierUm = CarrierUm,
        Coat = new TurbidMedium(UsualOptics.CoatIndex.Value, CoatAbsorptionPerCm, CoatScatteringPerCm, CoatAnisotropy),
        PrintSideUm = PrintSideUm,
        SqueegeeSideUm = SqueegeeSideUm,
        Weave = new StencilWeave
        {
            PitchUm = ThreadUm / Cover,
            ThreadUm = ThreadUm,
            ThicknessUm = ThicknessPerThread * ThreadUm,
            Thread = new TurbidMedium(UsualOptics.ThreadIndex.Value, ThreadAbsorptionPerCm, ThreadScatteringPerCm, UsualOptics.ThreadAnisotropy.Value),
        },
        BackingReflectance = BackingReflectance,
        Photons = photons,
        Seed = seed,
    };
}
