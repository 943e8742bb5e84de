using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Coating.Learning;

/// <summary>A coat as a row of the mixed model: what the balance expects, and what each effect is multiplied by.</summary>
/// <remarks>Every effect counts in standard deviations of what is believed of it, so that all ratios are believed to be about 1.</remarks>
internal sealed record CoatColumns
{
    private CoatColumns(CoatSlopes slopes, bool edgeIsKnown)
    {
        Slopes = slopes;
        TroughShare = edgeIsKnown ? CoatSpreads.Trough : Together(CoatSpreads.Trough, CoatSpreads.UnknownEdge);
        VaryingUm = Math.Max(slopes.EomUm, CoatSpreads.LeastVaryingUm);
    }

    public CoatSlopes Slopes { get; }

    /// <summary>What shares of a thickness are taken of. [µm]</summary>
    public double VaryingUm { get; }

    public double TroughShare { get; }

    public double EmulsionUm => Together(CoatSpreads.Emulsion * VaryingUm, Slopes.EmulsionUm);

    public double MeshUm => Together(CoatSpreads.Mesh * VaryingUm, Slopes.MeshUm);

    /// <summary>Variance of one reading about its screen's own thickness. [µm²]</summary>
    public double PlaceVariance => PlaceVarianceAt(VaryingUm);

    public static CoatColumns Of(CoatObservation coat)
    {
        if (coat.Emulsion.Family != EmulsionFamily.CapillaryFilm)
            return new CoatColumns(LiquidCoat.Slopes(coat.Mesh, coat.Emulsion, coat.Trough, coat.Strokes), coat.EdgeIsKnown);

        // A film is laid, not stroked: what its thickness rests on counts as its own.
        var eom = CapillaryCoat.Predict(coat.Mesh, coat.Emulsion).EomUm;
        return new CoatColumns(new CoatSlopes(eom.Value, new double[LiquidCoat.SharedConstants], 0, (eom.High - eom.Low) / (2 * Estimate.UsualHalfWidth)) { WithConstants = _ => eom.Value }, edgeIsKnown: true);
    }

    public static double PlaceVarianceAt(double um) => (CoatSpreads.GaugeUm * CoatSpreads.GaugeUm) + (CoatSpreads.Place * um * CoatSpreads.Place * um);

    private static double Together(double one, double other) => Math.Sqrt((one * one) + (other * other));
}
