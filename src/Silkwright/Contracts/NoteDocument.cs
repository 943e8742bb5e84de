using System.Text.Json.Nodes;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Notes as every document writes them.</summary>
public static class NoteDocument
{
    /// <summary><c>[{text, ground?}]</c>; a ground only where something was assumed.</summary>
    public static JsonArray Of(IEnumerable<Note> notes) => [.. notes.Select(Of)];

    private static JsonNode Of(Note note)
    {
        var document = new JsonObject { ["text"] = note.Text };
        if (note.Ground is { } ground)
            document["ground"] = Word.Of(ground);
        return document;
    }
}
