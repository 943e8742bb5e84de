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

    /// <summary>A coat known by what comes through at one depth: there the dose has grown as if light fell by e over one length all the way.</summary>
    /// <param name="atUm">That depth. [µm], above 0.</param>
    /// <param name="lengthUm">Length over which the needed dose grew by e on the way there. [µm], above 0.</param>
    /// <param name="bleachingShare">Share of the absorption that bleaches. [1], 0 to 1.</param>
    /// <param name="curingOverBleaching">Critical dose over the dose that leaves 1/e of the sensitiser. [1], above 0.</param>
    /// <remarks>Depths go with the length before bleaching, so that one integral tells it. The critical dose is 1: such a coat tells doses beside it.</remarks>
    public static CureLaw OfStencil(double atUm, double lengthUm, double bleachingShare, double curingOverBleaching) =>
        Of(atUm / Of(1, bleachingShare, 1 / curingOverBleaching, 1).DepthUm(Math.Exp(atUm / lengthUm)), bleachingShare, 1 / curingOverBleaching, 1);

    /// <summary>Length over which the needed dose grows by e on the way to a depth: what absorption without bleaching would ask as much. [µm]</summary>
    /// <param name="depthUm">[µm], above 0.</param>
    public double LengthUm(double depthUm) => depthUm / LogDose(depthUm);

    /// <summary>Dose for a depth over the critical one. [natural log]</summary>
    /// <param name="depthUm">[µm], 0 or more.</param>
    public double LogDose(double depthUm)
    {
        // Farther up all has bleached, and no number is large enough for the dose.
        var told = Math.Min(depthUm, MostLengths / (Coat.BleachablePerUm + Coat.LastingPerUm));
        return Math.Log(DoseMjPerCm2(told) / CriticalDoseMjPerCm2) + ((depthUm - told) * (Coat.BleachCm2PerMj > 0 ? Coat.LastingPerUm : Coat.BleachablePerUm + Coat.LastingPerUm));
    }

    /// <summary>Absorption lengths over which the dose itself is still told. [1]</summary>
    private const double MostLengths = 300;

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
