using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.Features;
using Silkwright.Estimates;
using Silkwright.Records.Store;
using Silkwright.Web.Api;

namespace Silkwright.Web;

/// <summary>Turns what goes wrong into an answer that says what, where and what to do; never a stack trace.</summary>
public sealed class Faults(RequestDelegate next, DataFolder folder, ILogger<Faults> log)
{
    private const string PageFault = "/fault";

    /// <summary>A stream that is read beyond its end; a disk's own faults have other numbers.</summary>
    private const int EndedEarly = unchecked((int)0x80131620);

    public async Task InvokeAsync(HttpContext context)
    {
        if (context.Request.ContentLength > SilkwrightWeb.MostUploadBytes)
        {
            await AnswerAsync(context, 413, [TooLarge(context)]);
            return;
        }

        if (ForeignPages.Refused(context.Request) is { } foreign)
        {
            await AnswerAsync(context, 403, [foreign]);
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
            await AnswerAsync(context, fault.StatusCode, [fault.StatusCode == 413 ? TooLarge(context) : new Problem(
                "The request cannot be read.", context.Request.Path, "Check its form against /openapi/v1.json, then send it again.")]);
        }
        catch (InvalidDataException fault) when (context.Features.Get<IFormFeature>() is { HasFormContentType: true, Form: null } && !context.Response.HasStarted)
        {
            // Only a form that could not be taken apart ends here unread.
            await AnswerAsync(context, 400, [new Problem($"The form cannot be read: {fault.Message}", "body", "Send it as multipart/form-data, each part with its name and file name in quotes.")]);
        }
        catch (IOException fault) when (fault.HResult == EndedEarly && context.Features.Get<IFormFeature>() is { HasFormContentType: true, Form: null } && !context.Response.HasStarted)
        {
            await AnswerAsync(context, 400, [new Problem("The form ends before its last part does.", "body", "Send it as multipart/form-data, to its end.")]);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // nobody waits for the answer any more
        }
        catch (InvalidOperationException) when (context.Features.Get<IAntiforgeryValidationFeature>() is { IsValid: false } && !context.Response.HasStarted)
        {
            await AnswerAsync(context, 400, [new Problem("This form is out of date.", context.Request.Path, "Open its page again and send it once more.")]);
        }
        catch (Exception fault) when (!context.Response.HasStarted && StoreFaults.Told(fault, folder) is { } told)
        {
            log.LogError(fault, "{Method} {Path} failed: {What}", context.Request.Method, context.Request.Path, told.What);
            await AnswerAsync(context, 503, [told]);
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

    private static Problem TooLarge(HttpContext context) => new(
        $"The upload is larger than {(context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize ?? SilkwrightWeb.MostUploadBytes) >> 20} MB.",
        "upload",
        context.Request.HasFormContentType
            ? "Export the film as 1-bit TIFF with CCITT G4 compression, and give a job's films one at a time."
            : "Send a shorter document.");

    private async Task AnswerAsync(HttpContext context, int status, IReadOnlyList<Problem> problems)
    {
        context.Response.Clear();
        PageHeaders.Set(context.Response.Headers);
        context.Response.StatusCode = status;
        if (context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal))
        {
            await ProblemDocument.WriteAsync(context.Response, status, problems);
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
}
