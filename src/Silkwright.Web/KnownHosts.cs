using System.Net;
using Silkwright.Estimates;
using Silkwright.Web.Api;

namespace Silkwright.Web;

/// <summary>Which names this program answers to.</summary>
/// <remarks>
/// A page elsewhere can have its own name lead to this machine and then read and write as if it were a page of ours. Listening at this
/// machine's own address alone, the program therefore answers only to names of this machine. Whoever puts it behind a proxy that keeps
/// the name asked for says so in the setting AllowedHosts.
/// </remarks>
internal static class KnownHosts
{
    private const string NamesSetting = "AllowedHosts";

    /// <summary>Refuses every other name.</summary>
    public static void Use(WebApplication app, string urls)
    {
        var anyName = app.Configuration[NamesSetting] is { Length: > 0 } || !urls.Split(';', StringSplitOptions.RemoveEmptyEntries).All(IsThisMachine);
        _ = app.Use((context, next) =>
        {
            var address = $"http://{context.Request.Host}";
            if (Uri.TryCreate(address, UriKind.Absolute, out _) && (anyName || IsThisMachine(address)))
                return next(context);
            PageHeaders.Set(context.Response.Headers);
            return ProblemDocument.WriteAsync(context.Response, StatusCodes.Status400BadRequest, [new Problem(
                "This program is not known by that name.", "Host", $"Open it at {urls}, or list the name in the environment variable {NamesSetting}.")]);
        });
    }

    private static bool IsThisMachine(string url) =>
        Uri.TryCreate(url.Trim(), UriKind.Absolute, out var uri)
        && (uri.Host is "localhost" || uri.Host.EndsWith(".localhost", StringComparison.Ordinal)
            || (IPAddress.TryParse(uri.Host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address)));
}
