namespace Silkwright.Light.Surface;

/// <summary>What the surface tells of a place.</summary>
/// <param name="Print">Dose on the print side under clear film, over the light that falls on it. [1]</param>
/// <param name="ThroughMean">Dose on the squeegee side, mean over the weave. [1]</param>
/// <param name="ThroughWorst">The same in the place that gets least, behind threads. [1]</param>
/// <param name="UndercutAt35Um">How far under the black the dose reaches 0.35 of the clear film's on the print side, at the depth where it goes farthest. [µm]</param>
/// <param name="UndercutAt15Um">The same for 0.15. [µm]</param>
/// <param name="UndercutAt05Um">The same for 0.05. [µm]</param>
/// <param name="LineSpreadUm">Length over which the dose falls by e beyond the edge, on the print side. [µm]</param>
/// <param name="LineSpreadSqueegeeSideUm">The same on the squeegee side. [µm]</param>
/// <param name="SawtoothUm">Of the undercut at 0.15 on the print side along the edge. [µm]</param>
public readonly record struct SurfaceFigures(
    double Print,
    double ThroughMean,
    double ThroughWorst,
    double UndercutAt35Um,
    double UndercutAt15Um,
    double UndercutAt05Um,
    double LineSpreadUm,
    double LineSpreadSqueegeeSideUm,
    double SawtoothUm)
{
    /// <summary>Lengths are told apart down to about this. [µm]</summary>
    internal const double FinestUm = 0.5;

    /// <summary>Names of the figures in the file, in their order.</summary>
    internal static readonly IReadOnlyList<string> Names =
        ["print", "throughMean", "throughWorst", "undercutAt35Um", "undercutAt15Um", "undercutAt05Um", "lineSpreadUm", "lineSpreadSqueegeeSideUm", "sawtoothUm"];

    /// <summary>Places in that order.</summary>
    internal const int PrintAt = 0, ThroughWorstAt = 2, UndercutAt35At = 3, UndercutAt15At = 4, UndercutAt05At = 5;

    /// <summary>Photons of a place, followed.</summary>
    public static SurfaceFigures Follow(SurfacePlace place, long photons, ulong seed, int? threads = null, CancellationToken cancel = default) =>
        Of(StencilTransport.Of(place.Case(photons, seed), threads, null, cancel));

    /// <summary>Read out of a result.</summary>
    public static SurfaceFigures Of(StencilResult result) => new(
        result.ClearDose[0].Value,
        result.Through.Average.Value,
        result.Through.Worst.Value,
        result.UndercutWhere(0.35).FarthestUm.Value,
        result.UndercutWhere(0.15).FarthestUm.Value,
        result.UndercutWhere(0.05).FarthestUm.Value,
        result.LineSpreadUm.Value,
        result.LineSpreadSqueegeeSideUm.Value,
        result.UndercutWhere(0.15).SawtoothUm.Value);

    /// <summary>As they are fitted, with what chance adds to each.</summary>
    internal static (double[] Logs, double[] Errors) Sampled(StencilResult result, double straight)
    {
        double[] values = [result.ClearDose[0].Value, result.Through.Average.Value, result.Through.Worst.Value];
        double[] errors = [result.ClearDose[0].StandardError, result.Through.Average.StandardError, result.Through.Worst.StandardError];
        Sampled[] lengths =
        [
            result.UndercutWhere(0.35).FarthestUm, result.UndercutWhere(0.15).FarthestUm, result.UndercutWhere(0.05).FarthestUm, result.LineSpreadUm, result.LineSpreadSqueegeeSideUm,
            result.UndercutWhere(0.15).SawtoothUm,
        ];
        return (
            Of(result).Logs(straight),
            [.. values.Zip(errors, (value, error) => error / Math.Max(value, double.Epsilon)), .. lengths.Select(length => length.StandardError / (Math.Max(0, length.Value) + FinestUm))]);
    }

    /// <summary>As they are fitted: logarithms, of lengths with the finest added.</summary>
    /// <param name="straight">What straight light alone would leave on the squeegee side. [natural log]</param>
    internal double[] Logs(double straight) =>
    [
        Math.Log(Print), Math.Log(ThroughMean) - straight, Math.Log(ThroughWorst) - straight, Length(UndercutAt35Um), Length(UndercutAt15Um), Length(UndercutAt05Um), Length(LineSpreadUm),
        Length(LineSpreadSqueegeeSideUm), Length(SawtoothUm),
    ];

    internal static SurfaceFigures OfLogs(ReadOnlySpan<double> logs, double straight) => new(
        Math.Exp(logs[0]), Math.Exp(logs[1] + straight), Math.Exp(logs[2] + straight), FromLength(logs[3]), FromLength(logs[4]), FromLength(logs[5]), FromLength(logs[6]), FromLength(logs[7]), FromLength(logs[8]));

    private static double Length(double um) => Math.Log(Math.Max(0, um) + FinestUm);

    internal static double FromLength(double log) => Math.Max(0, Math.Exp(log) - FinestUm);
}
