using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Life;

/// <summary>Median life of a well-made stencil before anybody has counted one. Common practice: docs/engines/life.md, defaults.</summary>
internal static class LifeSeed
{
    /// <summary>EOM of the stencils the figures below speak of. [µm]. Common practice.</summary>
    internal const double UsualEomUm = 10;

    /// <summary>An emulsion that a solvent or UV ink, or plastisol, attacks keeps this share of its life. [1]. Common practice.</summary>
    private const double AttackedShare = 0.1;

    /// <summary>Discharge halves what water-based ink leaves. [1]. Common practice.</summary>
    private const double DischargeShare = 0.5;

    /// <summary>Impressions by which half of such stencils have failed.</summary>
    internal static Estimate Median(LifeCase life)
    {
        var median = life.LaidWith is { } laying ? Bound(life with { LaidWith = null }, laying) : Alone(life);
        return life.WornByWash ? Washed(median) : median;
    }

    /// <summary>
    /// A film bound into the mesh by an emulsion: anchored better than a film laid with water, not better than the emulsion alone. Half
    /// way between the two in proportion, known to a factor less well; where the ink attacks one of them only, that one's life. Common
    /// practice that it lasts longer; how much is a guess, no source.
    /// </summary>
    private static Estimate Bound(LifeCase film, LayingEmulsion laying)
    {
        var (alone, behind) = (Alone(film), Alone(film with { Family = laying.Family, MadeForInk = laying.MadeForInk }));
        if (film.MadeForInk != laying.MadeForInk)
            return alone.Value < behind.Value ? alone : behind;
        return new Estimate(
            Math.Sqrt(alone.Value * behind.Value),
            Math.Max(Math.Min(alone.Low, behind.Low), Math.Sqrt(alone.Low * behind.Low) / BoundSpread),
            Math.Min(Math.Max(alone.High, behind.High), Math.Sqrt(alone.High * behind.High) * BoundSpread),
            Ground.CommonPractice);
    }

    /// <summary>A factor either way on where between film and emulsion a pair lies. Guess, no source. [1]</summary>
    private const double BoundSpread = 1.5;

    /// <summary>Two doubts about one life that vary apart: their logarithms add as squares.</summary>
    private static Estimate Washed(Estimate median)
    {
        return new Estimate(
            median.Value * WashedShare.Value,
            median.Value * WashedShare.Value * Math.Exp(-Both(median.Value / median.Low, WashedShare.Value / WashedShare.Low)),
            median.Value * WashedShare.Value * Math.Exp(Both(median.High / median.Value, WashedShare.High / WashedShare.Value)),
            Ground.CommonPractice);

        static double Both(double one, double other) => Math.Sqrt((Math.Log(one) * Math.Log(one)) + (Math.Log(other) * Math.Log(other)));
    }

    /// <summary>Share of its life that a stencil keeps when it is wiped with what it does not stand well. Guess, no source. [1]</summary>
    private static readonly Estimate WashedShare = new(0.6, 0.3, 1, Ground.CommonPractice);

    private static Estimate Alone(LifeCase life) => life.Ink switch
    {
        InkKind.WaterBased => InWater(life),
        InkKind.Discharge => InWater(life).Times(DischargeShare),
        InkKind.Plastisol => InDryInk(life, InPlastisol(life.Family)),
        InkKind.Solvent or InkKind.Uv => InDryInk(life, Between(5_000, 20_000)),
        _ => throw new ArgumentOutOfRangeException(nameof(life), life.Ink, "Unknown ink."),
    };

    private static Estimate InPlastisol(EmulsionFamily family) => family switch
    {
        EmulsionFamily.Diazo => Between(10_000, 30_000),
        EmulsionFamily.DualCure or EmulsionFamily.Photopolymer => Between(15_000, 50_000),
        EmulsionFamily.CapillaryFilm => Between(8_000, 25_000),
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
    };

    /// <summary>Ink without water wears the stencil more than it attacks it; finishing helps a little.</summary>
    private static Estimate InDryInk(LifeCase life, Estimate median) =>
        median.Times((life.MadeForInk ? 1 : AttackedShare) * FinishFactor(life.Finish, postExposed: 1.2, hardened: 1.3));

    /// <summary>
    /// Water swells what is not made for it or not fully linked; finishing multiplies the life. The diazo row made for water
    /// carries a trade report of the same screens at 50 000 to 75 000 impressions; one report, hence the wide interval.
    /// </summary>
    private static Estimate InWater(LifeCase life)
    {
        if (life is { Family: EmulsionFamily.Diazo, MadeForInk: true })
            return Between(30_000, 120_000).Times(FinishFactor(life.Finish, postExposed: 1.15, hardened: 1.3));
        var median = life.MadeForInk ? MadeForWater(life.Family) : NotMadeForWater(life.Family);
        return median.Times(FinishFactor(life.Finish, postExposed: 2, hardened: 5));
    }

    private static Estimate MadeForWater(EmulsionFamily family) => family switch
    {
        EmulsionFamily.Photopolymer => Between(2_000, 10_000),
        EmulsionFamily.DualCure => Between(1_000, 5_000),
        EmulsionFamily.CapillaryFilm => Between(1_000, 6_000),
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
    };

    private static Estimate NotMadeForWater(EmulsionFamily family) => family switch
    {
        EmulsionFamily.Diazo => Between(200, 1_000),
        EmulsionFamily.DualCure => Between(200, 1_000),
        EmulsionFamily.Photopolymer or EmulsionFamily.CapillaryFilm => Between(100, 500),
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
    };

    private static double FinishFactor(StencilFinish finish, double postExposed, double hardened) => finish switch
    {
        StencilFinish.None => 1,
        StencilFinish.PostExposed => postExposed,
        StencilFinish.Hardened => hardened,
        _ => throw new ArgumentOutOfRangeException(nameof(finish), finish, "Unknown finish."),
    };

    /// <summary>A figure the trade gives as a range, taken as 90 % of cases around its geometric middle.</summary>
    private static Estimate Between(double low, double high) => new(Math.Sqrt(low * high), low, high, Ground.CommonPractice);
}
