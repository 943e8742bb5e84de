using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Ink;

/// <summary>The figures that stand in where a case gives none: docs/engines/ink.md, table 1.</summary>
internal static class InkDefaults
{
    /// <summary>Share of the theoretical ink volume that reaches a garment. [%] Common practice, 60 to 85.</summary>
    public static readonly Estimate TransferPercent = new(72.5, 60, 85, Ground.CommonPractice);

    /// <summary>Share of the emulsion over mesh that a narrow line gains. [1] Common practice, 0.5 to 1.</summary>
    public static readonly Estimate StencilShareOfLine = new(0.75, 0.5, 1, Ground.CommonPractice);

    /// <summary>
    /// Share of it that a large area gains: little, since the squeegee sinks in. [1] Common practice; counted in the interval only.
    /// </summary>
    public static readonly Estimate StencilShareOfArea = new(0, 0, 0.15, Ground.CommonPractice);

    /// <summary>Lines up to here gain the full share, and from <see cref="BroadLineUm"/> on none. [µm] Common practice, 1 to 2 mm.</summary>
    public const double NarrowLineUm = 1000;
    public const double BroadLineUm = 2000;

    /// <summary>Least that every further squeegee stroke lays beside the first: the ink bed is already full. Guess, no source. [1]</summary>
    public const double LeastOfFurtherStroke = 0.5;

    /// <summary>Density. [g/cm³] Common practice; solvent and UV from memory.</summary>
    public static Estimate DensityGPerCm3(InkKind ink) => ink switch
    {
        // colours 1.1 to 1.3, white 1.4 to 1.6
        InkKind.Plastisol => new(1.25, 1.1, 1.6, Ground.CommonPractice),
        InkKind.WaterBased or InkKind.Discharge => new(1.10, 1.05, 1.15, Ground.CommonPractice),
        InkKind.Solvent => new(1.05, 0.95, 1.25, Ground.CommonPractice),
        InkKind.Uv => new(1.15, 1.05, 1.30, Ground.CommonPractice),
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "No such ink."),
    };
}
