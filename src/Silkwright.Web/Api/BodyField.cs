using System.Text.Json;

namespace Silkwright.Web.Api;

/// <summary>A field that a request's body may have, and the kind of what it holds.</summary>
/// <param name="Name">As it is written.</param>
/// <param name="Wanted">The kind in words, with its article.</param>
/// <param name="Remedy">How to write it.</param>
internal sealed record BodyField(string Name, string Wanted, string Remedy)
{
    private JsonValueKind[] kinds = [];

    /// <summary>What an object may have in it, where that is told here and not by a reader of its own.</summary>
    public IReadOnlyList<BodyField> Fields { get; private init; } = [];

    public static BodyField Text(string name) => new(name, "a text", "Write it in quotes.") { kinds = [JsonValueKind.String] };

    public static BodyField Number(string name) => new(name, "a number", "Write the number alone, without quotes, with a point for decimals.") { kinds = [JsonValueKind.Number] };

    public static BodyField YesNo(string name) => new(name, "true or false", "Write true or false without quotes.") { kinds = [JsonValueKind.True, JsonValueKind.False] };

    public static BodyField Object(string name, params IReadOnlyList<BodyField> fields) =>
        new(name, "an object", "Write its fields in { }, each with its name.") { kinds = [JsonValueKind.Object], Fields = fields };

    public static BodyField List(string name) => new(name, "a list", "Write it in [ ].") { kinds = [JsonValueKind.Array] };

    /// <summary>A list, or one document alone.</summary>
    public static BodyField Documents(string name) => new(name, "a list of documents", "Write them in [ ].") { kinds = [JsonValueKind.Array, JsonValueKind.Object] };

    public bool Takes(JsonValueKind kind) => kinds.Contains(kind);
}
