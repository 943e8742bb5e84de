using MathNet.Numerics;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;

namespace Silkwright.Exposure;

/// <summary>A coat that lets light deeper as its sensitiser bleaches.</summary>
/// <param name="BleachablePerUm">Absorption that goes with the sensitiser: Dill's A. [1/µm], 0 or more.</param>
/// <param name="LastingPerUm">Absorption that stays: Dill's B. [1/µm], 0 or more; the two are not both 0.</param>
/// <param name="BleachCm2PerMj">How fast light uses the sensitiser up: Dill's C. [cm²/mJ], 0 or more.</param>
/// <remarks>
/// Dill, Hornberger, Hauge, Shaw, IEEE Trans. Electron Devices ED-22 (1975) 445: dI/dz = −I(A·M + B), dM/dt = −I·M·C. With h the dose that has
/// come to a depth, M = exp(−C·h), and both together are dh/dz = −(B·h + A·(1 − exp(−C·h))/C): docs/engines/exposure.md, equation 16. One way down,
/// no scattering and no light thrown back from below; dose alone counts, however slowly it comes (<see cref="Reciprocity"/>).
/// </remarks>
public sealed record BleachingCoat(double BleachablePerUm, double LastingPerUm, double BleachCm2PerMj)
{
    /// <summary>The integrand turns over about a width of 1 in ln h: 20 nodes over 2 leave nothing of 1e-9. [1]</summary>
    private const double PanelWidth = 2;
    private const int NodesPerPanel = 20;
    private const double RootAccuracy = 1e-13;

    /// <summary>Keeps the root inside where the two ends are almost one. [1]</summary>
    private const double BracketSlack = 1e-9;

    /// <summary>A coat as it is measured: the light through it before, after long bleaching, and how fast it starts to clear.</summary>
    /// <param name="thicknessUm">[µm], above 0.</param>
    /// <param name="throughAtFirst">T(0). [1], above 0.</param>
    /// <param name="throughAtLast">T(∞). [1], above T(0), at most 1.</param>
    /// <param name="slopeCm2PerMj">dT/dE at no dose. [cm²/mJ], above 0.</param>
    /// <returns>B = −ln T(∞)/d, A = ln(T(∞)/T(0))/d, C = (A + B)/(A·T(0)·(1 − T(0)))·dT/dE: Dill 1975.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A coat that does not clear.</exception>
    public static BleachingCoat OfMeasured(double thicknessUm, double throughAtFirst, double throughAtLast, double slopeCm2PerMj)
    {
        if (!(thicknessUm > 0) || !(throughAtFirst > 0) || !(throughAtLast > throughAtFirst) || throughAtLast > 1 || !(slopeCm2PerMj > 0))
            throw new ArgumentOutOfRangeException(nameof(throughAtLast), throughAtLast, "A bleaching coat has a thickness and lets more light through at last than at first.");
        var lasting = -Math.Log(throughAtLast) / thicknessUm;
        var bleachable = Math.Log(throughAtLast / throughAtFirst) / thicknessUm;
        return new BleachingCoat(
            bleachable, lasting, (bleachable + lasting) / (bleachable * throughAtFirst * (1 - throughAtFirst)) * slopeCm2PerMj);
    }

    /// <summary>Sensitiser left: Dill's M. [1]</summary>
    /// <param name="depthUm">Under the face the light comes in by. [µm], 0 or more.</param>
    /// <param name="doseMjPerCm2">At that face. [mJ/cm²], 0 or more.</param>
    public double SensitiserLeft(double depthUm, double doseMjPerCm2) => Math.Exp(-BleachCm2PerMj * DoseAt(depthUm, doseMjPerCm2));

    /// <summary>Light at a depth over light at the face, once a dose has come in. [1]</summary>
    /// <inheritdoc cref="SensitiserLeft"/>
    public double Transmission(double depthUm, double doseMjPerCm2) => doseMjPerCm2 > 0
        ? DoseAt(depthUm, doseMjPerCm2) / doseMjPerCm2 * PerLog(DoseAt(depthUm, doseMjPerCm2)) / PerLog(doseMjPerCm2)
        : Math.Exp(-(BleachablePerUm + LastingPerUm) * depthUm);

