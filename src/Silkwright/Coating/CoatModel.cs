using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>Strokes to stencil thickness by a balance of volumes.</summary>
public static class CoatModel
{
    /// <summary>What these strokes leave.</summary>
    public static CoatPrediction Predict(WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<Stroke> strokes) =>
        throw new NotImplementedException();

    /// <summary>The shortest strokes whose prediction comes nearest to the wanted emulsion over mesh.</summary>
    public static CoatPrediction For(double wantedEomUm, WovenMesh mesh, StencilEmulsion emulsion, Trough trough) =>
        throw new NotImplementedException();
}
