using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Stock;

/// <summary>Days a mixed emulsion works at a temperature, through what is told of it at one temperature or several.</summary>
/// <remarks>
/// docs/engines/stock.md, equation 1: between two told temperatures the logarithm of the days runs straight; beyond them the trade's rule goes
/// on from the nearest. A hotter store never lengthens the life, whatever is told.
/// </remarks>
internal static class MixedLives
{
    public const double ReferenceCelsius = 21;

    /// <summary>Most that cold lengthens the life below what is told, or below 21 °C. [1]</summary>
    private const double MostByCold = 2;

    /// <summary>How far the told days may be off, as a factor about 1. [1]</summary>
    public static Estimate Spread(StencilEmulsion emulsion)
    {
        if (emulsion.PotLives is not { Count: > 0 } told)
        {
            var days = FamilyValues.PotLifeDaysAt21(emulsion);
            return new Estimate(1, days.Low / days.Value, days.High / days.Value, days.Ground);
        }

        return UsualSpread.Around(1, UsualSpread.PotLife, told.Max(life => life.Ground));
    }

    /// <summary>Days at a temperature by the best values. [d]</summary>
    /// <param name="emulsion">A two-part emulsion.</param>
    /// <param name="celsius">The store. [°C]</param>
    /// <param name="halvingKelvin">Degrees that halve the life. [K]</param>
    public static double Of(StencilEmulsion emulsion, double celsius, double halvingKelvin)
    {
        var told = Told(emulsion);
        var (coldest, hottest) = (told[0], told[^1]);
        if (celsius >= hottest.Celsius)
            return hottest.Days * Math.Pow(0.5, (celsius - hottest.Celsius) / halvingKelvin);
        if (celsius < coldest.Celsius)
        {
            // down to 21 °C the rule is the trade's; further down it would promise years
            var freely = Math.Max(celsius, Math.Min(coldest.Celsius, ReferenceCelsius));
            var toThere = coldest.Days * Math.Pow(2, (coldest.Celsius - freely) / halvingKelvin);
            return toThere * Math.Min(MostByCold, Math.Pow(2, (freely - celsius) / halvingKelvin));
        }

        var above = told.First(life => life.Celsius > celsius);
        var below = told.Last(life => life.Celsius <= celsius);
        var way = (celsius - below.Celsius) / (above.Celsius - below.Celsius);
        return below.Days * Math.Pow(above.Days / below.Days, way);
    }

    /// <summary>What is told, from cold to hot and never longer where it is hotter.</summary>
    private static (double Celsius, double Days)[] Told(StencilEmulsion emulsion)
    {
        var told = (emulsion.PotLives ?? []).Select(life => (life.Celsius, life.Days)).ToList();
        if (told.Count == 0)
            told.Add((ReferenceCelsius, FamilyValues.PotLifeDaysAt21(emulsion).Value));
        else if (emulsion.PotLifeDays is { } days && told.TrueForAll(life => life.Celsius != ReferenceCelsius))
            told.Add((ReferenceCelsius, days));
        var least = double.PositiveInfinity;
        return [.. told.OrderBy(life => life.Celsius).Select(life => (life.Celsius, least = Math.Min(least, life.Days)))];
    }
}
