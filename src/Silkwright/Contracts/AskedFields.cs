using System.Text.Json;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What a reader asks for at one place of a document, and so what is known there; one for all entries of a list.</summary>
internal sealed class AskedFields
{
    private readonly Dictionary<string, AskedFields> fields = [];
    private AskedFields? entries;

    /// <summary>What is asked of the entries of a list, or of a map whose names are somebody's own.</summary>
    public AskedFields Entries => entries ??= new();

    public AskedFields this[string name]
    {
        get
        {
            if (!fields.TryGetValue(name, out var asked))
                fields.Add(name, asked = new());
            return asked;
        }
    }

    /// <summary>
    /// Tells fields that nobody asked for and that look like one which was asked for and is not there: a name written wrong would be
    /// passed over, and what it says with it. All others are somebody's own.
    /// </summary>
    public void RefuseSlips(JsonElement here, string file, string pointer, ProblemList problems)
    {
        if (here.ValueKind == JsonValueKind.Array)
        {
            foreach (var (i, entry) in here.EnumerateArray().Index())
                Entries.RefuseSlips(entry, file, $"{pointer}[{i}]", problems);
        }
        else if (here.ValueKind == JsonValueKind.Object && fields.Count > 0)
        {
            var absent = fields.Keys.Where(name => !here.TryGetProperty(name, out _)).ToArray();
            foreach (var field in here.EnumerateObject())
            {
                if (fields.TryGetValue(field.Name, out var asked))
                    asked.RefuseSlips(field.Value, file, pointer.Length == 0 ? field.Name : $"{pointer}.{field.Name}", problems);
                else if (NearName.Of(field.Name, absent) is not null)
                    problems.Add($"There is no field '{NearName.Shown(field.Name)}'.", pointer.Length == 0 ? file : $"{file}: {pointer}", NearName.Remedy(field.Name, absent));
            }
        }
    }
}
