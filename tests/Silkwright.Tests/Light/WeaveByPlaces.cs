using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>Is there a thread at a place? Written out from the model's words.</summary>
internal static class WeaveByPlaces
{
    /// <param name="stencil">The stencil.</param>
    /// <param name="u">Across the warp. [µm]</param>
    /// <param name="v">Across the weft. [µm]</param>
    /// <param name="z">Below the print side. [µm]</param>
    public static bool IsThread(StencilCase stencil, double u, double v, double z) => Nearest(stencil, u, v, z) is { } nearest && Math.Sqrt((nearest.Across * nearest.Across) + (nearest.Height * nearest.Height)) < stencil.Weave!.ThreadUm / 2;

    /// <summary>The nearer of the warp and the weft thread of this field: away from its middle line, across and down, and whether it is warp.</summary>
    public static (double Across, double Height, bool Warp)? Nearest(StencilCase stencil, double u, double v, double z)
    {
        if (stencil.Weave is not { } weave)
            return null;
        var (i, j) = (Math.Round(u / weave.PitchUm), Math.Round(v / weave.PitchUm));
        var warpIsUp = Math.Abs(i + j) % 2 == 0;
        var middle = stencil.PrintSideUm + (weave.ThicknessUm / 2);
        var off = (weave.ThicknessUm - weave.ThreadUm) / 2;
        var warp = (Across: u - (i * weave.PitchUm), Height: z - (middle + (warpIsUp ? -off : off)), Warp: true);
        var weft = (Across: v - (j * weave.PitchUm), Height: z - (middle + (warpIsUp ? off : -off)), Warp: false);
        return Math.Sqrt((warp.Across * warp.Across) + (warp.Height * warp.Height)) < Math.Sqrt((weft.Across * weft.Across) + (weft.Height * weft.Height)) ? warp : weft;
    }
}
