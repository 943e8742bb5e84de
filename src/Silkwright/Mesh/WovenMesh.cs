using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Mesh;

/// <summary>Geometry of a plain-woven mesh with square openings: docs/engines/mesh.md.</summary>
public sealed record WovenMesh
{
    /// <summary>
    /// Fabric thickness over thread diameter. Four published fabrics of 40 to 54 µm thread lie between 1.475 and 1.575
    /// (docs/engines/mesh.md, sources 1 and 2); the interval is a little wider, since four fabrics are few. Never 2: a
    /// finished fabric's threads bend and press into each other.
    /// </summary>
    public static readonly Estimate ThicknessPerThread = new(1.55, 1.45, 1.65, Ground.Model);

    /// <summary>Length of a thread over the length of the fabric it crosses: it runs up and down. Geometry; [1]</summary>
    private const double CrimpLength = 1.03;

    /// <summary>Spread of a thickness read with a gauge on stretched mesh, as a share of itself. Common practice; [1]</summary>
    private const double ThicknessReadingShare = 0.03;

    /// <summary>Spread of the rule for the smallest dot, as a share of itself. Common practice; [1]</summary>
    private const double SmallestDotShare = 0.15;

    /// <summary>Threads that the smallest line spans. Common practice; [1]</summary>
    public const double ThreadsPerSmallestLine = 3;

    /// <summary>Pitches that a line needs for a clean edge on a garment, the upper figure heard. Common practice; [1]</summary>
    private const double CleanLinePitches = 2;

    public required MeshFabric Fabric { get; init; }

    /// <summary>Distance from thread to thread. [µm]</summary>
    public required double PitchUm { get; init; }

    public required double OpeningUm { get; init; }

    /// <summary>Share of the mesh that is opening. [%]</summary>
    public required double OpenAreaPercent { get; init; }

    public required Estimate FabricThicknessUm { get; init; }

    /// <summary>Theoretical ink volume. [cm³/m²], the same number as µm</summary>
    public required Estimate InkVolumeCm3PerM2 { get; init; }

    /// <summary>Space between the threads within the fabric's thickness, as an even layer. [µm]</summary>
    public required Estimate VoidUm { get; init; }

    /// <summary>Smallest dot that both clears and anchors. [µm]</summary>
    public required Estimate SmallestDotUm { get; init; }

    /// <summary>Smallest line that prints whole. [µm]</summary>
    public required Estimate SmallestLineUm { get; init; }

    public IReadOnlyList<Note> Notes { get; init; } = [];

    /// <summary>The geometry of a fabric from its count and thread.</summary>
    /// <remarks>
    /// docs/engines/mesh.md, equations 1 to 7. Straight threads of constant width, square openings; stretching and the
    /// weaver's tolerance are not modelled, so a published figure may differ by 2 points of open area.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A measure is not a positive number, the threads would overlap, or the fabric would be thinner than its thread.
    /// </exception>
    public static WovenMesh Of(MeshFabric fabric)
    {
        ThrowIfImpossible(fabric);
        var thread = fabric.ThreadUm;
        var pitch = 10_000 / fabric.CountPerCm;
        var opening = pitch - thread;
        var openArea = OpenArea(fabric.CountPerCm, thread, fabric.CountPerCm, thread);
        var thickness = fabric.FabricThicknessUm is { } measured
            ? Estimate.Within(measured, ThicknessReadingShare, Ground.MeasuredHere)
            : ThicknessPerThread.Times(thread);
        var threadVolume = 2 / pitch * (Math.PI / 4) * thread * thread * CrimpLength;
        var smallestLine = Math.Max(ThreadsPerSmallestLine * thread, pitch);

        return new WovenMesh
        {
            Fabric = fabric,
            PitchUm = pitch,
            OpeningUm = opening,
            OpenAreaPercent = 100 * openArea,
            FabricThicknessUm = thickness,
            InkVolumeCm3PerM2 = AsModel(thickness.Times(openArea)),
            VoidUm = AsModel(thickness.Map(t => Math.Max(0, t - threadVolume))),
            SmallestDotUm = Estimate.Within((2 * thread) + opening, SmallestDotShare, Ground.CommonPractice),
            SmallestLineUm = new Estimate(
                smallestLine, pitch, Math.Max(smallestLine, CleanLinePitches * pitch), Ground.CommonPractice),
            Notes = NotesOn(fabric),
        };
    }

    /// <summary>Share of a plain weave that is opening, where warp and weft may differ.</summary>
    /// <param name="warpPerCm">Warp count. [1/cm]</param>
    /// <param name="warpUm">Warp thread. [µm]</param>
    /// <param name="weftPerCm">Weft count. [1/cm]</param>
    /// <param name="weftUm">Weft thread. [µm]</param>
    /// <returns>[1], above 0 and below 1.</returns>
    /// <remarks>(1 − n₁d₁)(1 − n₂d₂): docs/engines/mesh.md, equation 3. Geometry of rectangular openings.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A measure is not positive, or threads would overlap.</exception>
    public static double OpenArea(double warpPerCm, double warpUm, double weftPerCm, double weftUm)
    {
        return OpenShare(warpPerCm, warpUm) * OpenShare(weftPerCm, weftUm);

        static double OpenShare(double countPerCm, double threadUm)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(countPerCm);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(threadUm);
            var open = 1 - (countPerCm * threadUm / 10_000);
            return open > 0 ? open : throw new ArgumentOutOfRangeException(nameof(threadUm), threadUm, "The threads would overlap.");
        }
    }

    private static Estimate AsModel(Estimate estimate) =>
        new(estimate.Value, estimate.Low, estimate.High, Ground.Model, estimate.CoverPercent);

    private static List<Note> NotesOn(MeshFabric fabric)
    {
        var notes = new List<Note>();
        if (fabric.FabricThicknessUm is not { } measured)
        {
            notes.Add(new Note(
                $"The thickness of mesh {fabric.Name} is not given: about 1.55 times its thread, as published fabrics are.",
                Ground.Model));
        }
        else if (measured >= 2 * fabric.ThreadUm)
        {
            notes.Add(new Note(string.Create(
                CultureInfo.InvariantCulture,
                $"Mesh {fabric.Name} is entered as {measured:0.#} µm thick, twice its thread or more, which finished fabric is not: measure it again.")));
        }

        return notes;
    }

    private static void ThrowIfImpossible(MeshFabric fabric)
    {
        ThrowIfNotPositive(fabric.CountPerCm, "mesh count");
        ThrowIfNotPositive(fabric.ThreadUm, "thread diameter");
        if (fabric.ThreadUm >= 10_000 / fabric.CountPerCm)
            throw new ArgumentOutOfRangeException(nameof(fabric), fabric.Name, "The threads would overlap: count times thread leaves no opening.");
        if (fabric.FabricThicknessUm is not { } thickness)
            return;
        ThrowIfNotPositive(thickness, "fabric thickness");
        if (thickness < fabric.ThreadUm)
            throw new ArgumentOutOfRangeException(nameof(fabric), thickness, "The fabric would be thinner than its thread.");

        static void ThrowIfNotPositive(double number, string what)
        {
            if (!double.IsFinite(number) || number <= 0)
                throw new ArgumentOutOfRangeException(nameof(fabric), number, $"The {what} must be a positive number.");
        }
    }
}
