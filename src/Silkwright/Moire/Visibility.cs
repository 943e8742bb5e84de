namespace Silkwright.Moire;

/// <summary>How plainly a beat is seen. A model whose scale is our own judgement: docs/engines/moire.md, equations 7 to 9.</summary>
public static class Visibility
{
    /// <summary>From here on a beat is seen by who looks for it.</summary>
    public const double JustSeen = 0.5;

    /// <summary>
    /// Least contrast seen on a print at the eye's best period. In a laboratory's even field it is about 0.005 (Campbell and Robson
    /// 1968, from memory); ink that flows together under the threads, dots and knit hide more. Set so that four threads to a line at
    /// a good angle stay near what is just seen, as the trade holds; the figure is our own judgement. [1]
    /// </summary>
    private const double LeastContrast = 0.06;

    /// <summary>A garment across a room. Common practice, no source. [mm]</summary>
    private const double FarthestViewingMm = 3000;

    /// <summary>Contrast over what is just seen at that period.</summary>
    /// <param name="contrast">[1], 0 or more.</param>
    /// <param name="perCm">The beat. [1/cm]</param>
    /// <param name="viewingMm">From eye to print at the nearest. [mm]</param>
    /// <remarks>docs/engines/moire.md, equation 7.</remarks>
    public static double TimesSeen(double contrast, double perCm, double viewingMm)
    {
        // People step back and come near: a beat is seen from where it is plainest.
        var near = EyeSensitivity.CyclesPerDegree(perCm, viewingMm);
        var far = EyeSensitivity.CyclesPerDegree(perCm, Math.Max(viewingMm, FarthestViewingMm));
        return contrast * EyeSensitivity.At(Math.Clamp(EyeSensitivity.BestPerDegree, near, far)) / LeastContrast;
    }

    /// <summary>Share of a beat's contrast that dots as fine as it leave to be seen. Our own judgement. [1]</summary>
    /// <param name="beat">The beat.</param>
    /// <param name="dotsPerCm">The halftone's ruling. [1/cm]</param>
    /// <remarks>1/(1 + (f/ruling)⁴): docs/engines/moire.md, equation 7.</remarks>
    public static double AmongDots(GratingVector beat, double dotsPerCm)
    {
        var square = ((beat.XPerCm * beat.XPerCm) + (beat.YPerCm * beat.YPerCm)) / (dotsPerCm * dotsPerCm);
        return 1 / (1 + (square * square));
    }

    /// <summary>Least contrast that could ever be seen as plainly as that: nothing below is worth working out. [1]</summary>
    public static double ContrastFor(double timesSeen) => timesSeen * LeastContrast;

    /// <param name="timesSeen">[1], 0 or more.</param>
    /// <returns>[1], 0 to below 1; <see cref="JustSeen"/> where the beat is just seen.</returns>
    public static double Of(double timesSeen) => timesSeen / (1 + timesSeen);
}
