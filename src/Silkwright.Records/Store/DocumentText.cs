using System.Text.Json;

namespace Silkwright.Records.Store;

/// <summary>Documents as people write them: a byte-order mark, comments and a comma too many do no harm.</summary>
internal static class DocumentText
{
    private static readonly JsonDocumentOptions Lenient = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };

    /// <exception cref="JsonException">The text is not JSON.</exception>
    public static JsonDocument Parse(string text) => JsonDocument.Parse(text.TrimStart('\uFEFF'), Lenient);
}
