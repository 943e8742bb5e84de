namespace Silkwright.Gauging;

/// <summary>One reading of a thickness gauge with what was told about it. At least one of the thicknesses is there.</summary>
public sealed record GaugeEntry
{
    /// <summary>Bare mesh. [µm]</summary>
    public double? BareUm { get; init; }

    /// <summary>Mesh and emulsion together. [µm]</summary>
    public double? CoatedUm { get; init; }

    /// <summary>Emulsion over mesh, where the gauge or somebody has taken the mesh off already. [µm]</summary>
    public double? EomUm { get; init; }

    public string? Screen { get; init; }

    /// <summary>Where on the screen, as the file calls it; 1 to 9 on the map.</summary>
    public string? Place { get; init; }

    public string? Operator { get; init; }

    public string? Trough { get; init; }

    public string? Emulsion { get; init; }

    public string? Lot { get; init; }

    /// <summary>[1/cm]</summary>
    public double? MeshCountPerCm { get; init; }

    /// <summary>[µm]</summary>
    public double? ThreadUm { get; init; }

    /// <summary>As docs/schema/shop.json writes strokes.</summary>
    public string? Strokes { get; init; }

    public DateOnly? On { get; init; }

    /// <summary>Where it stands in its file, from 1; 0 where it stands in none.</summary>
    public int Line { get; init; }

    /// <summary>Emulsion over mesh as far as this reading alone tells. [µm]</summary>
    public double? OverMeshUm => EomUm ?? (CoatedUm - BareUm);

    /// <summary>Mesh and strokes in one word; empty where neither was told.</summary>
    public string Recipe => string.Join(' ', new[] { MeshCountPerCm is { } count ? FormattableString.Invariant($"{count:0.#}/{ThreadUm:0.#}") : null, Strokes }.OfType<string>());
}
