using System.Text.Json;
using System.Text.Json.Nodes;

namespace Silkwright.Cli.Tests.Schema;

/// <summary>
/// Holds a document to a schema of docs/schema: the part of JSON Schema that those use ($ref within the file, type, const,
/// enum, required, properties, additionalProperties, items, bounds). A field that the schema does not know is a fault too: it is not documented.
/// </summary>
internal sealed class SchemaCheck
{
    private static readonly HashSet<string> Known =
        ["$schema", "$ref", "$defs", "title", "description", "type", "const", "enum", "required", "properties", "additionalProperties", "items", "minimum", "maximum", "exclusiveMinimum"];

    private readonly JsonObject root;
    private readonly List<string> faults = [];

    private SchemaCheck(JsonObject root) => this.root = root;

    /// <summary>The faults of a document; none when it is as its schema says.</summary>
    public static IReadOnlyList<string> Faults(string schemaFile, JsonNode document)
    {
        var check = new SchemaCheck(JsonNode.Parse(File.ReadAllText(House.Of("docs", "schema", schemaFile)))!.AsObject());
        check.Visit(check.root, document, "$");
        return check.faults;
    }

    private void Visit(JsonObject schema, JsonNode? value, string at)
    {
        foreach (var word in schema.Select(field => field.Key).Where(word => !Known.Contains(word)))
            faults.Add($"{at}: the schema uses '{word}', which this check does not know");
        if (schema["$ref"] is { } reference)
        {
            Visit(root["$defs"]![reference.GetValue<string>()["#/$defs/".Length..]]!.AsObject(), value, at);
            return;
        }

        if (schema["const"] is { } only && !JsonNode.DeepEquals(only, value))
            faults.Add($"{at}: {value} is not {only}");
        if (schema["enum"] is JsonArray words && !words.Any(word => JsonNode.DeepEquals(word, value)))
            faults.Add($"{at}: {value} is none of {words.ToJsonString()}");
        if (schema["type"] is { } type)
            HasType(type, value, at);
        Bounds(schema, value, at);
        if (value is JsonObject fields)
            Fields(schema, fields, at);
        if (value is JsonArray entries && schema["items"] is JsonObject items)
        {
            for (var i = 0; i < entries.Count; i++)
                Visit(items, entries[i], $"{at}[{i}]");
        }
    }

    private void Fields(JsonObject schema, JsonObject fields, string at)
    {
        foreach (var name in (schema["required"] as JsonArray ?? []).Select(name => name!.GetValue<string>()).Where(name => !fields.ContainsKey(name)))
            faults.Add($"{at}.{name} is missing");
        foreach (var (name, value) in fields)
        {
            if ((schema["properties"]?[name] ?? schema["additionalProperties"]) is JsonObject known)
                Visit(known, value, $"{at}.{name}");
            else
                faults.Add($"{at}.{name} is not in the schema");
        }
    }

    private void HasType(JsonNode type, JsonNode? value, string at)
    {
        var allowed = type is JsonArray many ? [.. many.Select(one => one!.GetValue<string>())] : new[] { type.GetValue<string>() };
        var kind = value?.GetValueKind() switch
        {
            null or JsonValueKind.Null => "null",
            JsonValueKind.Object => "object",
            JsonValueKind.Array => "array",
            JsonValueKind.String => "string",
            JsonValueKind.True or JsonValueKind.False => "boolean",
            _ => "number",
        };
        if (!allowed.Contains(kind) && !(kind == "number" && allowed.Contains("integer") && double.IsInteger(value!.GetValue<double>())))
            faults.Add($"{at} is {kind}, not {string.Join(" or ", allowed)}");
    }

    private void Bounds(JsonObject schema, JsonNode? value, string at)
    {
        if (value?.GetValueKind() != JsonValueKind.Number)
            return;
        var number = value.GetValue<double>();
        if (!double.IsFinite(number)
            || number < (schema["minimum"]?.GetValue<double>() ?? double.NegativeInfinity)
            || number > (schema["maximum"]?.GetValue<double>() ?? double.PositiveInfinity)
            || number <= (schema["exclusiveMinimum"]?.GetValue<double>() ?? double.NegativeInfinity))
            faults.Add($"{at} = {number} is out of bounds");
    }
}
