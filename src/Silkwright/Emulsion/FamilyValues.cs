using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>
/// What an emulsion is like, with the ground: what its sheet or the shop says first, and what its family is usually like where
/// nobody said. The family figures are the trade's (docs/engines/emulsion.md, table 1).
/// </summary>
public static class FamilyValues
{
    /// <summary>A month as stock counts it: a twelfth of a year. [d]</summary>
    public const double DaysPerMonth = 365.25 / 12;

    /// <summary>Thickness taken for a capillary film nobody described: the general class is 25 to 40 µm. Common practice.</summary>
    private static readonly Estimate FilmThickness = new(32, 25, 40, Ground.CommonPractice);

    /// <summary>Price of a capillary film by area. [cost/m²] Common practice, order of magnitude.</summary>
    private static readonly Estimate UsualFilmPricePerM2 = new(25, 15, 35, Ground.CommonPractice);

    /// <summary>Solids by weight. [%]</summary>
    public static Estimate SolidsPercent(StencilEmulsion emulsion) => emulsion.Family switch
    {
        EmulsionFamily.CapillaryFilm => Estimate.Exact(100, Ground.Model),
        _ when emulsion.SolidsPercent is { } given =>
            UsualSpread.Around(given, UsualSpread.Solids, emulsion.Grounds.Solids).Map(x => Math.Min(x, 100)),
        EmulsionFamily.Diazo => new(26, 20, 32, Ground.CommonPractice),
        EmulsionFamily.DualCure => new(37, 32, 42, Ground.CommonPractice),
        EmulsionFamily.Photopolymer => new(42, 35, 50, Ground.CommonPractice),
        _ => throw Unknown(emulsion),
    };

    /// <summary>Density of the emulsion as it is laid: the liquid's, or the dry film's. [g/cm³]</summary>
    public static Estimate DensityGPerCm3(StencilEmulsion emulsion) => Propagation.Through(
        x => VolumeSolids.LiquidDensityGPerCm3(x[0], x[1]),
        [new("solids", SolidsPercent(emulsion)), new("density of the dry coat", DryDensityGPerCm3(emulsion))]).Estimate;

    /// <summary>Density of the dry coat: from that of the liquid where it is told, volumes adding. [g/cm³]</summary>
    /// <remarks>docs/engines/coating.md, equation 13. Held within what such coats weigh, filled ones included: 1.0 to 2.5.</remarks>
    public static Estimate DryDensityGPerCm3(StencilEmulsion emulsion) => emulsion is { DensityGPerCm3: { } liquid, SolidsPercent: not null }
        ? Propagation.Through(
            x => Math.Clamp(VolumeSolids.DryDensityOfLiquid(x[0], x[1]), 1.0, 2.5),
            [new("solids", SolidsPercent(emulsion)), new("density of the liquid", UsualSpread.Around(liquid, UsualSpread.Density, emulsion.Grounds.Density))]).Estimate
        : VolumeSolids.DryDensityGPerCm3;

    /// <summary>
    /// Days it works at 21 °C: from mixing for two-part emulsions; as long as the closed container for ready-to-use ones. [d]
    /// </summary>
    public static Estimate PotLifeDaysAt21(StencilEmulsion emulsion)
    {
        if (emulsion.PotLifeDays is { } given)
            return UsualSpread.Around(given, UsualSpread.PotLife, emulsion.Grounds.PotLife);
        return NeedsSensitiser(emulsion.Family)
            ? new Estimate(35, 28, 42, Ground.CommonPractice)
            : ShelfLifeMonths(emulsion).Times(DaysPerMonth);
    }

    /// <summary>Months it keeps unopened at 18 to 26 °C. [months]</summary>
    public static Estimate ShelfLifeMonths(StencilEmulsion emulsion) => emulsion.Family switch
    {
        _ when emulsion.ShelfLifeMonths is { } given => UsualSpread.Around(given, UsualSpread.ShelfLife, emulsion.Grounds.ShelfLife),
        EmulsionFamily.Diazo or EmulsionFamily.DualCure => new(12, 9, 15, Ground.CommonPractice),
        EmulsionFamily.Photopolymer => new(21, 18, 24, Ground.CommonPractice),
        EmulsionFamily.CapillaryFilm => new(18, 12, 24, Ground.CommonPractice),
        _ => throw Unknown(emulsion),
    };

    /// <summary>Exposure time beside a plain diazo of the same coat. [1]</summary>
    public static Estimate RelativeExposure(StencilEmulsion emulsion) => emulsion.Family switch
    {
        _ when emulsion.RelativeExposure is { } given => UsualSpread.Around(given, UsualSpread.Exposure, emulsion.Grounds.RelativeExposure),
        EmulsionFamily.Diazo => new(1, 0.8, 1.25, Ground.CommonPractice),
        EmulsionFamily.DualCure => new(0.5, 0.4, 0.6, Ground.CommonPractice),
        EmulsionFamily.Photopolymer => new(0.2, 0.1, 0.3, Ground.CommonPractice),
        // as its sensitiser, and nobody said which
        EmulsionFamily.CapillaryFilm => new(0.5, 0.15, 1, Ground.CommonPractice),
        _ => throw Unknown(emulsion),
    };

    /// <summary>Price. [cost/kg], in the shop's currency; orders of magnitude where the shop gave none.</summary>
    public static Estimate PricePerKg(StencilEmulsion emulsion) => emulsion.Family switch
    {
        _ when emulsion.Price is { } price => emulsion.Grounds.Price == Ground.MeasuredHere
            ? Estimate.Exact(price.CostPerKg, Ground.MeasuredHere)
            : UsualSpread.Around(price.CostPerKg, UsualSpread.Price, emulsion.Grounds.Price),
        EmulsionFamily.Diazo => new(22, 15, 35, Ground.CommonPractice),
        EmulsionFamily.DualCure => new(27, 18, 40, Ground.CommonPractice),
        EmulsionFamily.Photopolymer => new(32, 20, 45, Ground.CommonPractice),
        EmulsionFamily.CapillaryFilm => Propagation.Through(
            x => 1000 * x[0] / (x[1] * x[2]),
            [
                new("price of the film", UsualFilmPricePerM2),
                new("film thickness", FilmThicknessUm(emulsion)),
                new("density of the dry coat", VolumeSolids.DryDensityGPerCm3),
            ]).Estimate,
        _ => throw Unknown(emulsion),
    };

    /// <summary>Price of a capillary film by area. [cost/m²], in the shop's currency.</summary>
    public static Estimate FilmPricePerM2(StencilEmulsion film) => film.Price is null ? UsualFilmPricePerM2 : Propagation.Through(
        x => x[0] * x[1] * x[2] / 1000,
        [
            new("price of the film", PricePerKg(film)),
            new("film thickness", FilmThicknessUm(film)),
            new("density of the dry coat", VolumeSolids.DryDensityGPerCm3),
        ]).Estimate;

    /// <summary>Thickness of a capillary film as bought. [µm]</summary>
    public static Estimate FilmThicknessUm(StencilEmulsion emulsion) => emulsion.FilmThicknessUm is { } given
        ? UsualSpread.Around(given, UsualSpread.FilmThickness, emulsion.Grounds.FilmThickness)
        : FilmThickness;

    /// <summary>Sold in two parts: its days count from mixing.</summary>
    public static bool NeedsSensitiser(EmulsionFamily family) => family is EmulsionFamily.Diazo or EmulsionFamily.DualCure;

    private static ArgumentOutOfRangeException Unknown(StencilEmulsion emulsion) =>
        new(nameof(emulsion), emulsion.Family, "No such family of emulsions.");
}
