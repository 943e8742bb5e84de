using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Coating;

/// <summary>Strokes that shops use, with what they cost in work.</summary>
/// <param name="Effort">Strokes, with each face coat counted for the drying before it.</param>
/// <param name="Strokes">In order: print side, then squeegee side, then face coats.</param>
internal sealed record StrokeRecipe(int Effort, IReadOnlyList<Stroke> Strokes)
{
    /// <summary>Misses this close to the nearest count as equal: the gauge and the hand tell no less. Common practice.</summary>
    private const double SlackUm = 1.5;
    private const double SlackShare = 0.2;

    /// <summary>A face coat waits for a whole drying: as much bother as this many strokes. Guess, no source.</summary>
    private const int FaceCoatEffort = 3;

    /// <summary>More face coats than this and a capillary film does it better. Common practice.</summary>
    private const int MostFaceCoats = 6;

    /// <summary>One stroke a side up to three and two; the last wet stroke is on the squeegee side, as most shops do.</summary>
    public static IReadOnlyList<StrokeRecipe> InUse { get; } =
    [
        .. from wet in new (int Print, int Squeegee)[] { (1, 1), (2, 1), (2, 2), (3, 2) }
           from face in Enumerable.Range(0, MostFaceCoats + 1)
           select Of(wet.Print, wet.Squeegee, face),
    ];

    /// <exception cref="ArgumentOutOfRangeException">The wanted thickness is negative or no number.</exception>
    public static void ThrowIfNoThickness(double wantedEomUm)
    {
        if (!double.IsFinite(wantedEomUm) || wantedEomUm < 0)
            throw new ArgumentOutOfRangeException(nameof(wantedEomUm), wantedEomUm, "The wanted thickness must be 0 µm or more.");
    }

    /// <summary>The least work among those that miss by as much as the nearest, and what counts as as much. [µm]</summary>
    public static (StrokeRecipe Chosen, double SlackUm) Nearest(double wantedEomUm, IReadOnlyList<(StrokeRecipe Recipe, double EomUm)> expected)
    {
        var nearest = expected.MinBy(Miss);
        var slack = Math.Max(SlackUm, SlackShare * Math.Min(wantedEomUm, nearest.EomUm));
        return (expected.Where(candidate => Miss(candidate) <= Miss(nearest) + slack).OrderBy(candidate => candidate.Recipe.Effort).ThenBy(Miss).First().Recipe, slack);

        double Miss((StrokeRecipe Recipe, double EomUm) candidate) => Math.Abs(candidate.EomUm - wantedEomUm);
    }

    public static CoatPrediction WithNoteOnMiss(CoatPrediction coat, double wantedEomUm, double slackUm)
    {
        var miss = coat.EomUm.Value - wantedEomUm;
        if (Math.Abs(miss) <= slackUm)
            return coat;
        var remedy = miss > 0
            ? "A sharper edge, a finer mesh or fewer solids lay less."
            : "A rounder edge, more solids or a thick capillary film lay more.";
        var note = string.Create(
            CultureInfo.InvariantCulture,
            $"No usual strokes reach {wantedEomUm:0.#} µm over this mesh; the nearest leave about {coat.EomUm.Value:0.#} µm. {remedy}");
        return coat with { Notes = [.. coat.Notes, new Note(note)] };
    }

    private static StrokeRecipe Of(int print, int squeegee, int face) => new(
        print + squeegee + (FaceCoatEffort * face),
        [
            .. Enumerable.Repeat(new Stroke(StrokeSide.Print), print),
            .. Enumerable.Repeat(new Stroke(StrokeSide.Squeegee), squeegee),
            .. Enumerable.Repeat(new Stroke(StrokeSide.Print, AfterDrying: true), face),
        ]);
}
