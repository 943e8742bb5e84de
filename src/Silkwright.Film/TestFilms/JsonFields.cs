using System.Text.Json;
using Silkwright.Estimates;

namespace Silkwright.Film.TestFilms;

/// <summary>The fields of one JSON object, asked for by name; what nobody asked for is a fault.</summary>
internal sealed class JsonFields
{
    private readonly Dictionary<string, JsonElement> fields = [];
    private readonly HashSet<string> asked = [];
    private readonly ProblemList problems;

    public JsonFields(JsonElement element, string where, ProblemList problems)
    {
        Where = where;
        this.problems = problems;
        if (element.ValueKind != JsonValueKind.Object)
        {
            problems.Add("An object in braces is wanted.", where, "Write { ... }.");
            return;
        }

        foreach (var field in element.EnumerateObject())
            fields[field.Name] = field.Value;
    }

    public string Where { get; }

    public bool Has(string name) => fields.ContainsKey(name);

    public double? Number(string name, bool required = true)
    {
        if (!Take(name, required, out var value))
            return null;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && double.IsFinite(number))
            return number;
        problems.Add($"{name} is not a number.", Where, "Write a number without a unit.");
        return null;
    }

    public string? Text(string name, bool required = true)
    {
        if (!Take(name, required, out var value))
            return null;
        if (value.ValueKind == JsonValueKind.String)
            return value.GetString();
        problems.Add($"{name} is not text.", Where, "Write it in quotation marks.");
        return null;
    }

    public bool Flag(string name) => Take(name, false, out var value) && value.ValueKind == JsonValueKind.True;

    /// <summary>Numbers of a list; none, with a problem told, unless there are as many as wanted (0: any even number of 6 or more).</summary>
    public double[]? Numbers(string name, int count, bool required = true)
    {
        if (!Take(name, required, out var value))
            return null;
        var all = value.ValueKind == JsonValueKind.Array
            ? value.EnumerateArray().Select(e => e.ValueKind == JsonValueKind.Number ? e.GetDouble() : double.NaN).ToArray()
            : [];
        if (all.All(double.IsFinite) && (count > 0 ? all.Length == count : all.Length >= 6 && all.Length % 2 == 0))
            return all;
        problems.Add($"{name} is not a list of {(count > 0 ? count : "6 or more, in pairs,")} numbers.", Where, "Write [x, y, ...] in mm.");
        return null;
    }

    public JsonFields? Object(string name) => Take(name, false, out var value) ? new JsonFields(value, $"{Where}, {name}", problems) : null;

    public IEnumerable<JsonElement> Items(string name)
    {
        if (!Take(name, true, out var value))
            return [];
        if (value.ValueKind == JsonValueKind.Array)
            return value.EnumerateArray();
        problems.Add($"{name} is not a list.", Where, "Write [ ... ].");
        return [];
    }

    public IEnumerable<(string Name, JsonElement Value)> Members(string name)
    {
        if (!Take(name, false, out var value))
            return [];
        if (value.ValueKind == JsonValueKind.Object)
            return value.EnumerateObject().Select(p => (p.Name, p.Value));
        problems.Add($"{name} is not an object.", Where, "Write { ... }.");
        return [];
    }

    /// <summary>Tells of every field that was never asked for.</summary>
    public void RefuseOthers(string remedy)
    {
        foreach (var name in fields.Keys.Where(k => !asked.Contains(k)))
            problems.Add($"{name} is not a field known here.", Where, remedy);
    }

    private bool Take(string name, bool required, out JsonElement value)
    {
        _ = asked.Add(name);
        var there = fields.TryGetValue(name, out value);
        if (!there && required)
            problems.Add($"{name} is missing.", Where, $"Add {name}.");
        return there;
    }
}
