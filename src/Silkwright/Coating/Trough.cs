namespace Silkwright.Coating;

/// <summary>A scoop coater as it stands on the shelf.</summary>
/// <param name="Id">The shop's own name for it.</param>
/// <param name="EdgeRadiusMm">Radius of the coating edge. [mm], 0.2 to 3; sharp is about 0.5, round about 1.5.</param>
/// <param name="WidthMm">Length of the edge. [mm]</param>
public sealed record Trough(string Id, double EdgeRadiusMm, double? WidthMm = null);
