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
    /// <remarks>
    /// docs/engines/coating.md, equations 1 to 6 and 9. Good for meshes of 24 to 165 threads a centimetre, solids of 15 to 60 % and
    /// edges of 0.2 to 3 mm, to ±50 % and more where the coat is thin. <see cref="Learning.LearntCoat"/> draws it to readings.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The strokes or the edge radius make no sense.</exception>
    public static CoatPrediction Predict(WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<Stroke> strokes) =>
        emulsion.Family == EmulsionFamily.CapillaryFilm
            ? CapillaryCoat.Predict(mesh, emulsion)
            : LiquidCoat.Predict(mesh, emulsion, trough, strokes);

    /// <summary>The shortest strokes whose prediction comes nearest to the wanted emulsion over mesh.</summary>
    /// <param name="wantedEomUm">[µm], 0 or more.</param>
    /// <remarks>
    /// Strokes as shops use them, at most five wet-on-wet and then face coats: docs/engines/coating.md, "Choosing strokes".
    /// Predictions that miss the mark by as much as the nearest one, within what a gauge and a hand can tell, count as equal.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The wanted thickness is negative, or the edge makes no sense.</exception>
    public static CoatPrediction For(double wantedEomUm, WovenMesh mesh, StencilEmulsion emulsion, Trough trough)
    {
        StrokeRecipe.ThrowIfNoThickness(wantedEomUm);
        if (emulsion.Family == EmulsionFamily.CapillaryFilm)
            return Predict(mesh, emulsion, trough, []);
        var best = LiquidCoat.BestEomUm(mesh, emulsion, trough, StrokeRecipe.InUse.Select(recipe => recipe.Strokes));
        var (chosen, slack) = StrokeRecipe.Nearest(wantedEomUm, [.. StrokeRecipe.InUse.Zip(best)]);
        return StrokeRecipe.WithNoteOnMiss(Predict(mesh, emulsion, trough, chosen.Strokes), wantedEomUm, slack);
    }
}
