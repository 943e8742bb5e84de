using Silkwright.Emulsion;

namespace Silkwright.Choosing;

/// <summary>How much ink a colour wants, as theoretical ink volume of the mesh. [cm³/m²]</summary>
/// <remarks>
/// Common practice, no source: read off which meshes the trade uses for what (docs/engines/choosing.md, table 1), not off a
/// measurement of opacity.
/// </remarks>
public static class InkVolumeWanted
{
    public static double Cm3PerM2(InkKind ink, bool underbase, bool halftone, bool dark) => (ink, underbase, halftone) switch
    {
        (InkKind.Plastisol, true, true) => 25,
        (InkKind.Plastisol, true, false) => 38,
        (InkKind.Plastisol, false, true) => 19,
        (InkKind.Plastisol, false, false) => dark ? 36 : 30,
        (InkKind.WaterBased or InkKind.Discharge, _, true) => 26,
        (InkKind.WaterBased or InkKind.Discharge, _, false) => dark || ink == InkKind.Discharge ? 44 : 36,
        (InkKind.Solvent or InkKind.Uv, _, _) => 17,
        _ => throw new ArgumentOutOfRangeException(nameof(ink)),
    };
}
