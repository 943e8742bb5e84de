namespace Silkwright.Light;

/// <summary>Flat layers without end to the sides, lit from above by a thin straight beam at a right angle.</summary>
public sealed record SlabCase
{
    /// <summary>More layers are not followed.</summary>
    public const int MostLayers = 14;

    /// <summary>Refractive index of what lies above. [1]</summary>
    public double IndexAbove { get; init; } = 1;

    /// <summary>From above to below; 1 to <see cref="MostLayers"/>.</summary>
    public required IReadOnlyList<LayerOptics> Layers { get; init; }

    /// <summary>Refractive index of what lies below. [1]</summary>
    public double IndexBelow { get; init; } = 1;

    /// <summary>Photons followed, 1 or more.</summary>
    public required long Photons { get; init; }

    /// <summary>The same seed and number of photons give the same result to the last bit.</summary>
    public required ulong Seed { get; init; }
}
