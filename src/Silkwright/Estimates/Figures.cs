using System.Globalization;

namespace Silkwright.Estimates;

/// <summary>Numbers as people read them, on paper, page and terminal alike: no more digits than their interval carries.</summary>
/// <remarks>Documents for programs carry the numbers in full: Contracts.</remarks>
public static class Figures
{
    /// <summary>From here on a time is not told: the caller's model was cut off there. [min]: one week</summary>
    public const double LongestMinutes = 7 * 24 * 60;

    /// <summary>Chances below this are not told apart. [%]</summary>
    public const double LeastChancePercent = 0.1;

    private const int MostDecimals = 3;
    private const int ExactDigits = 3;
    private const double UmPerMil = 25.4;

    /// <summary>A number read to a place.</summary>
    private static string At(double value, int place)
    {
        var step = Math.Pow(10, Math.Max(place, 0));
        var rounded = Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
        return place >= 0 ? Whole(rounded) : Signed(Math.Round(value, -place, MidpointRounding.AwayFromZero).ToString($"#,0.{new string('0', -place)}", CultureInfo.InvariantCulture));
    }

    /// <summary>The best value of an estimate.</summary>
    public static string Value(Estimate estimate) =>
        estimate.High > estimate.Low ? At(estimate.Value, PlaceOf(estimate)) : Exact(estimate.Value);

    /// <summary>The interval of an estimate: "26 to 38"; empty for one without spread. A whole number at its low end is never told as none.</summary>
    public static string Interval(Estimate estimate) => estimate.High > estimate.Low
        ? $"{At(estimate.Low, Math.Min(PlaceOf(estimate), LeadingPlace(estimate.Low)))} to {Like(estimate, estimate.High)}"
        : "";

    /// <summary>An interval as it follows its value: " (26 to 38)"; nothing where there is none.</summary>
    public static string InBrackets(string interval) => interval.Length == 0 ? "" : $" ({interval})";

    /// <summary>A number that belongs beside an estimate, read to the same place.</summary>
    public static string Like(Estimate estimate, double value) => At(value, PlaceOf(estimate));

    /// <summary>The next number up that is written without rounding down: for a bound that must be reached.</summary>
    public static double Up(Estimate estimate)
    {
        var step = Math.Pow(10, PlaceOf(estimate));
        return Math.Ceiling(Math.Round(estimate.Value / step, 6)) * step;
    }

    /// <summary>A number without an interval: three significant digits, a whole number all of its own.</summary>
    public static string Exact(double value)
    {
        if (value == 0)
            return "0";
        var decimals = Math.Clamp(ExactDigits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return Plain(value, decimals);
    }

    /// <summary>A number above 0 that nobody knows better than to two digits: a point where a choice turns, a cost at the worst.</summary>
    public static string TwoDigits(double value)
    {
        if (value <= 0)
            return "0";
        var place = (int)Math.Floor(Math.Log10(value)) - 1;
        return At(value, place);
    }

    /// <summary>A whole number with a narrow space between thousands.</summary>
    public static string Whole(double value) => Plain(Math.Round(value), 0);

    /// <summary>A number with at most so many decimals.</summary>
    public static string Plain(double value, int decimals = 1) =>
        Signed(value.ToString($"#,0.{new string('#', decimals)}", CultureInfo.InvariantCulture));

    /// <summary>A number as somebody gave it, to be told back: plainly, and the short way (1E+308) where that would fill a line.</summary>
    public static string AsGiven(double value) =>
        value.ToString(Math.Abs(value) is 0 or (>= 1e-6 and < 1e12) ? "0.######" : "G6", CultureInfo.InvariantCulture);

    /// <summary>A price to the hundredth.</summary>
    public static string Money(double price) => price.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>How much dearer, in words: "3.7 more"; "about as much" where the digits end before the difference does.</summary>
    public static string More(Estimate difference)
    {
        var figure = Like(difference, Math.Abs(difference.Value));
        return figure.All(sign => sign is '0' or '.') ? "about as much" : $"{figure} {(difference.Value < 0 ? "less" : "more")}";
    }

    /// <summary>A chance in percent, to a tenth at most: "under 0.1" where nobody could tell.</summary>
    public static string Chance(Estimate percent) => percent.High < LeastChancePercent
        ? $"under {Exact(LeastChancePercent)}"
        : At(percent.Value, ChancePlace(percent));

    /// <summary>The interval of a chance; empty where only its bound is told.</summary>
    public static string ChanceInterval(Estimate percent) => percent.High < LeastChancePercent || percent.High <= percent.Low
        ? ""
        : $"{At(percent.Low, ChancePlace(percent))} to {At(percent.High, ChancePlace(percent))}";

    /// <summary>Minutes as a person says them: "45 min", "1 h 50", "3 days".</summary>
    public static string Minutes(double minutes)
    {
        var whole = (long)Math.Round(minutes >= 60 ? minutes / 5 : minutes) * (minutes >= 60 ? 5 : 1);
        if (whole < 90)
            return $"{whole} min";
        if (whole >= 48 * 60)
            return $"{Plain(whole / 1440.0)} days";
        return whole % 60 == 0 ? $"{whole / 60} h" : $"{whole / 60} h {whole % 60:00}";
    }

    /// <summary>Minutes until something is reached, which may be never.</summary>
    public static string Minutes(Estimate minutes) => UntilNever(minutes.Value);

    /// <summary>The interval of <see cref="Minutes(Estimate)"/>.</summary>
    public static string MinutesInterval(Estimate minutes)
    {
        const string unit = " min";
        var (low, high) = (UntilNever(minutes.Low), UntilNever(minutes.High));
        if (low.EndsWith(unit, StringComparison.Ordinal) && high.EndsWith(unit, StringComparison.Ordinal))
            low = low[..^unit.Length];
        return minutes.High > minutes.Low ? $"{low} to {high}" : "";
    }

    /// <summary>A length for sentences, in both worlds' units: "102 µm (4.0 mil)".</summary>
    public static string Length(Estimate um) => $"{Value(um)} µm ({Value(um.Times(1 / UmPerMil))} mil)";

    /// <inheritdoc cref="Length(Estimate)"/>
    public static string Length(double um) => $"{Plain(um, um < 20 ? 1 : 0)} µm ({Plain(um / UmPerMil, um < 254 ? 1 : 0)} mil)";

    /// <summary>A day as the shop writes it, without doubt about which part is the month.</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    private static int ChancePlace(Estimate percent) => Math.Max(-1, PlaceOf(percent));

    private static string UntilNever(double minutes) => minutes >= LongestMinutes ? "a week or never" : Minutes(minutes);

    /// <summary>
    /// The place that the narrower side of an interval lets a number be read to, as a power of ten (0: ones, -1: tenths, 1: tens). A
    /// fifth of the width decides: one digit more than is sure, so that two neighbouring answers can still be told apart.
    /// </summary>
    private static int PlaceOf(Estimate estimate)
    {
        var (down, up) = (estimate.Value - estimate.Low, estimate.High - estimate.Value);
        var width = down > 0 && up > 0 ? 2 * Math.Min(down, up) : down + up;
        return width <= 0 ? -MostDecimals : Math.Max(-MostDecimals, (int)Math.Floor(Math.Log10(width / 5)));
    }

    /// <summary>The place of a number's first digit; of one below 1 no place is asked for.</summary>
    private static int LeadingPlace(double value) => value < 1 ? int.MaxValue : (int)Math.Floor(Math.Log10(value));

    /// <summary>The minus sign and the narrow space that no reader takes for something else.</summary>
    private static string Signed(string number) => number.Replace('-', '−').Replace(',', '\u202f');
}
