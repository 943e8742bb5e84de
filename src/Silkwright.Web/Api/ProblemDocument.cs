using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.WebUtilities;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Web.Api;

/// <summary>RFC 9457 problem details, with every fault beside: what, where, and what to do.</summary>
internal static class ProblemDocument
{
    /// <summary>An address is told back no longer than this. [characters]</summary>
    private const int LongestAddress = 200;

    public static JsonObject Of(int status, IReadOnlyList<Problem> problems) => new()
    {
        ["type"] = "about:blank",
        ["title"] = problems.Count == 1 ? problems[0].What : $"{problems.Count} things are wrong with this request.",
        ["status"] = status,
        ["problems"] = new JsonArray([.. problems.Select(p => new JsonObject { ["what"] = p.What, ["where"] = p.Where, ["remedy"] = p.Remedy })]),
    };

    /// <summary>An answer that nothing is known by this id.</summary>
    public static IResult Unknown(string what, string where, string remedy) => Results.Text(
        Of(StatusCodes.Status404NotFound, [new Problem(what, Cut(where), remedy)]).ToJsonString(DocumentJson.Options),
        "application/problem+json", statusCode: StatusCodes.Status404NotFound);

    /// <summary>Answers with the problems.</summary>
    public static Task WriteAsync(HttpResponse response, int status, IReadOnlyList<Problem> problems)
    {
        response.StatusCode = status;
        response.ContentType = "application/problem+json";
        return response.WriteAsync(Of(status, problems).ToJsonString(DocumentJson.Options));
    }

    /// <summary>Puts words to a bare status, as routing gives it.</summary>
    public static Task WriteBareAsync(HttpContext context)
    {
        var (request, response) = (context.Request, context.Response);
        var where = Cut($"{request.Method} {request.Path}");
        var words = response.StatusCode switch
        {
            StatusCodes.Status404NotFound => new Problem("There is nothing at this address.", where, "See /openapi/v1.json for what there is."),
            StatusCodes.Status405MethodNotAllowed => new Problem("This address does not answer that method.", where, $"Use {response.Headers.Allow}."),
            StatusCodes.Status415UnsupportedMediaType => new Problem("The body is not of the kind read here.", where, "Send it with the Content-Type that /openapi/v1.json names for this address: text/csv for a catalogue, application/json for most others."),
            var other => new Problem(
                string.Create(CultureInfo.InvariantCulture, $"{other} {ReasonPhrases.GetReasonPhrase(other)}"), where, "Check the request against /openapi/v1.json, then send it again."),
        };
        return WriteAsync(response, response.StatusCode, [words]);
    }

    private static string Cut(string address) => address.Length <= LongestAddress ? address : $"{address[..LongestAddress]}…";
}
