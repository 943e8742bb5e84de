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
        try
        {
            if (JsonNode.Parse(await ReadTextAsync(request, cancel), documentOptions: Strict) is JsonObject body)
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
        using var bytes = new MemoryStream();
        await sent.CopyToAsync(bytes, cancel);
        return SentText.Of(bytes.GetBuffer().AsSpan(0, (int)bytes.Length), "body");
    }

    /// <summary>Refuses fields that are not known, which would be passed over with what they ask, and those that hold something of another kind.</summary>
    /// <param name="body">The body.</param>
    /// <param name="known">Every field that means something.</param>
    /// <exception cref="InputProblemException">Each such field, with the name most likely meant or the kind wanted.</exception>
    public static void TakeOnly(JsonObject body, params IReadOnlyList<BodyField> known)
    {
        var problems = new ProblemList();
        TakeOnly(body, known, "", problems);
        problems.ThrowIfAny();
    }

    private static void TakeOnly(JsonObject here, IReadOnlyList<BodyField> known, string above, ProblemList problems)
    {
        foreach (var (name, value) in here)
        {
            if (known.FirstOrDefault(field => field.Name == name) is not { } field)
                problems.Add($"There is no field '{NearName.Shown(name)}'.", above.Length == 0 ? "body" : above.TrimEnd('.'), NearName.Remedy(name, [.. known.Select(one => one.Name)]));
            else if (value is not null && !field.Takes(value.GetValueKind()))
                problems.Add($"This must be {field.Wanted}.", $"{above}{name}", field.Remedy);
            else if (value is JsonObject inner && field.Fields.Count > 0)
                TakeOnly(inner, field.Fields, $"{above}{name}.", problems);
        }
    }

    /// <summary>A text field of a body.</summary>
    public static string? Text(JsonObject body, string name) =>
        body[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;
}
