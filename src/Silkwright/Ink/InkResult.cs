using Silkwright.Estimates;

namespace Silkwright.Ink;

/// <summary>What ink is laid and used.</summary>
public sealed record InkResult
{
    /// <summary>Wet ink on large areas. [µm]</summary>
    public required Estimate WetDepositUm { get; init; }

    /// <summary>Wet ink on the finest line, where the stencil's edge adds to it; only where its width is known. [µm]</summary>
    public Estimate? LineDepositUm { get; init; }

    /// <summary>Dry ink on large areas; only where volume solids are known. [µm]</summary>
    public Estimate? DryDepositUm { get; init; }

    /// <summary>Ink for the whole run on the garments, without what stays in the screen. [g]</summary>
    public required Estimate InkGrams { get; init; }

    public required Estimate GramsPerImpression { get; init; }

    public IReadOnlyList<Note> Notes { get; init; } = [];
}
