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
    /// edges of 0.2 to 3 mm; until readings come in, to ±50 % and more where the coat is thin.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The strokes or the edge radius make no sense.</exception>
    public static CoatPrediction Predict(WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<Stroke> strokes) =>
        emulsion.Family == EmulsionFamily.CapillaryFilm
            ? CapillaryCoat.Predict(mesh, emulsion)
            : LiquidCoat.Predict(mesh, emulsion, trough, strokes);

    /// <summary>What these strokes leave, given the shop's readings of this emulsion on any mesh, trough and strokes.</summary>
    /// <param name="readings">Those of this very coat count most. None leaves the plain prediction.</param>
    /// <inheritdoc cref="Predict(WovenMesh, StencilEmulsion, Trough, IReadOnlyList{Stroke})"/>
    public static CoatPrediction Predict(
        WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<Stroke> strokes, IReadOnlyList<GaugeReading> readings)
    {
        var plain = Predict(mesh, emulsion, trough, strokes);
        return readings.Count == 0 ? plain : new CoatLearning(emulsion, readings).Apply(plain, mesh, trough);
    }

    /// <summary>What these strokes leave, given gauge readings of this very coat. [µm]</summary>
    /// <inheritdoc cref="Predict(WovenMesh, StencilEmulsion, Trough, IReadOnlyList{Stroke})"/>
    public static CoatPrediction Predict(
        WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<Stroke> strokes, IReadOnlyList<double> readingsUm) =>
        Predict(mesh, emulsion, trough, strokes, [.. readingsUm.Select(eomUm => new GaugeReading(mesh, trough, strokes, eomUm))]);

    /// <summary>The shortest strokes whose prediction comes nearest to the wanted emulsion over mesh.</summary>
    /// <param name="wantedEomUm">[µm], 0 or more.</param>
    /// <param name="readings">The shop's readings of this emulsion; they move what each candidate is expected to leave.</param>
    /// <remarks>
    /// Strokes as shops use them, at most five wet-on-wet and then face coats: docs/engines/coating.md, "Choosing strokes".
    /// Predictions that miss the mark by as much as the nearest one, within what a gauge and a hand can tell, count as equal.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The wanted thickness is negative, or a reading or edge makes no sense.</exception>
    public static CoatPrediction For(
        double wantedEomUm, WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<GaugeReading>? readings = null)
    {
        if (!double.IsFinite(wantedEomUm) || wantedEomUm < 0)
            throw new ArgumentOutOfRangeException(nameof(wantedEomUm), wantedEomUm, "The wanted thickness must be 0 µm or more.");

        if (emulsion.Family == EmulsionFamily.CapillaryFilm)
            return Predict(mesh, emulsion, trough, [], readings ?? []);

        var expected = Expected(mesh, emulsion, trough, readings);
        var nearest = expected.MinBy(Miss);
        var slack = Math.Max(StrokeRecipe.SlackUm, StrokeRecipe.SlackShare * Math.Min(wantedEomUm, nearest.EomUm));
        var chosen = expected
            .Where(candidate => Miss(candidate) <= Miss(nearest) + slack)
            .OrderBy(candidate => candidate.Recipe.Effort)
            .ThenBy(Miss)
            .First().Recipe;
        return StrokeRecipe.WithNoteOnMiss(Predict(mesh, emulsion, trough, chosen.Strokes, readings ?? []), wantedEomUm, slack);

        double Miss((StrokeRecipe Recipe, double EomUm) candidate) => Math.Abs(candidate.EomUm - wantedEomUm);
    }

    private static (StrokeRecipe Recipe, double EomUm)[] Expected(
        WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<GaugeReading>? readings)
    {
        if (readings is not { Count: > 0 })
        {
            var best = LiquidCoat.BestEomUm(mesh, emulsion, trough, StrokeRecipe.InUse.Select(recipe => recipe.Strokes));
            return [.. StrokeRecipe.InUse.Zip(best)];
        }

        var learning = new CoatLearning(emulsion, readings);
        return
        [
            .. StrokeRecipe.InUse.Select(recipe =>
                (recipe, learning.Apply(Predict(mesh, emulsion, trough, recipe.Strokes), mesh, trough).EomUm.Value)),
        ];
    }
}
