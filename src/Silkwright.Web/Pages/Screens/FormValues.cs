using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Web.Pages.Screens;

/// <summary>Typed fields of a form, read with every fault told at once.</summary>
internal sealed class FormValues(IFormCollection form)
{
    public ProblemList Problems { get; } = new();

    public string? Text(string name) => form[name].ToString().Trim() is { Length: > 0 } text ? text : null;

    public string Required(string name, string words)
    {
        if (Text(name) is { } text)
            return text;
        Problems.Add($"The {words} is missing.", words, "Fill it in.");
        return "";
    }

    public double? Number(string name, string words)
    {
        if (Text(name) is not { } text)
            return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
            return number;
        Problems.Add($"'{text}' is not a number.", words, "Write digits with a point for decimals, such as 12.5.");
        return null;
    }

    public double RequiredNumber(string name, string words)
    {
        _ = Required(name, words);
        return Number(name, words) ?? 0;
    }

    public int? Count(string name, string words) => Number(name, words) is { } number ? (int)Math.Clamp(Math.Round(number), int.MinValue, int.MaxValue) : null;

    public T Choice<T>(string name, string words)
        where T : struct, Enum
    {
        var text = Text(name);
        foreach (var value in Enum.GetValues<T>())
        {
            if (Names.Of(value) == text)
                return value;
        }

        Problems.Add($"The {words} is not chosen.", words, $"Choose one of {string.Join(", ", Names.All<T>())}.");
        return default;
    }
}
