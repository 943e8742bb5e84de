using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>From solids by weight, as datasheets print them, to the share of the wet layer that stays.</summary>
public static class VolumeSolids
{
    /// <summary>
    /// Density of the dry coat. [g/cm³] Polyvinyl alcohol and polyvinyl acetate lie at about 1.19 to 1.31 (handbook values,
    /// from memory).
    /// </summary>
    public static readonly Estimate DryDensityGPerCm3 = new(1.20, 1.15, 1.30, Ground.Model);

    /// <summary>Density of water at room temperature. [g/cm³]</summary>
    public const double WaterDensityGPerCm3 = 0.998;

    /// <summary>Share of the wet volume that stays when the water has gone.</summary>
    /// <param name="solidsPercent">Solids by weight. [%], above 0 to 100.</param>
    /// <param name="dryDensityGPerCm3">Density of the solids. [g/cm³], positive.</param>
    /// <returns>[1], above 0 to 1.</returns>
    /// <remarks>(s/ρs) / (s/ρs + (1−s)/ρw), volumes adding: docs/engines/coating.md, equation 1.</remarks>
    public static double Share(double solidsPercent, double dryDensityGPerCm3)
    {
        var (solids, water) = VolumesOfOneGram(solidsPercent, dryDensityGPerCm3);
        return solids / (solids + water);
    }

    /// <summary>Density of the liquid, volumes adding. [g/cm³]</summary>
    /// <inheritdoc cref="Share" path="/param"/>
    public static double LiquidDensityGPerCm3(double solidsPercent, double dryDensityGPerCm3)
    {
        var (solids, water) = VolumesOfOneGram(solidsPercent, dryDensityGPerCm3);
        return 1 / (solids + water);
    }

    /// <summary>Density of the solids from that of the liquid, volumes adding. [g/cm³]</summary>
    /// <param name="solidsPercent">Solids by weight. [%], above 0 to 100.</param>
    /// <param name="liquidDensityGPerCm3">[g/cm³], positive.</param>
    /// <returns>Positive infinity where the water alone would fill the liquid's volume.</returns>
    public static double DryDensityOfLiquid(double solidsPercent, double liquidDensityGPerCm3)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(liquidDensityGPerCm3);
        var share = solidsPercent / 100;
        var volume = (1 / liquidDensityGPerCm3) - ((1 - share) / WaterDensityGPerCm3);
        return volume > 0 ? share / volume : double.PositiveInfinity;
    }

    private static (double Solids, double Water) VolumesOfOneGram(double solidsPercent, double dryDensityGPerCm3)
    {
        if (!(solidsPercent > 0 && solidsPercent <= 100))
            throw new ArgumentOutOfRangeException(nameof(solidsPercent), solidsPercent, "Solids lie above 0 and at most at 100 %.");
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dryDensityGPerCm3);
        var share = solidsPercent / 100;
        return (share / dryDensityGPerCm3, (1 - share) / WaterDensityGPerCm3);
    }
}
