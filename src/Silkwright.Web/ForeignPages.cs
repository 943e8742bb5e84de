using Silkwright.Estimates;

namespace Silkwright.Web;

/// <summary>Refuses what a page of another origin asks to have changed here.</summary>
/// <remarks>
/// For any page that is open a browser sends a form, an upload or an empty body to any address without asking first (WHATWG Fetch, "CORS-safelisted request-header"). It says beside
/// it where the page is from, in headers that no page can write: Sec-Fetch-Site (W3C Fetch Metadata Request Headers, section 2.3), and, older and also to an address without a certificate,
/// Origin (RFC 6454, section 7). Another program at another port of this machine is of the same site and another origin, and is refused too. Scripts send neither header.
/// Pages' own forms carry their token besides.
/// </remarks>
internal static class ForeignPages
{
    private const string FetchSite = "Sec-Fetch-Site";

    /// <summary>Why the request is refused; none where it is of this program's own page, of a person's own doing, of no browser, or changes nothing.</summary>
    public static Problem? Refused(HttpRequest request)
    {
        if (IsSafe(request.Method))
            return null;
        // What is none of the four words is to be passed over, says the standard.
        var (isForeign, header) = request.Headers[FetchSite].ToString() switch
        {
            "same-origin" or "none" => (false, FetchSite),
            "cross-site" or "same-site" => (true, FetchSite),
            _ => (request.Headers.Origin.Count > 0 && !IsOwn(request.Headers.Origin.ToString(), request.Host), "Origin"),
        };
        return isForeign
            ? new Problem("A page of another origin asked this program to change something; it was not done.", header, "Open this program's own page and do it there. A script leaves this header out; a proxy keeps the name and port that were asked for (Host).")
            : null;
    }

    /// <summary>RFC 9110, section 9.2.1: methods that change nothing.</summary>
    private static bool IsSafe(string method) =>
        HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method) || HttpMethods.IsTrace(method);

    /// <summary>The scheme is the browser's: a proxy may take https and hand on http.</summary>
    private static bool IsOwn(string origin, HostString host) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var theirs) && Uri.TryCreate($"{theirs.Scheme}://{host}", UriKind.Absolute, out var ours)
        && (theirs.Host, theirs.Port) == (ours.Host, ours.Port);
}
