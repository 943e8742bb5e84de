using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>Cured depth by dose for a coat that is known within intervals.</summary>
public sealed record CureCurve
{
    public required IReadOnlyList<CurePoint> Points { get; init; }

    /// <summary>Depth asked about. [µm]</summary>
    public double? DepthUm { get; init; }

    /// <summary>Dose that cures so deep. [mJ/cm²]</summary>
    public Estimate? DoseForDepth { get; init; }

    /// <summary>Twice the thickness asks 2 to this power of the dose. [1]; from the depth asked about, else from the penetration depth.</summary>
    public required double ThicknessPower { get; init; }

    /// <summary>Some of the absorption bleaches.</summary>
    public required bool Bleaches { get; init; }

    /// <summary>Doses told reach from the critical one to this many times it. [1]</summary>
    private const double Reach = 64;
    private const int PointsTold = 25;

    /// <param name="penetrationUm">Depth over which the light falls by e before anything has bleached. [µm]</param>
    /// <param name="criticalDose">[mJ/cm²]</param>
    /// <param name="bleachingShare">Share of the absorption that bleaches. [1]</param>
    /// <param name="bleachingDose">Dose that leaves 1/e of the sensitiser. [mJ/cm²]</param>
    /// <param name="depthUm">A depth to ask the dose of. [µm]; none: not asked.</param>
    public static CureCurve Of(Estimate penetrationUm, Estimate criticalDose, Estimate bleachingShare, Estimate bleachingDose, double? depthUm)
    {
        Uncertain[] coat =
        [
            new("penetration depth", penetrationUm), new("critical dose", criticalDose),
            new("share that bleaches", bleachingShare), new("dose that bleaches", bleachingDose),
        ];
        var doses = Enumerable.Range(0, PointsTold).Select(i => criticalDose.Value * Math.Pow(Reach, (double)i / (PointsTold - 1)));
        return new CureCurve
        {
            Points = [.. doses.Select(dose => new CurePoint(dose, Propagation.Through(x => Law(x).DepthUm(dose), coat, floor: 0).Estimate))],
            DepthUm = depthUm,
            DoseForDepth = depthUm is { } depth ? Propagation.Through(x => Math.Log(Law(x).DoseMjPerCm2(depth)), coat).Estimate.Map(Math.Exp) : null,
            ThicknessPower = Law([.. coat.Select(input => input.Estimate.Value)]).ThicknessPower(depthUm ?? penetrationUm.Value),
            Bleaches = bleachingShare.High > 0,
        };
    }

    private static CureLaw Law(IReadOnlyList<double> x) => CureLaw.Of(x[0], x[2], x[3], x[1]);
}
