
namespace Silkwright.Web;

/// <summary>What every answer tells the browser to refuse.</summary>
internal static class PageHeaders
{
    /// <summary>Own files only; inline style serves the widths of progress bars alone.</summary>
    private const string ContentPolicy =
        "default-src 'self'; img-src 'self'; style-src 'self'; style-src-attr 'unsafe-inline'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'; object-src 'none'";

    public static void Set(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
    }
}
