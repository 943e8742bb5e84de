using System.Globalization;

namespace Silkwright.Cli.Printing;

/// <summary>Numbers for people: as many digits as can matter.</summary>
internal static class Figures
{
    private const int SignificantDigits = 3;

    /// <summary>Three significant digits; whole numbers above 100 keep all of theirs, with thin groups above 9999.</summary>
    public static string Of(double value)
    {
        var size = Math.Abs(value);
        if (size >= 10_000)
            return value.ToString("#,0", CultureInfo.InvariantCulture);
        if (size == 0)
            return "0";
        var decimals = Math.Clamp(SignificantDigits - 1 - (int)Math.Floor(Math.Log10(size)), 0, 6);
        return value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>Two ends.</summary>
    public static string Range(double low, double high) => $"{Of(low)} to {Of(high)}";
}
