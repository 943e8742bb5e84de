using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Drying;

/// <summary>What is assumed of a coat's water, by family. Common practice throughout: docs/engines/drying.md, defaults.</summary>
internal static class CoatMoisture
{
    /// <summary>
    /// Water at which the surface stops behaving as free water. [kg/kg dry]. Common practice; above what any coat keeps in
    /// saturated air.
    /// </summary>
    internal const double Critical = 0.45;

    /// <summary>Water at which a finger leaves no mark. [kg/kg dry]. Common practice.</summary>
    internal const double TouchDry = 0.20;

    /// <summary>Most water that is safe to expose, near what a coat keeps at 55 to 60 % humidity. [% of dry]. Common practice.</summary>
    internal const double SafePercent = 5;

    /// <summary>Humidity at which a film sticks to every second coat made to resist it. [%]. Common practice.</summary>
    internal const double ResistantSticksAtHumidity = 100;

    private const double GabC = 3;
    private const double GabK = 0.85;

    /// <summary>A resistant coat keeps this share of the water. [1]. Common practice.</summary>
    private const double ResistantShare = 0.7;

    /// <summary>
    /// Isotherm of the coat. No verified set of parameters exists for polyvinyl alcohol coats; these keep the published order
    /// of cellulose film formers, halved for the less thirsty dispersion mixed in.
    /// </summary>
    internal static GabIsotherm Isotherm(EmulsionFamily family, bool humidityResistant) =>
        new(MonolayerPercent(family) * (humidityResistant ? ResistantShare : 1), GabC, GabK);

    /// <summary>How far the isotherm may lie from the truth: a factor either way.</summary>
    internal static readonly Estimate IsothermFactor = Estimate.WithinFactor(1, 1.4, Ground.CommonPractice);

    /// <summary>Humidity at which a film sticks to every second coat of the family. [%]. Common practice.</summary>
    internal static double SticksAtHumidity(EmulsionFamily family) => family switch
    {
        EmulsionFamily.Diazo => 60,
        EmulsionFamily.DualCure => 62,
        EmulsionFamily.Photopolymer => 65,
        EmulsionFamily.CapillaryFilm => 63,
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
    };

    private static double MonolayerPercent(EmulsionFamily family) => family switch
    {
        EmulsionFamily.Diazo => 3.8,
        EmulsionFamily.DualCure => 3.5,
        EmulsionFamily.Photopolymer => 3.2,
        EmulsionFamily.CapillaryFilm => 3.5,
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
    };
}
