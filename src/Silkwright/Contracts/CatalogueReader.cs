using System.Globalization;
using Silkwright.Catalogue;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Reads a catalogue of emulsions from separated text: docs/engines/catalogue.md, the file.</summary>
public static class CatalogueReader
{
    /// <summary>The columns, in the order the template has them. Any order is read, and further columns are passed over.</summary>
    public static readonly IReadOnlyList<string> Columns = ["emulsion", "property", "value", "ground", "source", "date"];

    private static readonly Ground[] Grounds = [Ground.MeasuredHere, Ground.MeasuredElsewhere, Ground.Datasheet, Ground.CommonPractice];

    /// <param name="text">The file's text.</param>
    /// <param name="where">The file's name, for messages.</param>
    /// <exception cref="InputProblemException">Every fault of the file, with line and column.</exception>
    public static EmulsionCatalogue Read(string text, string where)
    {
        var problems = new ProblemList();
        var rows = SeparatedText.Read(text, where, problems);
        if (rows.Count == 0)
            problems.Add("There is no catalogue in it.", where, $"Begin with the header {string.Join(',', Columns)}; `silkwright catalogue template` writes one to fill in.");
        else if (rows.Count - 1 > InputLimits.MostCatalogueLines)
            problems.Add($"It has {rows.Count - 1} lines.", where, $"Give {InputLimits.MostCatalogueLines} at most: what is old or twice the same can go.");
        problems.ThrowIfAny();
        var header = SeparatedText.Header(rows[0], Columns, where, problems);
        problems.ThrowIfAny();

        var lines = rows.Skip(1).Select(row => new CatalogueLine(row, header, rows[0].Fields.Count, where, problems)).Where(line => !line.NobodyKnows).ToArray();
        (CatalogueLine Line, CatalogueEntry Entry)[] told = [.. lines.Select(line => (line, line.Entry(Grounds))).Where(pair => pair.Item2 is not null)!];
        Twice(told, problems);
        Bands(told, problems);
        if (lines.Length == 0)
            problems.Add("No value is filled in.", where, "Fill in what is known; a line without a value stays a question.");
        var catalogue = new EmulsionCatalogue(told.Select(pair => pair.Entry));
        if (catalogue.Sheets.Count > InputLimits.MostCatalogueEmulsions)
            problems.Add($"It names {catalogue.Sheets.Count} emulsions.", where, $"Give {InputLimits.MostCatalogueEmulsions} at most.");
        problems.ThrowIfAny();
        return catalogue;
    }

    /// <summary>One source says one thing once.</summary>
    private static void Twice((CatalogueLine Line, CatalogueEntry Entry)[] told, ProblemList problems)
    {
        foreach (var same in told.GroupBy(pair => (
            pair.Entry.Emulsion.ToUpperInvariant(), pair.Entry.Property.Name, pair.Entry.At, pair.Entry.Ground, pair.Entry.Source.ToUpperInvariant(), pair.Entry.Date)))
        {
            foreach (var (line, entry) in same.Skip(1))
            {
                problems.Add(
                    $"Line {same.First().Line.Number} has already told {CatalogueText.Of(entry.Property, entry.At)} of {entry.Emulsion} from this source and date{(same.First().Entry.Value == entry.Value ? "" : ", and otherwise")}.",
                    line.Place("value"), "Keep one of the two, or name the sources apart.");
            }
        }
    }

    /// <summary>A band of light has its short end first.</summary>
    private static void Bands((CatalogueLine Line, CatalogueEntry Entry)[] told, ProblemList problems)
    {
        foreach (var source in told.GroupBy(pair => (pair.Entry.Emulsion.ToUpperInvariant(), pair.Entry.Ground, pair.Entry.Source.ToUpperInvariant(), pair.Entry.Date)))
        {
            var from = source.FirstOrDefault(pair => pair.Entry.Property == CatalogueProperties.SensitiveFrom).Entry;
            var (line, to) = source.FirstOrDefault(pair => pair.Entry.Property == CatalogueProperties.SensitiveTo);
            if (from is not null && to is not null && from.Value.Number >= to.Value.Number)
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"The band of {to.Emulsion} would end at {to.Value.Number} nm, before it begins."), line.Place("value"), "sensitiveFromNm is the shorter wavelength.");
        }
    }
}
