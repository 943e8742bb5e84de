using System.Globalization;
using System.Text.RegularExpressions;
using Silkwright.Estimates;
using UnitsNet;

namespace Silkwright.Contracts;

/// <summary>Reads quantities the way people type them: <c>64um</c>, <c>2.5 mil</c>, <c>156/in</c>, <c>86F</c>, <c>60..85%</c>.</summary>
/// <remarks>
/// The decimal sign is the point, whatever the machine's language; a number alone is refused where a unit is needed, since
/// 64 may be threads to the inch or to the centimetre. Conversions are UnitsNet's.
/// </remarks>
public static partial class QuantityText
{
    /// <summary>Beyond this a turn into another unit may leave the numbers there are.</summary>
    private const double MostReckoned = 1e250;

    private const string DecimalComma = "Write the decimal sign as a point, and no thousands signs";

    /// <summary>Reads one value.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="kind">What it should be.</param>
    /// <param name="where">Option, field or line it was typed at; told back in a fault.</param>
    /// <param name="problems">Takes the fault, if there is one.</param>
    /// <returns>The value in <see cref="QuantityKind.KeptIn"/>; none when a fault was added.</returns>
    public static double? Read(string text, QuantityKind kind, string where, ProblemList problems)
    {
        var match = OneValue().Match(Plain(text));
        if (!match.Success)
        {
            problems.Add(Unreadable(text, kind), where, Remedy(text, kind));
            return null;
        }

        return Value(match.Groups["number"].Value, match.Groups["unit"].Value, text, kind, where, problems);
    }

    /// <summary>Reads one value or a range, <c>60..85%</c>.</summary>
    /// <returns>
    /// The value with no spread, or the middle of the range between its ends, in <see cref="QuantityKind.KeptIn"/> and taken
    /// as the asker's own measurement; none when a fault was added.
    /// </returns>
    public static Estimate? ReadEstimate(string text, QuantityKind kind, string where, ProblemList problems)
    {
        var match = Range().Match(Plain(text));
        if (!match.Success)
            return Read(text, kind, where, problems) is { } one ? Estimate.Exact(one, Ground.MeasuredHere) : null;

        var highUnit = match.Groups["highUnit"].Value;
        var lowUnit = match.Groups["lowUnit"] is { Length: > 0 } own ? own.Value : highUnit;
        var low = Value(match.Groups["low"].Value, lowUnit, text, kind, where, problems);
        if (low is null || Value(match.Groups["high"].Value, highUnit, text, kind, where, problems) is not { } high)
            return null;
        if (low > high)
        {
            problems.Add($"The range '{NearName.Shown(text.Trim())}' runs backwards.", where, "Write the smaller end first: 60..85%.");
            return null;
        }

        return new Estimate((low.Value + high) / 2, low.Value, high, Ground.MeasuredHere);
    }

    private static double? Value(string number, string unit, string text, QuantityKind kind, string where, ProblemList problems)
    {
        // Plus 0 makes a typed -0 a plain 0.
        var value = double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture) + 0.0;
        if (Math.Abs(value) > MostReckoned)
        {
            problems.Add($"'{NearName.Shown(text.Trim())}' is not a number that can be reckoned with.", where, Remedy(text, kind));
            return null;
        }

        if (unit.Length == 0 && kind.Units.Count == 0)
            return value;
        if (unit.Length == 0)
        {
            problems.Add($"'{NearName.Shown(text.Trim())}' has no unit.", where, Remedy(text, kind));
            return null;
        }

        var known = kind.Units.FirstOrDefault(one => one.IsWritten(unit));
        if (known is null)
        {
            problems.Add($"'{NearName.Shown(unit)}' is not a unit taken here.", where, Remedy(text, kind));
            return null;
        }

        return UnitConverter.Convert(value, known.Unit, kind.Units[0].Unit);
    }

    private static string Unreadable(string text, QuantityKind kind) =>
        string.IsNullOrWhiteSpace(text) ? $"There is no value where {kind.Name} should be." : $"'{NearName.Shown(text.Trim())}' can't be read as {kind.Name}.";

    private static string Remedy(string text, QuantityKind kind)
    {
        var how = text.Contains(',', StringComparison.Ordinal) ? $"{DecimalComma}; write" : "Write";
        return kind.Units.Count == 0
            ? $"{how} a plain number without a unit, for example {kind.Example}."
            : $"{how} {kind.Name} with one of the units {kind.UnitsTaken}, for example {kind.Example}.";
    }

    /// <summary>The same text with plain letters for the micro sign, the degree sign, raised digits and the minus sign.</summary>
    private static string Plain(string text) => string.Concat(text.Trim().Select(c => c switch
    {
        '\u00b5' or '\u03bc' => "u",
        '\u00b0' => "deg",
        '\u00b2' => "2",
        '\u00b3' => "3",
        '\u2212' => "-",
        '\u2026' => "..",
        _ => c.ToString(),
    }));

    [GeneratedRegex(
        @"^(?<number>[+-]?[0-9]+(\.[0-9]+)?(e[+-]?[0-9]+)?)\s*(?<unit>[a-z/%][a-z0-9/]*)?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex OneValue();

    [GeneratedRegex(
        @"^(?<low>[+-]?[0-9]+(\.[0-9]+)?)\s*(?<lowUnit>[a-z/%][a-z0-9/]*)?\s*\.\.\s*(?<high>[+-]?[0-9]+(\.[0-9]+)?)\s*(?<highUnit>[a-z/%][a-z0-9/]*)?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Range();
}
