namespace Silkwright.Records.Screens;

/// <summary>Mesh stretched, or its tension read again.</summary>
/// <param name="TensionNPerCm">Mean over the screen. [N/cm], above 0 to 60.</param>
/// <param name="MeshLot">Lot of the mesh where it is new.</param>
public sealed record MeshTensioned(double TensionNPerCm, string? MeshLot = null) : ScreenFact(ScreenEventKind.Tensioned);
