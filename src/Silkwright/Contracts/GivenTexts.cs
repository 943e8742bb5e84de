using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What somebody typed, by the names of a question's fields, and the faults found while reading it.</summary>
/// <remarks>The shell fills it from options, the web from a query string; reading is the same, so the answers are.</remarks>
/// <param name="texts">The text of each field that was given.</param>
/// <param name="prefix">Stands before a field's name when a fault is told: <c>--</c> in the shell.</param>
public sealed class GivenTexts(IReadOnlyDictionary<string, string> texts, string prefix = "")
{
    public ProblemList Problems { get; } = new();

    public bool Has(QuestionField field) => texts.ContainsKey(field.Name);

    /// <summary>Two fields that say the same thing in two ways: both at once is a fault.</summary>
    public void NotBoth(QuestionField one, QuestionField other)
    {
        if (Has(one) && Has(other))
            Problems.Add($"{Where(one)} and {Where(other)} say the same thing in two ways.", Where(other), "Give one of the two.");
    }

    /// <summary>The value of a field; NaN after a fault or when a required one is missing, none when an optional one is.</summary>
    public double? Read(QuantityField field)
    {
        if (Text(field) is not { } text)
            return field.Required ? double.NaN : null;
        var value = QuantityText.Read(text, field.KindAsAsked, Where(field), Problems);
        return value is { } read && InRange(field, text, read) ? read : double.NaN;
    }

    /// <summary>The value of a field that must be there; NaN after a fault. The engines are not asked before <see cref="ThrowIfAny"/>.</summary>
    public double ReadRequired(QuantityField field) => Read(field with { Required = true })!.Value;

    /// <summary>The words of a field, trimmed; none when missing or empty.</summary>
    public string? Read(TextField field)
    {
        if (Text(field)?.Trim() is not { } text)
            return null;
        if (text.Any(UnseenCharacters.Are))
        {
            Problems.Add($"{Where(field)} holds characters that cannot be seen.", Where(field), $"Type it again, for example {field.Example}.");
            return null;
        }

        if (text.Length > 0)
            return text;
        if (field.Required)
            Problems.Add($"{Where(field)} is empty: {field.Meaning}.", Where(field), $"Write it, for example {field.Example}.");
        return null;
    }

    /// <summary>A value or a range; none when missing or after a fault.</summary>
    public Estimate? ReadEstimate(QuantityField field)
    {
        if (Text(field) is not { } text)
            return null;
        var estimate = QuantityText.ReadEstimate(text, field.KindAsAsked, Where(field), Problems);
        return estimate is { } read && InRange(field, text, read.Low) && (read.Low == read.High || InRange(field, text, read.High)) ? read : null;
    }

    /// <summary>A value or a range that must be there; a stand-in after a fault.</summary>
    public Estimate ReadRequiredEstimate(QuantityField field) =>
        ReadEstimate(field with { Required = true }) ?? Estimate.Exact(0, Ground.MeasuredHere);

    /// <summary>The member a word means; none when missing or after a fault.</summary>
    public T? Read<T>(ChoiceField field)
        where T : struct, Enum
    {
        if (Text(field) is not { } text)
            return null;
        foreach (var member in Enum.GetValues<T>())
        {
            if (string.Equals(Names.Of(member), Bare(text), StringComparison.OrdinalIgnoreCase))
                return member;
        }

        Problems.Add($"'{NearName.Shown(text)}' is not known here.", Where(field), $"Write one of {field.Taken}.");
        return null;
    }

    /// <exception cref="InputProblemException">Something typed was wrong or missing; carries every fault.</exception>
    public void ThrowIfAny() => Problems.ThrowIfAny();

    /// <summary>Without the hyphens and spaces that people put into one word: water-based.</summary>
    private static string Bare(string text) => new([.. text.Where(char.IsLetterOrDigit)]);

    private string? Text(QuestionField field)
    {
        if (texts.TryGetValue(field.Name, out var text))
            return text;
        if (field.Required)
            Problems.Add($"{Where(field)} is missing: {field.Meaning}.", Where(field), $"Add it, for example {Where(field)} {field.Example} ({field.Taken}).");
        return null;
    }

    private bool InRange(QuantityField field, string text, double value)
    {
        if (field.Allows(value))
            return true;
        Problems.Add($"'{NearName.Shown(text.Trim())}' is out of range.", Where(field), $"Give {field.Range}{(field.Because is { } why ? $": {why}" : "")}.");
        return false;
    }

    /// <summary>A field as it is named to the person who typed it.</summary>
    public string Where(QuestionField field) => prefix + field.Name;
}
