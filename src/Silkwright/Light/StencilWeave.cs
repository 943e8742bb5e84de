using Silkwright.Mesh;

namespace Silkwright.Light;

/// <summary>A plain weave of round threads, warp above weft at every second crossing and below it at the others.</summary>
/// <remarks>
/// Each thread keeps one of two heights from half way between its crossings to half way, instead of bending: its cross-section and its place at the crossings
/// are right, its slope is not there. docs/engines/light.md, model.
/// </remarks>
public sealed record StencilWeave
{
    /// <summary>Thread to thread. [µm], above the thread.</summary>
    public required double PitchUm { get; init; }

    /// <summary>Thread diameter. [µm], above 0.</summary>
    public required double ThreadUm { get; init; }

    /// <summary>Fabric thickness. [µm], from one to two threads: threads press into each other where they cross.</summary>
    public required double ThicknessUm { get; init; }

    public required TurbidMedium Thread { get; init; }

    /// <summary>Angle of the weft to the line across the edge. [degrees]</summary>
    public double AngleDegrees { get; init; }

    /// <summary>A fabric by its count and thread, with its measured thickness where there is one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fabric cannot be.</exception>
    public static StencilWeave Of(MeshFabric fabric, TurbidMedium thread, double angleDegrees = 0)
    {
        var woven = WovenMesh.Of(fabric);
        return new()
        {
            PitchUm = woven.PitchUm,
            ThreadUm = fabric.ThreadUm,
            ThicknessUm = Math.Clamp(woven.FabricThicknessUm.Value, fabric.ThreadUm, 2 * fabric.ThreadUm),
            Thread = thread,
            AngleDegrees = angleDegrees,
        };
    }
}
