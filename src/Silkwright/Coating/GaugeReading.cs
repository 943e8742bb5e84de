using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>One reading of emulsion over mesh that a shop took of one emulsion: total thickness less bare mesh.</summary>
/// <param name="Mesh">The mesh that was coated.</param>
/// <param name="Trough">The scoop coater it was coated with.</param>
/// <param name="Strokes">The strokes in their order.</param>
/// <param name="EomUm">What the gauge read, or the mean of one screen's places. [µm], 0 or more.</param>
public sealed record GaugeReading(WovenMesh Mesh, Trough Trough, IReadOnlyList<Stroke> Strokes, double EomUm);
