namespace Silkwright.Exposure;

/// <summary>How deep a coat cures, bleaching or not: it is hard as far down as the critical dose comes.</summary>
/// <param name="Coat">How it takes light.</param>
/// <param name="CriticalDoseMjPerCm2">Dose that just cures it, at any depth. [mJ/cm²], above 0.</param>
/// <remarks>
/// One description of both families: docs/engines/exposure.md, equation 17. Without bleaching it is the <see cref="WorkingCurve"/>, Dp = 1/(A + B); with all of
/// the absorption bleaching, the dose grows about as the thickness. Scattering is left aside.
/// </remarks>
public sealed record CureLaw(BleachingCoat Coat, double CriticalDoseMjPerCm2)
{
    /// <param name="penetrationDepthUm">Depth over which the light falls by e before anything has bleached. [µm], above 0.</param>
    /// <param name="bleachingShare">Share of that absorption which bleaches. [1], 0 to 1.</param>
    /// <param name="bleachingDoseMjPerCm2">Dose that leaves 1/e of the sensitiser. [mJ/cm²], above 0.</param>
    /// <param name="criticalDoseMjPerCm2">[mJ/cm²], above 0.</param>
    public static CureLaw Of(double penetrationDepthUm, double bleachingShare, double bleachingDoseMjPerCm2, double criticalDoseMjPerCm2) => new(
        new BleachingCoat(bleachingShare / penetrationDepthUm, (1 - bleachingShare) / penetrationDepthUm, bleachingShare > 0 ? 1 / bleachingDoseMjPerCm2 : 0),
        criticalDoseMjPerCm2);

    /// <summary>Cured depth. [µm]; 0 where the dose is below the critical one.</summary>
    /// <param name="doseMjPerCm2">At the face. [mJ/cm²], 0 or more.</param>
    public double DepthUm(double doseMjPerCm2) => doseMjPerCm2 <= CriticalDoseMjPerCm2 ? 0 : Coat.DepthBetween(doseMjPerCm2, CriticalDoseMjPerCm2);

    /// <summary>Dose that cures so deep. [mJ/cm²]</summary>
    /// <param name="depthUm">[µm], 0 or more.</param>
    public double DoseMjPerCm2(double depthUm) => Coat.DoseFor(depthUm, CriticalDoseMjPerCm2);

    /// <summary>Power with which the dose grows with the thickness: 2 times the thickness asks 2 to this power of the dose. [1]</summary>
    /// <param name="depthUm">[µm], above 0.</param>
    public double ThicknessPower(double depthUm) => Math.Log2(DoseMjPerCm2(2 * depthUm) / DoseMjPerCm2(depthUm));
}
