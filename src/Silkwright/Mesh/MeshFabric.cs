namespace Silkwright.Mesh;

/// <summary>A plain-woven mesh as it is named and bought: count, thread and colour.</summary>
/// <param name="CountPerCm">Threads per centimetre, the same both ways. [1/cm]</param>
/// <param name="ThreadUm">Thread diameter. [µm]</param>
/// <param name="Dyed">Dyed yellow or amber, so that it swallows the light that would run sideways.</param>
public sealed record MeshFabric(double CountPerCm, double ThreadUm, bool Dyed = false)
{
    /// <summary>Measured thickness of the fabric; a weave estimate stands in where it is missing. [µm]</summary>
    public double? FabricThicknessUm { get; init; }

    /// <summary>Tension on the frame. [N/cm]</summary>
    public double? TensionNPerCm { get; init; }

    /// <summary>Count and thread as the trade writes them, metric.</summary>
    public string Name => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{CountPerCm:0.#}/{ThreadUm:0.#}");
}
