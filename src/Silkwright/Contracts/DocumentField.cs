using System.Globalization;
using System.Text.Json;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>
/// One place in a JSON document, with its path for messages. Reading from it never throws: faults go to the list that the
/// whole document shares, so that all are told at once, and a stand-in value is returned.
/// </summary>
internal readonly struct DocumentField(JsonElement? element, string file, string pointer, ProblemList problems)
{
    /// <summary>The field is there and is not null.</summary>
    public bool IsThere => element is { ValueKind: not (JsonValueKind.Null or JsonValueKind.Undefined) };

    public string Path => pointer.Length == 0 ? file : $"{file}: {pointer}";

    /// <summary>The document's root; a text that is not JSON is a fault, and then nothing is there.</summary>
    public static DocumentField Root(string json, string where, ProblemList problems)
    {
        try
        {
            var options = new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };
            using var document = JsonDocument.Parse(json.TrimStart('\uFEFF'), options);
            var root = document.RootElement.Clone();
            if (root.ValueKind == JsonValueKind.Object)
                return new(root, where, "", problems);
            problems.Add("This is not a JSON object.", where, "Start the file with { and name its fields.");
        }
        catch (JsonException fault)
        {
            var line = (fault.LineNumber ?? 0) + 1;
            var column = (fault.BytePositionInLine ?? 0) + 1;
            problems.Add(
                "This is not readable as JSON.",
                string.Create(CultureInfo.InvariantCulture, $"{where}, line {line}, column {column}"),
                "Look for a missing comma, quote or bracket just before that place.");
        }

        return new(null, where, "", problems);
    }

    public DocumentField this[string name]
    {
        get
        {
            var child = pointer.Length == 0 ? name : $"{pointer}.{name}";
            return element is { ValueKind: JsonValueKind.Object } parent && parent.TryGetProperty(name, out var value)
                ? new(value, file, child, problems)
                : new(null, file, child, problems);
        }
    }

    /// <summary>The entries of a list; none where it is missing.</summary>
    public IReadOnlyList<DocumentField> Entries()
    {
        if (!IsThere)
            return [];
        if (element!.Value.ValueKind != JsonValueKind.Array)
        {
            Wrong("a list", "Write it in [ ].");
            return [];
        }

        var (at, outer, list) = (file, pointer, problems);
        return [.. element.Value.EnumerateArray().Select((entry, i) => new DocumentField(entry, at, $"{outer}[{i}]", list))];
    }

    public string? Text()
    {
        if (!IsThere)
            return null;
        if (element!.Value.ValueKind == JsonValueKind.String)
            return element.Value.GetString();
        Wrong("a text", "Write it in quotes.");
        return null;
    }

    public string RequiredText()
    {
        var text = Text();
        if (!string.IsNullOrWhiteSpace(text))
            return text;
        if (!IsThere || text is not null)
            Missing("a text in quotes");
        return "";
    }

    /// <summary>A number within bounds, ends included.</summary>
    /// <param name="unit">For the message.</param>
    /// <param name="least">Least that makes sense.</param>
    /// <param name="most">Most that makes sense.</param>
    public double? Number(string unit, double least, double most)
    {
        if (!IsThere)
            return null;
        if (element!.Value.ValueKind != JsonValueKind.Number || !element.Value.TryGetDouble(out var number))
        {
            Wrong($"a number [{unit}]", "Write the number alone, with a point for decimals; the unit is in the field's name.");
            return null;
        }

        if (number >= least && number <= most)
            return number;
        problems.Add(
            string.Create(CultureInfo.InvariantCulture, $"{number:0.######} is outside {least:0.######} to {most:0.######} [{unit}]."),
            Path,
            "Check the unit and the figure.");
        return null;
    }

    public double RequiredNumber(string unit, double least, double most)
    {
        if (!IsThere)
            Missing($"a number [{unit}]");
        return Number(unit, least, most) ?? least;
    }

    public long RequiredCount(long least, long most)
    {
        var number = RequiredNumber("count", least, most);
        if (number == Math.Floor(number))
            return (long)number;
        problems.Add(string.Create(CultureInfo.InvariantCulture, $"{number} is not a whole number."), Path, "Write a whole number.");
        return least;
    }

    public int? Count(int least, int most)
    {
        if (!IsThere)
            return null;
        return (int)RequiredCount(least, most);
    }

    public bool? YesNo()
    {
        if (!IsThere)
            return null;
        if (element!.Value.ValueKind is JsonValueKind.True or JsonValueKind.False)
            return element.Value.GetBoolean();
        Wrong("true or false", "Write true or false without quotes.");
        return null;
    }

    public DateOnly? Date()
    {
        var text = Text();
        if (text is null)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        problems.Add($"'{text}' is not a date.", Path, "Write year-month-day, as in 2026-11-25.");
        return null;
    }

    /// <summary>One of an enumeration's names, written the JSON way (first letter small).</summary>
    public T? Choice<T>()
        where T : struct, Enum
    {
        var text = Text();
        if (text is null)
            return null;
        foreach (var value in Enum.GetValues<T>())
        {
            if (string.Equals(Names.Of(value), text, StringComparison.OrdinalIgnoreCase))
                return value;
        }

        problems.Add($"'{text}' is not known here.", Path, $"Use one of: {string.Join(", ", Names.All<T>())}.");
        return null;
    }

    public T RequiredChoice<T>()
        where T : struct, Enum
    {
        if (!IsThere)
            Missing($"one of: {string.Join(", ", Names.All<T>())}");
        return Choice<T>() ?? default;
    }

    public void Missing(string wanted) => problems.Add("This is needed and missing.", Path, $"Give {wanted}.");

    private void Wrong(string wanted, string remedy) => problems.Add($"This must be {wanted}.", Path, remedy);
}
