using Microsoft.AspNetCore.Http.Features;
using Silkwright.Estimates;

namespace Silkwright.Web.Api;

/// <summary>Who takes an entry back, and why: in the address, or in a JSON body.</summary>
/// <param name="By">The person's name; empty where nobody is named.</param>
/// <param name="Why">The reason; empty where there is none.</param>
internal sealed record Withdrawal(string By, string Why)
{
    public const string Described = "by, the person's name, and why: in the address, or as a JSON body {\"by\", \"why\"}.";

    /// <exception cref="InputProblemException">The body is no such object, or says otherwise than the address.</exception>
    public static async Task<Withdrawal> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        QuestionEndpoints.ThrowIfUnknown(request, ["by", "why"]);
        if (request.ContentLength == 0 || request.HttpContext.Features.Get<IHttpRequestBodyDetectionFeature>() is not { CanHaveBody: true })
            return new(request.Query["by"].ToString(), request.Query["why"].ToString());
        if (!request.HasJsonContentType())
            throw new InputProblemException(new Problem("The body is not sent as JSON.", "body", "Send it with Content-Type: application/json, or give by and why in the address."));
        var body = await Documents.ReadAsync(request, cancel);
        Documents.TakeOnly(body, BodyField.Text("by"), BodyField.Text("why"));
        var problems = new ProblemList();
        var told = new Withdrawal(Told("by"), Told("why"));
        problems.ThrowIfAny();
        return told;

        string Told(string name)
        {
            var (here, there) = (Documents.Text(body, name), request.Query[name].ToString());
            if (here is not null && there.Length > 0 && here != there)
                problems.Add($"The address and the body say two things of {name}.", name, "Say it once.");
            return here ?? there;
        }
    }
}
