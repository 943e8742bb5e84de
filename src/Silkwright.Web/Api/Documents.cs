using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http.Features;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Web.Api;

/// <summary>Documents in and out.</summary>
internal static class Documents
{
    /// <summary>Longest document taken. A shop with ten thousand readings stays below half of it. [bytes]</summary>
    public const long MostBytes = 4L << 20;

    // A name given twice would leave open which of the two was meant.
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>A document, written as the shell writes it.</summary>
    /// <exception cref="InputProblemException">The values lead beyond any number.</exception>
    public static IResult Ok(JsonNode document)
    {
        try
        {
            return Results.Text(document.ToJsonString(DocumentJson.Options), "application/json");
        }
        catch (ArgumentException)
        {
            // JSON knows no infinity: some value was so small or so large that an answer overflowed.
            throw new InputProblemException(new Problem("These values lead to no finite answer.", "values", "Give values as they occur in a screen room."));
        }
    }

    /// <summary>The request's body as a JSON object.</summary>
    /// <exception cref="InputProblemException">It is not one.</exception>
    public static async Task<JsonObject> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = MostBytes;
        try
        {
            if (await JsonNode.ParseAsync(request.Body, documentOptions: Strict, cancellationToken: cancel) is JsonObject body)
            {
                // Texts are taken apart only when somebody asks for them; asked for all here, a broken one is told as a fault.
                _ = body.ToJsonString();
                return body;
            }
        }
        catch (InvalidOperationException)
        {
            throw new InputProblemException(new Problem("A text of the body holds half a character.", "body", "Write a character beyond U+FFFF as both halves: \\ud83d\\ude00."));
        }
        catch (JsonException fault)
        {
            throw new InputProblemException(new Problem(
                "The body is not JSON.", $"body, line {fault.LineNumber + 1}, column {fault.BytePositionInLine + 1}", "Mend the text there, then send it again."));
        }

        throw new InputProblemException(new Problem("The body is not a JSON object.", "body", "Start it with { and end it with }."));
    }

    /// <summary>The request's body as text in UTF-8.</summary>
    /// <exception cref="InputProblemException">It is none.</exception>
    public static Task<string> ReadTextAsync(HttpRequest request, CancellationToken cancel)
    {
        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = MostBytes;
        return ReadTextAsync(request.Body, cancel);
    }

    /// <summary>What was sent as text in UTF-8.</summary>
    /// <exception cref="InputProblemException">It is none.</exception>
    public static async Task<string> ReadTextAsync(Stream sent, CancellationToken cancel)
    {
        try
        {
            using var body = new StreamReader(sent, new UTF8Encoding(false, throwOnInvalidBytes: true));
            return await body.ReadToEndAsync(cancel);
        }
        catch (DecoderFallbackException)
        {
            throw new InputProblemException(new Problem("What was sent is not text in UTF-8.", "body", "Save it as UTF-8, then send it again."));
        }
    }

    /// <summary>Refuses fields that are not known: a name written wrong would be passed over, and what it asks with it.</summary>
    /// <exception cref="InputProblemException">Each such field, with the name most likely meant.</exception>
    public static void TakeOnly(JsonObject body, IReadOnlyList<string> known)
    {
        var problems = new ProblemList();
        foreach (var (name, _) in body.Where(field => !known.Contains(field.Key)))
            problems.Add($"There is no field '{NearName.Shown(name)}'.", "body", NearName.Remedy(name, known));
        problems.ThrowIfAny();
    }

    /// <summary>A text field of a body.</summary>
    public static string? Text(JsonObject body, string name) =>
        body[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;
}
