using System.Text.Json;
using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Web.Api;

/// <summary>Documents in and out.</summary>
internal static class Documents
{
    /// <summary>A document, written as the shell writes it.</summary>
    public static IResult Ok(JsonNode document) => Results.Text(document.ToJsonString(DocumentJson.Options), "application/json");

    /// <summary>The request's body as a JSON object.</summary>
    /// <exception cref="InputProblemException">It is not one.</exception>
    public static async Task<JsonObject> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        try
        {
            if (await JsonNode.ParseAsync(request.Body, cancellationToken: cancel) is JsonObject body)
                return body;
        }
        catch (JsonException fault)
        {
            throw new InputProblemException(new Problem(
                "The body is not JSON.", $"body, line {fault.LineNumber + 1}, column {fault.BytePositionInLine + 1}", "Mend the text there, then send it again."));
        }

        throw new InputProblemException(new Problem("The body is not a JSON object.", "body", "Start it with { and end it with }."));
    }

    /// <summary>A text field of a body.</summary>
    public static string? Text(JsonObject body, string name) =>
        body[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;
}
