using System.Text.Json;
using System.Text.Json.Serialization;

namespace Silkwright.Records.Screens;

/// <summary>Facts as JSON: the kind first, names in camel case, nothing that is missing.</summary>
public static class FactJson
{
    internal static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase), new StrokesJson() },
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        AllowOutOfOrderMetadataProperties = true,
    };

    public static string Write(ScreenFact fact) => JsonSerializer.Serialize(fact, Options);

    /// <summary>Every field that a fact of this kind may have.</summary>
    public static IReadOnlyList<string> FieldsOf(ScreenFact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return [.. Options.GetTypeInfo(fact.GetType()).Properties.Select(property => property.Name).Prepend("kind").Distinct()];
    }

    /// <exception cref="JsonException">The text is not a fact.</exception>
    public static ScreenFact Read(string text) =>
        JsonSerializer.Deserialize<ScreenFact>(text, Options) ?? throw new JsonException("null is not a fact");
}
