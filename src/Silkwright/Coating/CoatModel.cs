using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>Strokes to stencil thickness by a balance of volumes.</summary>
public static class CoatModel
{
    /// <summary>What these strokes leave.</summary>
    /// <param name="strokes">
    /// In the order they are made; the first lays emulsion on bare mesh. Passed over for a capillary film, which is laid, not
    /// stroked.
    /// </param>
    /// <param name="readingsUm">
    /// The shop's own gauge readings of emulsion over mesh with this emulsion, mesh, trough and these strokes. [µm], 0 or more.
    /// </param>
    /// <remarks>
    /// docs/engines/coating.md, equations 1 to 7. Good for meshes of 24 to 165 threads a centimetre, solids of 15 to 60 % and
    /// edges of 0.2 to 3 mm; until readings come in, to ±50 % and more where the coat is thin.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The strokes, the edge radius or a reading make no sense.</exception>
    public static CoatPrediction Predict(
        WovenMesh mesh,
        StencilEmulsion emulsion,
        Trough trough,
        IReadOnlyList<Stroke> strokes,
        IReadOnlyList<double>? readingsUm = null)
    {
        var prediction = emulsion.Family == EmulsionFamily.CapillaryFilm
            ? CapillaryCoat.Predict(mesh, emulsion)
            : LiquidCoat.Predict(mesh, emulsion, trough, strokes);
        return readingsUm is { Count: > 0 } ? ReadingUpdate.Of(prediction, mesh, readingsUm) : prediction;
    }

    /// <summary>The shortest strokes whose prediction comes nearest to the wanted emulsion over mesh.</summary>
    /// <param name="wantedEomUm">[µm], 0 or more.</param>
    /// <remarks>
    /// Strokes as shops use them, at most five wet-on-wet and then face coats: docs/engines/coating.md, "Choosing strokes".
    /// Predictions that miss the mark by as much as the nearest one, within what a gauge and a hand can tell, count as equal.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The wanted thickness is negative, or as for <see cref="Predict"/>.</exception>
    public static CoatPrediction For(double wantedEomUm, WovenMesh mesh, StencilEmulsion emulsion, Trough trough)
    {
        if (!double.IsFinite(wantedEomUm) || wantedEomUm < 0)
            throw new ArgumentOutOfRangeException(nameof(wantedEomUm), wantedEomUm, "The wanted thickness must be 0 µm or more.");
        if (emulsion.Family == EmulsionFamily.CapillaryFilm)
            return Predict(mesh, emulsion, trough, []);

        var candidates = StrokeRecipe.InUse
            .Select(recipe => (recipe.Effort, Coat: Predict(mesh, emulsion, trough, recipe.Strokes)))
            .ToArray();
        var nearest = candidates.MinBy(Miss);
        var slack = Math.Max(StrokeRecipe.SlackUm, StrokeRecipe.SlackShare * Math.Min(wantedEomUm, nearest.Coat.EomUm.Value));
        var chosen = candidates
            .Where(candidate => Miss(candidate) <= Miss(nearest) + slack)
            .OrderBy(candidate => candidate.Effort)
            .ThenBy(Miss)
            .First().Coat;
        return StrokeRecipe.WithNoteOnMiss(chosen, wantedEomUm, slack);

        double Miss((int Effort, CoatPrediction Coat) candidate) => Math.Abs(candidate.Coat.EomUm.Value - wantedEomUm);
    }
}
