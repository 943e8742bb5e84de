using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Coating.Learning;

/// <summary>Coats as the balance of volumes predicts them, drawn to what readings taught.</summary>
public static class LearntCoat
{
    /// <summary>What a coat's strokes leave.</summary>
    /// <param name="coat">Who lays what with what; the strokes of a capillary film are passed over.</param>
    /// <param name="learnt">Readings of this and other coats. None leaves the plain prediction.</param>
    /// <exception cref="ArgumentOutOfRangeException">The strokes or the edge radius make no sense.</exception>
    public static CoatPrediction Predict(CoatObservation coat, CoatHierarchy learnt)
    {
        ArgumentNullException.ThrowIfNull(coat);
        ArgumentNullException.ThrowIfNull(learnt);
        var plain = CoatModel.Predict(coat.Mesh, coat.Emulsion, coat.Trough, coat.Strokes);
        if (learnt.KnowsNothing)
            return plain;
        var (model, screen, place) = learnt.Variances(coat);
        var reading = screen + place;
        var eom = learnt.Expect(coat);
        return plain with
        {
            EomUm = eom,
            StencilUm = Propagation.Through(x => x[0] + x[1], [new("mesh", coat.Mesh.FabricThicknessUm), new("emulsion over mesh", eom)]).Estimate,
            Drivers =
            [
                .. new Driver[]
                {
                    new("screens and gauge", 100 * reading / (model + reading)),
                    new("this coat's own readings too few", 100 * model / (model + reading)),
                }.OrderByDescending(driver => driver.EffectPercent),
            ],
            Notes = [.. plain.Notes, NoteOn(coat, learnt)],
        };
    }

    /// <summary>The shortest strokes whose prediction comes nearest to the wanted emulsion over mesh.</summary>
    /// <param name="wantedEomUm">[µm], 0 or more.</param>
    /// <param name="coat">Who lays what with what; its strokes are what is looked for.</param>
    /// <param name="learnt">Readings that move what each candidate is expected to leave.</param>
    /// <remarks>docs/engines/coating.md, "Choosing strokes".</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The wanted thickness is negative, or the edge makes no sense.</exception>
    public static CoatPrediction For(double wantedEomUm, CoatObservation coat, CoatHierarchy learnt)
    {
        ArgumentNullException.ThrowIfNull(coat);
        ArgumentNullException.ThrowIfNull(learnt);
        if (learnt.KnowsNothing)
            return CoatModel.For(wantedEomUm, coat.Mesh, coat.Emulsion, coat.Trough);
        StrokeRecipe.ThrowIfNoThickness(wantedEomUm);
        if (coat.Emulsion.Family == EmulsionFamily.CapillaryFilm)
            return Predict(coat, learnt);
        var (chosen, slack) = StrokeRecipe.Nearest(wantedEomUm, [.. StrokeRecipe.InUse.Select(recipe => (recipe, learnt.BestUm(coat with { Strokes = recipe.Strokes })))]);
        return StrokeRecipe.WithNoteOnMiss(Predict(coat with { Strokes = chosen.Strokes }, learnt), wantedEomUm, slack);
    }

    private static Note NoteOn(CoatObservation coat, CoatHierarchy learnt)
    {
        var (same, own) = (learnt.ReadingsOf(coat), learnt.ReadingsIn(coat.Shop));
        var what = $"The coat of {coat.Emulsion.Id} on {coat.Mesh.Fabric.Name}";
        var others = string.Join(" and ", Others(learnt, own));
        if (own == 0)
            return new Note($"{what}: nothing was read in this shop; drawn from {others}.", Ground.MeasuredElsewhere);
        var beside = others.Length > 0 ? $", and {others}" : "";
        return same > 0
            ? new Note($"{what}: drawn from this shop's own readings, {same} of this very coat and {own - same} of other coats{beside}.", Ground.MeasuredHere)
            : new Note($"{what}: drawn from this shop's own readings, {own} of other coats and none of this one{beside}.", Ground.Model);
    }

    private static IEnumerable<string> Others(CoatHierarchy learnt, int own)
    {
        if (learnt.Count > own)
            yield return $"{learnt.Count - own} of other shops";
        if (learnt.Elsewhere is { } taught)
            yield return $"what {taught.Readings} readings of {taught.Shops} other shop{(taught.Shops == 1 ? "" : "s")} taught";
    }
}
