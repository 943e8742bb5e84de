using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>A stencil as the sixteen photons side by side read it: flat layers from the film down, then what is met in them. Lengths in µm from the coat's print side.</summary>
internal sealed class StencilTables
{
    private const double UmPerCm = 1e4;

    public StencilTables(StencilCase stencil)
    {
        var clear = new TurbidMedium(1, 0, 0, 0);
        var film = clear with { RefractiveIndex = stencil.FilmIndex };
        var depth = stencil.StencilUm;
        List<(TurbidMedium Medium, double Top, double Bottom)> layers = [(film, 0, -stencil.CarrierUm - stencil.GapUm)];
        if (stencil.CarrierUm > 0)
            layers.Add((film, -stencil.CarrierUm - stencil.GapUm, -stencil.GapUm));
        if (stencil.GapUm > 0)
            layers.Add((clear, -stencil.GapUm, 0));
        Coat = layers.Count;
        layers.Add((stencil.Coat, 0, depth));
        layers.Add((clear with { RefractiveIndex = stencil.BackingIndex }, depth, depth));
        Backing = layers.Count;
        layers.Add((clear with { RefractiveIndex = stencil.BackingIndex }, depth, depth));
        Thread = layers.Count;
        layers.Add((stencil.Weave?.Thread ?? stencil.Coat, 0, depth));

        Top = Tables.Of(layers, layer => layer.Top);
        Bottom = Tables.Of(layers, layer => layer.Bottom);
        Index = Tables.Of(layers, layer => layer.Medium.RefractiveIndex);
        // Light goes on without an end where nothing is met; divided by, so never 0.
        Extinction = Tables.Of(layers, layer => Math.Max(1e-12, layer.Medium.ExtinctionPerCm / UmPerCm));
        Albedo = Tables.Of(layers, layer => layer.Medium.ExtinctionPerCm == 0 ? 1 : layer.Medium.ScatteringPerCm / layer.Medium.ExtinctionPerCm);
        Scattering = new HenyeyGreenstein([.. layers.Select(layer => layer.Medium.Anisotropy)]);
        BackingReflectance = (float)stencil.BackingReflectance;

        ImageZ = (float)(-stencil.CarrierUm - stencil.GapUm);
        FilmIndex = (float)stencil.FilmIndex;
        SineOfHalfAngle = (float)Math.Sin(Radians(stencil.Lamp.HalfAngleDegrees));
        SineOfSlant = (float)Math.Sin(Radians(stencil.Lamp.SlantDegrees));
        Lattice = (float)stencil.Lamp.LatticeTangent;

        HasThreads = stencil.Weave is not null;
        var weave = stencil.Weave;
        Pitch = (float)(weave?.PitchUm ?? 1);
        Radius = (float)((weave?.ThreadUm ?? 0) / 2);
        Middle = (float)(stencil.PrintSideUm + ((weave?.ThicknessUm ?? 0) / 2));
        Height = (float)(((weave?.ThicknessUm ?? 0) - (weave?.ThreadUm ?? 0)) / 2);
        var angle = Radians(weave?.AngleDegrees ?? 0);
        (CosineOfAngle, SineOfAngle) = ((float)Math.Cos(angle), (float)Math.Sin(angle));
        DepthsPerUm = (float)(StencilTally.Depths / depth);
    }

    /// <summary>Place of coat, backing and thread in the tables; the film above is at 0.</summary>
    public int Coat { get; }

    public int Backing { get; }

    public int Thread { get; }

    public Vector512<float> Top { get; }

    public Vector512<float> Bottom { get; }

    public Vector512<float> Index { get; }

    /// <summary>[1/µm]</summary>
    public Vector512<float> Extinction { get; }

    /// <summary>Share of an interaction that is scattered. [1]</summary>
    public Vector512<float> Albedo { get; }

    public HenyeyGreenstein Scattering { get; }

    public float BackingReflectance { get; }

    public float ImageZ { get; }

    public float FilmIndex { get; }

    public float SineOfHalfAngle { get; }

    public float SineOfSlant { get; }

    /// <summary>Tangent from source to source; 0: none. [1]</summary>
    public float Lattice { get; }

    public bool HasThreads { get; }

    public float Pitch { get; }

    public float Radius { get; }

    /// <summary>Depth of the fabric's middle. [µm]</summary>
    public float Middle { get; }

    /// <summary>A thread's centre above or below the middle. [µm]</summary>
    public float Height { get; }

    public float CosineOfAngle { get; }

    public float SineOfAngle { get; }

    public float DepthsPerUm { get; }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
