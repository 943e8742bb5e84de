using Silkwright.Mesh;

namespace Silkwright.Moire;

/// <summary>The beats of halftone, mesh and knit, two by two: docs/engines/moire.md.</summary>
public static class Beats
{
    /// <summary>Longer than a print is wide, a beat is a shift of tone. Common practice, no source. [mm]</summary>
    public const double LongestMm = 400;

    /// <summary>Patterns told.</summary>
    private const int MostPatterns = 100;

    /// <summary>Nothing of a beat is seen below this. [1]</summary>
    private const double LeastTimesSeen = 0.001;

    /// <summary>Swing of a cosine over its coefficient, against a middle tone of one half. [1]</summary>
    private const double ContrastOfStrength = 4;

    /// <summary>The beats within the band that an eye sees, the plainest first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A measure is not a positive number, or threads would overlap.</exception>
    public static IReadOnlyList<MoirePattern> Of(MoireCase asked)
    {
        var patterns = new List<MoirePattern>();
        foreach (var (one, other, dots, pattern) in Pairs(asked))
        {
            foreach (var a in one)
            {
                foreach (var b in other)
                {
                    var vector = a.Vector - b.Vector;
                    var contrast = ContrastOfStrength * a.Strength * b.Strength;
                    var timesSeen = Seen(vector, contrast, asked.ViewingMm, dots, LeastTimesSeen);
                    if (timesSeen >= LeastTimesSeen)
                        patterns.Add(pattern(a, b) with { Vector = vector, Contrast = contrast, TimesSeen = timesSeen });
                }
            }
        }

        return [.. patterns.OrderByDescending(pattern => pattern.Visibility).Take(MostPatterns)];
    }

    /// <summary>The beats that are longer than any print: overtones that fall on each other.</summary>
    public static IReadOnlyList<MoirePattern> Standing(MoireCase asked) =>
        [.. from pair in Pairs(asked)
            from a in pair.One
            from b in pair.Other
            let vector = a.Vector - b.Vector
            where vector.PeriodMm > LongestMm
            let contrast = ContrastOfStrength * a.Strength * b.Strength
            orderby contrast descending
            select pair.Pattern(a, b) with { Vector = vector, Contrast = contrast, TimesSeen = 0 }];

    /// <summary>How plainly the plainest beat is seen, over what is just seen. [1]</summary>
    public static double Worst(MoireCase asked)
    {
        var worst = 0.0;
        foreach (var (one, other, dots, _) in Pairs(asked))
        {
            foreach (var a in one)
            {
                foreach (var b in other)
                {
                    // Both stand strongest first: from here on none could be plainer than the one found, even at the eye's best.
                    var contrast = ContrastOfStrength * a.Strength * b.Strength;
                    if (contrast <= Visibility.ContrastFor(worst))
                        break;
                    worst = Math.Max(worst, Seen(a.Vector - b.Vector, contrast, asked.ViewingMm, dots, worst));
                }
            }
        }

        return worst;
    }

    /// <param name="vector">The beat.</param>
    /// <param name="contrast">[1]</param>
    /// <param name="viewingMm">[mm]</param>
    /// <param name="dotsPerCm">Ruling of the dots it lies among; none where threads and knit beat. [1/cm]</param>
    /// <param name="least">Only what is seen more plainly than this is worked out. [1]</param>
    private static double Seen(GratingVector vector, double contrast, double viewingMm, double? dotsPerCm, double least)
    {
        var left = dotsPerCm is { } dots ? contrast * Visibility.AmongDots(vector, dots) : contrast;
        if (left <= Visibility.ContrastFor(least))
            return 0;
        var seen = vector.PeriodMm <= LongestMm && EyeSensitivity.CyclesPerDegree(vector.PerCm, viewingMm) <= EyeSensitivity.FinestPerDegree;
        return seen ? Visibility.TimesSeen(left, vector.PerCm, viewingMm) : 0;
    }

    private static List<(Harmonic[] One, Harmonic[] Other, double? DotsPerCm, Func<Harmonic, Harmonic, MoirePattern> Pattern)> Pairs(MoireCase asked)
    {
        ThrowIfImpossible(asked);
        var dots = Lattice.OfDots(asked.RulingPerCm, asked.AngleDegrees, asked.TonePercent);
        var threads = Lattice.OfThreads(asked.Mesh, asked.MeshAngleDegrees);
        var pairs = new List<(Harmonic[], Harmonic[], double?, Func<Harmonic, Harmonic, MoirePattern>)>
        {
            (dots, threads, asked.RulingPerCm, (a, b) => Bare with { Ruling = a.Orders, Thread = b.Orders }),
        };
        if (asked is { KnitWalesPerCm: { } wales, KnitCoursesPerCm: { } courses })
        {
            var knit = Lattice.OfKnit(wales, courses);
            var half = threads.Where(thread => Lattice.IsHalf(thread.Orders)).ToArray();
            pairs.Add((dots, knit, asked.RulingPerCm, (a, b) => Bare with { Ruling = a.Orders, Knit = b.Orders }));
            pairs.Add((half, knit, null, (a, b) => Bare with { Thread = a.Orders, Knit = b.Orders }));
        }

        return pairs;
    }

    private static readonly MoirePattern Bare = new() { Vector = default, Contrast = 0, TimesSeen = 0 };

    private static void ThrowIfImpossible(MoireCase asked)
    {
        _ = WovenMesh.OpenArea(asked.Mesh.CountPerCm, asked.Mesh.ThreadUm, asked.Mesh.CountPerCm, asked.Mesh.ThreadUm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(asked.ViewingMm);
        ArgumentOutOfRangeException.ThrowIfLessThan(asked.TonePercent ?? 0, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(asked.TonePercent ?? 0, 100);
    }
}
