using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Antiforgery;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Web;

/// <summary>Turns what goes wrong into an answer that says what, where and what to do; never a stack trace.</summary>
public sealed class Faults(RequestDelegate next, ILogger<Faults> log)
{
    private const string PageFault = "/fault";

    public async Task InvokeAsync(HttpContext context)
    {
        if (context.Request.ContentLength > SilkwrightWeb.MostUploadBytes)
        {
            await AnswerAsync(context, 413, [TooLarge]);
            return;
        }

        try
        {
            await next(context);
        }
        catch (InputProblemException fault) when (!context.Response.HasStarted)
        {
            await AnswerAsync(context, 400, fault.Problems);
        }
        catch (BadHttpRequestException fault) when (!context.Response.HasStarted)
        {
            await AnswerAsync(context, fault.StatusCode, [fault.StatusCode == 413 ? TooLarge : new Problem(
                "The request cannot be read.", context.Request.Path, "Check its form against /openapi/v1.json, then send it again.")]);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // nobody waits for the answer any more
        }
        catch (InvalidOperationException) when (context.Features.Get<IAntiforgeryValidationFeature>() is { IsValid: false } && !context.Response.HasStarted)
        {
            await AnswerAsync(context, 400, [new Problem("This form is out of date.", context.Request.Path, "Open its page again and send it once more.")]);
        }
#pragma warning disable CA1031 // The last catch of the program: whatever it is goes to the log, and a plain answer to the person.
        catch (Exception fault) when (!context.Response.HasStarted)
#pragma warning restore CA1031
        {
            log.LogError(fault, "{Method} {Path} failed", context.Request.Method, context.Request.Path);
            await AnswerAsync(context, 500, [new Problem(
                "Something failed here, not with you.", context.Request.Path, "Try once more; if it stays, the program's log says what happened.")]);
        }
    }

    private static Problem TooLarge { get; } = new(
        $"The upload is larger than {SilkwrightWeb.MostUploadBytes >> 20} MB.",
        "upload",
        "Export the film as 1-bit TIFF with CCITT G4 compression, and give a job's films one at a time.");

    private async Task AnswerAsync(HttpContext context, int status, IReadOnlyList<Problem> problems)
    {
        context.Response.Clear();
        PageHeaders.Set(context.Response.Headers);
        context.Response.StatusCode = status;
        if (context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal))
        {
            context.Response.ContentType = "application/problem+json";
            await context.Response.WriteAsync(Document(status, problems).ToJsonString(DocumentJson.Options));
            return;
        }

        if (context.Request.Path == PageFault)
            return;
        // A page of its own needs services of its own: those of the failed page are spent.
        await using var scope = context.RequestServices.CreateAsyncScope();
        context.RequestServices = scope.ServiceProvider;
        context.Items[typeof(Problem)] = problems;
        context.Request.Path = PageFault;
        context.Request.Method = HttpMethods.Get;
        context.SetEndpoint(null);
        context.Request.RouteValues.Clear();
        await next(context);
    }

    /// <summary>RFC 9457 problem details, with every fault beside.</summary>
    private static JsonObject Document(int status, IReadOnlyList<Problem> problems) => new()
    {
        ["type"] = "about:blank",
        ["title"] = problems.Count == 1 ? problems[0].What : $"{problems.Count} things are wrong with this request.",
        ["status"] = status,
        ["problems"] = new JsonArray([.. problems.Select(p => new JsonObject { ["what"] = p.What, ["where"] = p.Where, ["remedy"] = p.Remedy })]),
    };
}
