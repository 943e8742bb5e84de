using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Drying;

/// <summary>Whether a film sticks to a coat in the vacuum frame.</summary>
/// <remarks>
/// A logistic curve over the humidity the coat stands in: docs/engines/drying.md, equation 14. Common practice set its middle
/// and slope: fine at 35 to 40 %, risky above 50 %, glued in wet weeks, and some coats that resist it above 90 %.
/// </remarks>
internal static class StickRisk
{
    /// <summary>Humidity over which the odds of sticking grow by e. [%]</summary>
    private const double Slope = 6;

    /// <summary>How far the middle of the curve may lie off. [% humidity]</summary>
    private const double MiddleSpread = 6;

    internal static Estimate Percent(DryingCase drying)
    {
        var middle = drying.HumidityResistant
            ? CoatMoisture.ResistantSticksAtHumidity
            : CoatMoisture.SticksAtHumidity(drying.Family);
        return new Estimate(
            At(drying.HumidityPercent, middle),
            At(drying.HumidityPercent, middle + MiddleSpread),
            At(drying.HumidityPercent, middle - MiddleSpread),
            Ground.CommonPractice);
    }

    internal static string Reason(DryingCase drying, double riskPercent)
    {
        var humidity = string.Create(CultureInfo.InvariantCulture, $"{drying.HumidityPercent:0} %");
        if (drying.HumidityResistant)
            return $"This coat is made to stay dry to the touch in damp air; here it stands in {humidity} relative humidity.";
        return riskPercent switch
        {
            < 10 => $"At {humidity} relative humidity little water is left in the coat.",
            < 50 => $"At {humidity} relative humidity the coat, or the film's own ink, may hold enough water to cling.",
            _ => $"At {humidity} relative humidity the coat keeps water however long it stands, and the film clings to it.",
        };
    }

    private static double At(double humidity, double middle) => 100 / (1 + Math.Exp(-(humidity - middle) / Slope));
}
