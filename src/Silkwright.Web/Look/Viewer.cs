
namespace Silkwright.Web.Look;

/// <summary>What the person at this browser has chosen, kept in cookies.</summary>
public sealed class Viewer(IHttpContextAccessor http)
{
    public const string UnitsCookie = "units";
    public const string LightCookie = "light";
    public const string PersonCookie = "person";

    public UnitSystem Units => Cookie(UnitsCookie) == "us" ? UnitSystem.Us : UnitSystem.Metric;

    /// <summary>The safe-light theme: only the panel's red.</summary>
    public bool SafeLight => Cookie(LightCookie) == "safe";

    /// <summary>The name last given for an entry; there are no accounts.</summary>
    public string Person => Cookie(PersonCookie) ?? string.Empty;

    /// <summary>Where the person is, to come back to.</summary>
    public string Here => http.HttpContext is { } context ? context.Request.Path + context.Request.QueryString : "/";

    /// <summary>Remembers the person for the next entry.</summary>
    public void Remember(string person) => Keep(http.HttpContext!.Response, PersonCookie, person);

    /// <summary>Keeps a choice for a year.</summary>
    public static void Keep(HttpResponse response, string name, string value) =>
        response.Cookies.Append(name, value, new CookieOptions
        {
            MaxAge = TimeSpan.FromDays(365),
            HttpOnly = true,
            SameSite = SameSiteMode.Lax,
            IsEssential = true,
        });

    private string? Cookie(string name) => http.HttpContext?.Request.Cookies[name];
}
