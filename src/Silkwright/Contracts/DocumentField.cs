using System.Globalization;
using System.Text.Json;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>
/// One place in a JSON document, with its path for messages. Reading from it never throws: faults go to the list that the
/// whole document shares, so that all are told at once, and a stand-in value is returned.
/// </summary>
internal readonly struct DocumentField(JsonElement? element, string file, string pointer, AskedFields asked, ProblemList problems, bool below = false)
{
    /// <summary>Longer texts are a paste gone wrong. [characters]</summary>
    private const int LongestText = 2000;

    /// <summary>More entries are no list that somebody keeps.</summary>
    private const int MostEntries = 10_000;

    /// <summary>The field is there and is not null.</summary>
    public bool IsThere => element is { ValueKind: not (JsonValueKind.Null or JsonValueKind.Undefined) };

    public string Path => pointer.Length == 0 ? file : $"{file}: {pointer}";

    /// <summary>The document's root; a text that is not JSON is a fault, and then nothing is there.</summary>
    public static DocumentField Root(string json, string where, ProblemList problems)
    {
        try
        {
            var options = new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, AllowDuplicateProperties = false };
            using var document = JsonDocument.Parse(json.TrimStart('\uFEFF'), options);
            var root = document.RootElement.Clone();
            if (root.ValueKind == JsonValueKind.Object)
                return new(root, where, "", new AskedFields(), problems);
            problems.Add("This is not a JSON object.", where, "Start the file with { and name its fields.");
        }
        catch (JsonException fault)
        {
            problems.AddRange([Unreadable(fault, where)]);
        }
        catch (InvalidOperationException)
        {
            // Thrown by the look for names written twice.
            problems.Add("A field's name holds half a character.", where, "Look for a lone \\ud8.. to \\udf.. escape and type that name again.");
        }

        return new(null, where, "", new AskedFields(), problems);
    }

    private static Problem Unreadable(JsonException fault, string where)
    {
        // The parser gives no line for a name that is written twice, only its message.
        if (fault.LineNumber is not { } line)
            return new("A field is written twice in one object.", where, "Take one of the two out: " + fault.Message);
        return new(
            "This is not readable as JSON.",
            string.Create(CultureInfo.InvariantCulture, $"{where}, line {line + 1}, column {(fault.BytePositionInLine ?? 0) + 1}"),
            "Look for a missing comma, quote or bracket just before that place.");
    }

    public DocumentField this[string name]
    {
        get
        {
            var child = pointer.Length == 0 ? name : $"{pointer}.{name}";
            if (element is { ValueKind: JsonValueKind.Object } parent)
                return new(parent.TryGetProperty(name, out var value) ? value : null, file, child, asked[name], problems);
            if (IsThere)
                WrongOnce("an object", "Write its fields in { }, each with its name.");
            return new(null, file, child, asked[name], problems, below: IsThere || below);
        }
    }

    /// <summary>Tells fields that are not known here: a name written wrong would be passed over, and what it asks with it.</summary>
    /// <param name="known">Every name that means something.</param>
    public void TakeOnly(IReadOnlyList<string> known)
    {
        if (element is not { ValueKind: JsonValueKind.Object } here)
            return;
        foreach (var field in here.EnumerateObject().Where(field => !known.Contains(field.Name)))
            problems.Add($"There is no field '{NearName.Shown(field.Name)}'.", Path, NearName.Remedy(field.Name, known));
    }

    /// <summary>Once all is read: tells fields here and below that nobody asked for and that look like one written wrong.</summary>
    public void RefuseSlips()
    {
        if (element is { } here)
            asked.RefuseSlips(here, file, pointer, problems);
    }

    /// <summary>The entries of a list; none where it is missing.</summary>
    /// <param name="most">How many make sense.</param>
    public IReadOnlyList<DocumentField> Entries(int most = MostEntries)
    {
        if (!IsThere)
            return [];
        if (element!.Value.ValueKind != JsonValueKind.Array)
        {
            WrongOnce("a list", "Write it in [ ].");
            return [];
        }

        if (element.Value.GetArrayLength() is var count && count > most)
        {
            problems.AddOnce($"This list has {count} entries.", Path, $"List {most} at most.");
            return [];
        }

        var (at, outer, entries, list) = (file, pointer, asked.Entries, problems);
        return [.. element.Value.EnumerateArray().Select((entry, i) => new DocumentField(entry, at, $"{outer}[{i}]", entries, list))];
    }

    public string? Text()
    {
        if (!IsThere)
            return null;
        if (element!.Value.ValueKind != JsonValueKind.String)
        {
            Wrong("a text", "Write it in quotes.");
            return null;
        }

        var text = Decoded(element.Value);
        if (text is null || text.Any(UnseenCharacters.Are))
            problems.Add("This text holds characters that cannot be seen.", Path, "Type it again: letters, digits, spaces and marks alone.");
        else if (text.Length > LongestText)
            problems.Add($"This text is {text.Length} characters long.", Path, $"Write {LongestText} at most.");
        else
            return text;
        return null;
    }

    /// <summary>The text; none where an escape in it stands for half a character.</summary>
    private static string? Decoded(JsonElement text)
    {
        try
        {
            return text.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    public string RequiredText()
    {
        var text = Text();
        if (!string.IsNullOrWhiteSpace(text))
            return text;
        if (!IsThere || text is not null)
            Missing("a text in quotes that says something");
        return "";
    }

    /// <summary>A name that may be left out, and says something where it is there.</summary>
    public string? Name(string remedy)
    {
        var text = Text();
        if (text is null || !string.IsNullOrWhiteSpace(text))
            return text;
        problems.Add("This name is empty.", Path, remedy);
        return null;
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
            $"{Figures.AsGiven(number)} is outside {Figures.AsGiven(least)} to {Figures.AsGiven(most)} [{unit}].",
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

    /// <summary>A number, or { value, low, high } with the ground if it is known; without, the weakest is taken.</summary>
    public (double Value, Estimate? Range) RequiredNumberOrRange(string unit, double least, double most)
    {
        if (element is not { ValueKind: JsonValueKind.Object })
            return (RequiredNumber(unit, least, most), null);
        var (value, low, high) = (this["value"].RequiredNumber(unit, least, most), this["low"].RequiredNumber(unit, least, most), this["high"].RequiredNumber(unit, least, most));
        if (low <= value && value <= high)
            return (value, new Estimate(value, low, high, this["ground"].Choice<Ground>() ?? Ground.CommonPractice));
        problems.Add("The value is not between low and high.", Path, "Give the lowest and the highest it may be, and the value between them.");
        return (value, null);
    }

    /// <summary>An object's numbers by name, within bounds. Empty where it is missing.</summary>
    /// <param name="unit">For the message.</param>
    /// <param name="least">Least that makes sense.</param>
    /// <param name="most">Most that makes sense.</param>
    /// <param name="ranges">Where given, a number may also be { value, low, high }, which comes to stand in here.</param>
    public IReadOnlyDictionary<string, double> Numbers(string unit, double least, double most, IDictionary<string, Estimate>? ranges = null)
    {
        var numbers = new Dictionary<string, double>();
        if (!IsThere)
            return numbers;
        if (element!.Value.ValueKind != JsonValueKind.Object)
        {
            Wrong("numbers by name", "Write it as { \"name\": number }.");
            return numbers;
        }

        numbers.EnsureCapacity(element.Value.GetPropertyCount());
        foreach (var entry in element.Value.EnumerateObject())
        {
            if (entry.Value.ValueKind == JsonValueKind.Number && entry.Value.TryGetDouble(out var number) && number >= least && number <= most)
                numbers[entry.Name] = number;
            else
                Keep(entry.Name, new(entry.Value, file, $"{pointer}.{entry.Name}", asked.Entries, problems), ranges is null);
        }

        return numbers;

        void Keep(string name, DocumentField field, bool single)
        {
            var (value, range) = single ? (field.RequiredNumber(unit, least, most), null) : field.RequiredNumberOrRange(unit, least, most);
            numbers[name] = value;
            if (range is not null)
                ranges![name] = range;
        }
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

    /// <summary>Tells that the field is needed; not where its parent is already told to be of the wrong kind.</summary>
    public void Missing(string wanted)
    {
        if (!below)
            problems.Add("This is needed and missing.", Path, $"Give {wanted}.");
    }

    private void Wrong(string wanted, string remedy) => problems.Add($"This must be {wanted}.", Path, remedy);

    /// <summary>For what is looked at once for every field in it.</summary>
    private void WrongOnce(string wanted, string remedy) => problems.AddOnce($"This must be {wanted}.", Path, remedy);
}
