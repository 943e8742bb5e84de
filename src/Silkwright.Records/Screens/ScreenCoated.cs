using Silkwright.Coating;

namespace Silkwright.Records.Screens;

/// <summary>Coated; the operator is the entry's person.</summary>
/// <param name="EmulsionId">As the shop's document calls it.</param>
/// <param name="Lot">Lot on the container.</param>
/// <param name="Strokes">In the order they were made.</param>
/// <param name="TroughId">As the shop's document calls it.</param>
public sealed record ScreenCoated(
    string EmulsionId, string? Lot = null, IReadOnlyList<Stroke>? Strokes = null, string? TroughId = null) : ScreenFact(ScreenEventKind.Coated);
