using System.Globalization;
using Silkwright.Catalogue;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>One line of a catalogue's file.</summary>
/// <param name="row">The line.</param>
/// <param name="header">Where each column stands.</param>
/// <param name="width">Columns of the header, named or not.</param>
/// <param name="where">The file's name, for faults.</param>
/// <param name="problems">Takes the faults.</param>
internal sealed class CatalogueLine(SeparatedRow row, IReadOnlyDictionary<string, int> header, int width, string where, ProblemList problems)
{
    /// <summary>From 1.</summary>
    public int Number => row.Line;

    /// <summary>Its value is left empty: a question, not an entry.</summary>
    public bool NobodyKnows => string.IsNullOrWhiteSpace(Raw("value")) && !RunsOver;

    /// <summary>Where a column of it stands, in words.</summary>
    public string Place(string column) => $"{SeparatedText.Place(where, row.Line, header[column] + 1)} ({column})";

    /// <summary>What it says; none when a fault was added.</summary>
    /// <param name="grounds">The grounds taken.</param>
    public CatalogueEntry? Entry(IReadOnlyList<Ground> grounds)
    {
        if (RunsOver)
        {
            problems.Add($"This line has {row.Fields.Count} fields, and the header {width}.", SeparatedText.Place(where, row.Line, width + 1), "Put a text that holds the separator into quotes: \"technical sheet, page 2\".");
            return null;
        }

        var emulsion = Text("emulsion", InputLimits.LongestCatalogueName);
        var property = Text("property", InputLimits.LongestCatalogueName) is { } name ? CatalogueText.ReadProperty(name, Place("property"), problems) : null;
        var value = property is { } of && Text("value", InputLimits.LongestCatalogueName) is { } said
            ? CatalogueText.ReadValue(said, of.Property, Place("value"), problems)
            : null;
        var ground = Text("ground", InputLimits.LongestCatalogueName) is { } given ? GroundOf(given, grounds) : null;
        var source = Text("source", InputLimits.LongestCatalogueSource);
        var date = DateOf(Raw("date").Trim());
        return emulsion is not null && property is var (told, at) && value is { } known && ground is { } standing && source is not null
            ? new CatalogueEntry(emulsion, told, at, known, standing, source, date)
            : null;
    }

    /// <summary>Something stands right of the last column.</summary>
    private bool RunsOver => row.Fields.Skip(width).Any(text => !string.IsNullOrWhiteSpace(text));

    private string Raw(string column) => header[column] < row.Fields.Count ? row.Fields[header[column]] : "";

    /// <summary>A text that must be there.</summary>
    private string? Text(string column, int longest)
    {
        var text = Raw(column).Trim();
        if (text.Length == 0)
            problems.Add($"The {column} is missing.", Place(column), column == "source" ? "Say which sheet, test or person it comes from." : $"Fill in the {column}, or leave the value empty too.");
        else if (text.Length > longest)
            problems.Add($"This text is {text.Length} characters long.", Place(column), $"Write {longest} at most.");
        else if (text.Any(c => UnseenCharacters.Are(c) || char.IsSurrogate(c)))
            problems.Add("This text holds characters that cannot be seen.", Place(column), "Type it again.");
        else
            return text;
        return null;
    }

    private Ground? GroundOf(string text, IReadOnlyList<Ground> grounds)
    {
        var plain = text.Replace(" ", "", StringComparison.Ordinal);
        foreach (var known in grounds)
        {
            if (string.Equals(Names.Of(known), plain, StringComparison.OrdinalIgnoreCase))
                return known;
        }

        problems.Add($"'{text}' is no ground a value can stand on here.", Place("ground"), $"Write one of {string.Join(", ", grounds.Select(Names.Of))}.");
        return null;
    }

    private DateOnly? DateOf(string text)
    {
        if (text.Length == 0)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        problems.Add($"'{(text.Length > 40 ? text[..40] : text)}' is not a date.", Place("date"), "Write year-month-day, as in 2026-11-25, or leave it empty where nobody knows.");
        return null;
    }
}
