using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Web.Look;

/// <summary>Numbers as people read them: no more digits than their interval carries.</summary>
public static class Figures
{
    private const int MostDecimals = 3;

    /// <summary>The place an interval's width lets a number be read to, as a power of ten (0: ones, -1: tenths, 1: tens).</summary>
    /// <remarks>A fifth of the width decides: one digit more than is sure, so that two neighbouring answers can still be told apart.</remarks>
    public static int Place(double width, double value)
    {
        if (width <= 0)
            return value == 0 ? 0 : Math.Max(-MostDecimals, (int)Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        return Math.Max(-MostDecimals, (int)Math.Floor(Math.Log10(width / 5)));
    }

    /// <summary>A number read to a place.</summary>
    public static string At(double value, int place)
    {
        var step = Math.Pow(10, Math.Max(place, 0));
        var rounded = Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
        return (place >= 0 ? Whole(rounded) : Trimmed(value, -place)).Replace('-', '−');
    }

    /// <summary>The best value of an estimate.</summary>
    public static string Value(Estimate estimate) =>
        estimate.High > estimate.Low ? At(estimate.Value, PlaceOf(estimate)) : Exact(estimate.Value);

    /// <summary>The interval of an estimate: "26 to 38".</summary>
    public static string Interval(Estimate estimate)
    {
        var place = PlaceOf(estimate);
        return $"{At(estimate.Low, place)} to {At(estimate.High, place)}";
    }

    /// <summary>A whole number with a thin space between thousands.</summary>
    public static string Whole(double value) =>
        Math.Round(value).ToString("#,0", CultureInfo.InvariantCulture).Replace(",", "\u202f", StringComparison.Ordinal);

    /// <summary>A number with at most so many decimals.</summary>
    public static string Plain(double value, int decimals = 1) =>
        value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>Money to the hundredth.</summary>
    public static string Money(double cost) => cost.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>Minutes as a person says them: "45 min", "1 h 50", "2 days".</summary>
    public static string Minutes(double minutes)
    {
        var whole = (long)Math.Round(minutes >= 60 ? minutes / 5 : minutes) * (minutes >= 60 ? 5 : 1);
        if (whole < 90)
            return $"{whole} min";
        return whole < 48 * 60 ? $"{whole / 60} h {whole % 60:00}" : $"{Plain(whole / 1440.0)} days";
    }

    /// <summary>A day as the shop writes it, without doubt about which part is the month.</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    private static string Exact(double value)
    {
        var text = At(value, Place(0, value));
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    private static int PlaceOf(Estimate estimate) => Place(estimate.High - estimate.Low, estimate.Value);

    private static string Trimmed(double value, int decimals) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("F" + decimals, CultureInfo.InvariantCulture);
}
