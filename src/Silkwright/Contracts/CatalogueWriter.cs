using System.Globalization;
using System.Text;
using Silkwright.Catalogue;

namespace Silkwright.Contracts;

/// <summary>Writes a catalogue as <see cref="CatalogueReader"/> reads it, the same text for the same values.</summary>
public static class CatalogueWriter
{
    private static readonly char[] NeedsQuotes = [',', ';', '"', '\r', '\n'];

    /// <summary>The text, separated by commas, every number in the unit its property's name ends with.</summary>
    public static string Write(EmulsionCatalogue catalogue)
    {
        var text = new StringBuilder().Append(string.Join(',', CatalogueReader.Columns)).Append('\n');
        foreach (var line in catalogue.Sheets.SelectMany(sheet => sheet.Lines))
        {
            foreach (var entry in line.Others.Select(other => other.Entry).Prepend(line.Used))
                _ = text.AppendJoin(',', Fields(entry).Select(Quoted)).Append('\n');
        }

        return text.ToString();
    }

    private static string[] Fields(CatalogueEntry entry) =>
    [
        entry.Emulsion,
        CatalogueText.Exactly(entry.Property, entry.At),
        entry.Value.Number?.ToString("R", CultureInfo.InvariantCulture) ?? entry.Value.Word!,
        Names.Of(entry.Ground),
        entry.Source,
        entry.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
    ];

    private static string Quoted(string field) =>
        field.IndexOfAny(NeedsQuotes) < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
