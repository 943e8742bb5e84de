using Silkwright.Emulsion;

namespace Silkwright.Catalogue;

/// <summary>
/// What a catalogue can hold of an emulsion, in the order a screen is made. Bounds catch slips and wrong units; spreads say how far
/// two honest sources usually lie apart. Both are common practice, no source, where docs/engines/catalogue.md names none.
/// </summary>
public static class CatalogueProperties
{
    /// <summary>Temperature at which a pot life is told unless another is named. [°C]</summary>
    public const double ReferenceCelsius = 21;

    private static readonly EmulsionFamily[] Liquids = [EmulsionFamily.Diazo, EmulsionFamily.DualCure, EmulsionFamily.Photopolymer];
    private static readonly EmulsionFamily[] TwoPart = [EmulsionFamily.Diazo, EmulsionFamily.DualCure];
    private static readonly EmulsionFamily[] Films = [EmulsionFamily.CapillaryFilm];
    private static readonly string[] YesNo = ["yes", "no"];

    public static readonly CatalogueProperty Family = new("family", "family", "Read on the container whether a sensitiser is mixed in: diazo, diazo with acrylates, or none.")
    {
        Words = ["diazo", "dualCure", "photopolymer", "capillaryFilm"],
    };

    public static readonly CatalogueProperty Solids = new("solidsPercent", "solids by weight", "Weigh a spoonful, dry it to constant weight in a warm, aired oven, weigh again: dry over wet.")
    {
        Unit = "%", Least = 10, Most = 100, DatasheetShare = UsualSpread.Solids, Of = Liquids,
    };

    public static readonly CatalogueProperty Viscosity = new("viscosityPaS", "viscosity", "Time a full flow cup or use a rotating viscometer at 23 °C after a day's rest, and note which.")
    {
        Unit = "Pa·s", Least = 0.05, Most = 200, DatasheetShare = 0.25, Of = Liquids,
    };

    public static readonly CatalogueProperty Density = new("densityGPerCm3", "density", "Weigh a measuring flask of known volume, filled without bubbles.")
    {
        Unit = "g/cm³", Least = 0.8, Most = 2, DatasheetShare = UsualSpread.Density, Of = Liquids,
    };

    public static readonly CatalogueProperty SensitiveFrom = new("sensitiveFromNm", "sensitive from", "Ask the supplier for the spectral sensitivity, or expose strips behind band filters.")
    {
        Unit = "nm", Least = 200, Most = 600, DatasheetShare = 0.03,
    };

    public static readonly CatalogueProperty SensitiveTo = new("sensitiveToNm", "sensitive up to", "Ask the supplier for the spectral sensitivity, or leave half-covered coupons behind long-pass filters.")
    {
        Unit = "nm", Least = 250, Most = 700, DatasheetShare = 0.03,
    };

    public static readonly CatalogueProperty RelativeExposure = new("relativeExposure", "exposure beside a plain diazo", "Coat it and a plain diazo equally thick, expose step wedges under one lamp: the ratio of times to the same solid step.")
    {
        Least = 0.01, Most = 5, DatasheetShare = UsualSpread.Exposure,
    };

    public static readonly CatalogueProperty PenetrationDepth = new("penetrationDepthUm", "penetration depth Dp", "Cure coats on clear film from below at five doses or more and gauge what stays: the slope of depth against the log of the dose.")
    {
        Unit = "µm", Least = 5, Most = 9_000, DatasheetShare = UsualSpread.PenetrationDepth,
    };

    public static readonly CatalogueProperty CriticalDose = new("criticalDoseMjPerCm2", "critical dose Hc", "From the same depths against dose, with a radiometer for the lamp's band: the dose where the depth falls to nothing.")
    {
        Unit = "mJ/cm²", Least = 0.01, Most = 100_000, DatasheetShare = 0.3,
    };

    public static readonly CatalogueProperty ToPlastisol = ToInk("Plastisol", "plastisol");
    public static readonly CatalogueProperty ToWaterBased = ToInk("WaterBased", "water-based ink");
    public static readonly CatalogueProperty ToDischarge = ToInk("Discharge", "discharge ink");
    public static readonly CatalogueProperty ToSolvent = ToInk("Solvent", "solvent ink");
    public static readonly CatalogueProperty ToUv = ToInk("Uv", "UV ink");
    public static readonly CatalogueProperty ToCleaner = ToInk("Cleaner", "screen cleaner");

    public static readonly CatalogueProperty PotLife = new("potLifeDays", "pot life once mixed", "Keep a mixed sample there and expose a wedge every week: the day its solid step has moved by one.")
    {
        Unit = "d", Least = 0.1, Most = 1500, DatasheetShare = UsualSpread.PotLife, AtUnit = "°C", LeastAt = -30, MostAt = 60, UsualAt = ReferenceCelsius, Of = TwoPart,
    };

    public static readonly CatalogueProperty ShelfLife = new("shelfLifeMonths", "shelf life unopened", "Read the date on the container, and expose a wedge from the oldest one kept.")
    {
        Unit = "months", Least = 0.5, Most = 60, DatasheetShare = UsualSpread.ShelfLife,
    };

    public static readonly CatalogueProperty HumidityResistant = new("humidityResistant", "dry above 80 % humidity", "Leave a dried coupon overnight in a closed box above a salt slurry of known humidity: does a film stick to it?")
    {
        Words = YesNo,
    };

    public static readonly CatalogueProperty SeeThrough = new("seeThrough", "see-through for register", "Lay a dried, exposed coupon over a register mark: is it plain to see?")
    {
        Words = YesNo,
    };

    public static readonly CatalogueProperty Hardening = new("hardening", "chemical hardening", "Print or soak two coupons with the ink, one of them hardened, and count until each fails.")
    {
        Words = ["none", "helps", "needed"],
    };

    public static readonly CatalogueProperty Reclaim = new("reclaim", "reclaiming", "Strip a coupon that has been printed and stored a week, and time it.")
    {
        Words = ["easy", "hard", "no"],
    };

    public static readonly CatalogueProperty FilmThickness = new("filmThicknessUm", "thickness of the film", "Gauge ten places of a sheet with its carrier, then the carrier alone.")
    {
        Unit = "µm", Least = 5, Most = 700, DatasheetShare = UsualSpread.FilmThickness, Of = Films,
    };

    public static readonly CatalogueProperty Price = new("price", "price of a container", "Ask for a price, with the container's weight.")
    {
        Unit = "currency", Least = 0, Most = 1_000_000, DatasheetShare = UsualSpread.Price, AtUnit = "g", LeastAt = 1, MostAt = 1_000_000,
    };

    public static IReadOnlyList<CatalogueProperty> All { get; } =
    [
        Family, Solids, Viscosity, Density, FilmThickness, SensitiveFrom, SensitiveTo, RelativeExposure, PenetrationDepth, CriticalDose,
        HumidityResistant, SeeThrough, ToPlastisol, ToWaterBased, ToDischarge, ToSolvent, ToUv, ToCleaner, Hardening, Reclaim,
        PotLife, ShelfLife, Price,
    ];

    private static CatalogueProperty ToInk(string name, string what) => new(
        $"resistance{name}", $"resistance to {what}", $"Soak a cured, weighed coupon in {what} for a day: does it swell, soften or lose its edge under a thumbnail?")
    {
        Words = ["poor", "fair", "good"],
    };
}