    /// <summary>Dose that comes to a depth. [mJ/cm²]</summary>
    /// <inheritdoc cref="SensitiserLeft"/>
    public double DoseAt(double depthUm, double doseMjPerCm2) => doseMjPerCm2 > 0 ? Across(depthUm, doseMjPerCm2, -1) : 0;

    /// <summary>Dose that must come in at the face for one to come to a depth. [mJ/cm²]</summary>
    /// <param name="depthUm">[µm], 0 or more.</param>
    /// <param name="doseThereMjPerCm2">[mJ/cm²], above 0.</param>
    public double DoseFor(double depthUm, double doseThereMjPerCm2) => Across(depthUm, doseThereMjPerCm2, +1);

    /// <summary>Depth over which a dose falls to a smaller one. [µm]</summary>
    /// <param name="fromMjPerCm2">[mJ/cm²], above 0.</param>
    /// <param name="toMjPerCm2">[mJ/cm²], above 0, at most the first.</param>
    public double DepthBetween(double fromMjPerCm2, double toMjPerCm2)
    {
        var width = Math.Log(fromMjPerCm2 / toMjPerCm2);
        if (IsPlain)
            return width / (BleachablePerUm + LastingPerUm);
        if (LastingPerUm == 0)
            return (LogGrown(BleachCm2PerMj * fromMjPerCm2) - LogGrown(BleachCm2PerMj * toMjPerCm2)) / BleachablePerUm;
        var panels = Math.Max(1, (int)Math.Ceiling(width / PanelWidth));
        var (start, panel) = (Math.Log(toMjPerCm2), width / panels);
        return Enumerable.Range(0, panels).Sum(i => GaussLegendreRule.Integrate(
            logDose => 1 / PerLog(Math.Exp(logDose)), start + (i * panel), start + ((i + 1) * panel), NodesPerPanel));
    }

    /// <summary>Nothing bleaches: light falls by e over one length, for every dose.</summary>
    private bool IsPlain => BleachablePerUm == 0 || BleachCm2PerMj == 0;

    /// <summary>−d(ln h)/dz at a dose. [1/µm]</summary>
    private double PerLog(double dose)
    {
        var bleached = BleachCm2PerMj * dose;
        return LastingPerUm + (bleached > 0 ? BleachablePerUm * -SpecialFunctions.Expm1(-bleached) / bleached : BleachablePerUm);
    }

    private double Across(double depthUm, double dose, int sign)
    {
        if (depthUm == 0)
            return dose;
        if (IsPlain)
            return dose * Math.Exp(sign * (BleachablePerUm + LastingPerUm) * depthUm);
        if (LastingPerUm == 0)
            return LogShrunk(LogGrown(BleachCm2PerMj * dose) + (sign * BleachablePerUm * depthUm)) / BleachCm2PerMj;
        var (near, far) = (LastingPerUm * depthUm, (BleachablePerUm + LastingPerUm) * depthUm);
        var way = Brent.FindRoot(
            log => (sign > 0 ? DepthBetween(dose * Math.Exp(log), dose) : DepthBetween(dose, dose * Math.Exp(-log))) - depthUm,
            near * (1 - BracketSlack), far * (1 + BracketSlack), RootAccuracy);
        return dose * Math.Exp(sign * way);
    }

    /// <summary>ln(eˣ − 1), also where eˣ has no number.</summary>
    private static double LogGrown(double x) => x + Math.Log(-SpecialFunctions.Expm1(-x));

    /// <summary>ln(eˣ + 1): the way back.</summary>
    private static double LogShrunk(double x) => x > 0 ? x + Math.Log(1 + Math.Exp(-x)) : Math.Log(1 + Math.Exp(x));
}
