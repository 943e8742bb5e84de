using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>How deep a coat lets light and how it bleaches, where nobody has measured. Common practice and guesses: docs/engines/exposure.md, "Bleaching in the window".</summary>
/// <remarks>Of a film and the emulsion it is laid with, the one that lets light less deep decides.</remarks>
internal sealed class CoatBleaching
{
    private readonly bool isBeforeBleaching;

    internal CoatBleaching(StencilEmulsion emulsion)
    {
        var deciding = emulsion.LaidWith is { } laying && Length(laying).Value < Length(emulsion).Value ? laying : emulsion;
        LengthUm = Length(deciding);
        (Share, CuringOverBleaching) = (ShareOf(deciding), RatioOf(deciding));
        isBeforeBleaching = deciding is { PenetrationDepthUm: not null, BleachingPercent: not null };
    }

    /// <summary>
    /// Length over which the needed exposure grows by e through the stencil that the usual exposures speak of, bleaching included; where an emulsion's own bleaching is told beside its length, the
    /// length before bleaching. [µm]
    /// </summary>
    internal Estimate LengthUm { get; }

    /// <summary>Share of the absorption that goes with the sensitiser. [1]</summary>
    internal Estimate Share { get; }

    /// <summary>Critical dose over the dose that leaves 1/e of the sensitiser: Dill's C times H_c. [1]</summary>
    internal Estimate CuringOverBleaching { get; }

    /// <summary>The coat at its best values.</summary>
    internal CureLaw Law => LawOf(LengthUm.Value, Share.Value, CuringOverBleaching.Value);

    /// <summary>The coat for one choice of what is uncertain.</summary>
    internal CureLaw LawOf(double lengthUm, double share, double curingOverBleaching) => isBeforeBleaching
        ? CureLaw.Of(lengthUm, share, 1 / curingOverBleaching, 1)
        : CureLaw.OfStencil(CoatOptics.ReferenceStencilUm, lengthUm, share, curingOverBleaching);

    private static Estimate Length(StencilEmulsion emulsion) => emulsion.PenetrationDepthUm is { } given
        ? UsualSpread.Around(given, UsualSpread.PenetrationDepth, emulsion.Grounds.PenetrationDepth)
        : Estimate.WithinFactor(
            emulsion.Family switch
            {
                EmulsionFamily.DualCure or EmulsionFamily.CapillaryFilm => 85.0,
                EmulsionFamily.Diazo or EmulsionFamily.Photopolymer => 70,
                _ => throw new ArgumentOutOfRangeException(nameof(emulsion), emulsion.Family, "Unknown family."),
            },
            1.5, Ground.CommonPractice);

    private static Estimate ShareOf(StencilEmulsion emulsion) => emulsion.BleachingPercent is { } percent
        ? new(percent / 100, Math.Max(0, (percent - ToldSharePercent) / 100), Math.Min(1, (percent + ToldSharePercent) / 100), Ground.MeasuredHere)
        : emulsion.Family switch
        {
            EmulsionFamily.Diazo => new(0.8, 0.5, 0.95, Ground.CommonPractice),
            EmulsionFamily.DualCure => new(0.5, 0.2, 0.8, Ground.CommonPractice),
            EmulsionFamily.CapillaryFilm => new(0.3, 0, 0.7, Ground.CommonPractice),
            _ => Estimate.Exact(0, Ground.CommonPractice),
        };

    private static Estimate RatioOf(StencilEmulsion emulsion) => emulsion is { BleachDoseMjPerCm2: { } bleaching, CriticalDoseMjPerCm2: { } critical }
        ? UsualSpread.Around(critical / bleaching, UsualSpread.PenetrationDepth, Ground.MeasuredHere)
        : Estimate.WithinFactor(1, 3, Ground.CommonPractice);

    /// <summary>A share that is told is right to so much. Guess. [%]</summary>
    private const double ToldSharePercent = 10;
}
