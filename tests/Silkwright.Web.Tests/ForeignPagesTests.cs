using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests;

/// <summary>
/// What a page of another origin has a browser send changes nothing here. Which header says what is from W3C Fetch Metadata Request Headers (sections 2.3 and 5) and RFC 6454 (sections 6.2 and 7), not from this program.
/// </summary>
public sealed class ForeignPagesTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("cross-site", null, "Sec-Fetch-Site")]
    [InlineData("same-site", null, "Sec-Fetch-Site")]
    [InlineData(null, "https://elsewhere.example", "Origin")]
    [InlineData(null, "http://127.0.0.1:1", "Origin")]
    [InlineData(null, "null", "Origin")]
    [InlineData("tomorrow's word", "https://elsewhere.example", "Origin")]
    public async Task A_foreign_page_takes_nothing_back(string? site, string? origin, string where)
    {
        var (answer, stands) = await WithdrawnAsync(site, origin);
        Assert.Equal((HttpStatusCode.Forbidden, "application/problem+json", true), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType, stands));
        var problem = Assert.Single(JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!["problems"]!.AsArray())!;
        Assert.Equal(where, (string?)problem["where"]);
        Assert.Contains("own page", (string?)problem["remedy"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData("same-origin", "own")]
    [InlineData("none", null)]
    [InlineData(null, "own")]
    public async Task A_script_an_own_page_and_a_person_do(string? site, string? origin)
    {
        var (answer, stands) = await WithdrawnAsync(site, origin == "own" ? web.Browser.BaseAddress!.GetLeftPart(UriPartial.Authority) : origin);
        Assert.Equal((HttpStatusCode.OK, false), (answer.StatusCode, stands));
    }

    /// <summary>RFC 6454, section 4: a scheme's own port is the same port, written or not; a proxy that takes https hands on the name asked for.</summary>
    [Theory]
    [InlineData("shop.localhost", "https://shop.localhost", HttpStatusCode.OK)]
    [InlineData("shop.localhost:443", "https://shop.localhost", HttpStatusCode.OK)]
    [InlineData("SHOP.localhost:5080", "http://shop.localhost:5080", HttpStatusCode.OK)]
    [InlineData("[::1]:5080", "http://[::1]:5080", HttpStatusCode.OK)]
    [InlineData("shop.localhost", "http://shop.localhost:8080", HttpStatusCode.Forbidden)]
    [InlineData("shop.localhost", "http://shop.localhost.example", HttpStatusCode.Forbidden)]
    public async Task An_origin_is_its_name_and_port(string host, string origin, HttpStatusCode status)
    {
        using var request = Asked(HttpMethod.Post, "/api/plan", null, origin);
        request.Headers.Host = host;
        request.Content = new StringContent("""{ "job": { "name": "Kite", "run": 100, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] } }""", Encoding.UTF8, "application/json");
        Assert.Equal(status, (await web.Browser.SendAsync(request, Cancel)).StatusCode);
    }

    /// <summary>A form with its token is refused too where it comes from elsewhere, and a person reads why on a page; the token is asked for as before.</summary>
    [Fact]
    public async Task A_pages_form_is_refused_from_elsewhere_and_without_its_token()
    {
        var form = await web.HiddenFieldsAsync("/shop/edit", "edit-shop");
        (form["text"], form["why"], form["by"]) = ("""{ "name": "Mallory's" }""", "forged", "Mallory");
        var foreign = await PostAsync(form, "cross-site");
        Assert.Equal((HttpStatusCode.Forbidden, "text/html"), (foreign.StatusCode, foreign.Content.Headers.ContentType?.MediaType));
        Assert.Contains("A page of another origin", await foreign.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);

        _ = form.Remove("__RequestVerificationToken");
        Assert.Equal(HttpStatusCode.BadRequest, (await PostAsync(form, "same-origin")).StatusCode);
        Assert.DoesNotContain("Mallory", await web.Browser.GetStringAsync("/shop", Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET", "/jobs")]
    [InlineData("HEAD", "/look/mark.svg")]
    [InlineData("GET", "/api/mesh?count=61/cm&thread=64um")]
    public async Task A_link_from_elsewhere_is_followed(string method, string address)
    {
        using var request = Asked(new HttpMethod(method), address, "cross-site", null);
        Assert.NotEqual(HttpStatusCode.Forbidden, (await web.Browser.SendAsync(request, Cancel)).StatusCode);
    }

    private async Task<HttpResponseMessage> PostAsync(Dictionary<string, string> form, string site)
    {
        using var request = Asked(HttpMethod.Post, "/shop/edit", site, null);
        request.Content = new FormUrlEncodedContent(form);
        return await web.Browser.SendAsync(request, Cancel);
    }

    /// <summary>A reading is kept, and taken back by an empty body as a foreign page could send it.</summary>
    private async Task<(HttpResponseMessage Answer, bool Stands)> WithdrawnAsync(string? site, string? origin)
    {
        using var reading = new StringContent($"screen,operator,emulsion,eom (um)\nS-{Guid.NewGuid():N},Ines,Wren 47,12.5\n", Encoding.UTF8, "text/csv");
        _ = await web.Browser.PostAsync("/api/gauge/readings?by=Ines", reading, Cancel);
        var number = (int)(await EntriesAsync())[^1]!["number"]!;
        using var request = Asked(HttpMethod.Post, $"/api/gauge/readings/{number}/withdraw?by=Mallory&why=forged", site, origin);
        var answer = await web.Browser.SendAsync(request, Cancel);
        return (answer, (await EntriesAsync()).Single(entry => (int)entry!["number"]! == number)!["withdrawnBecause"] is null);
    }

    private async Task<JsonArray> EntriesAsync() => JsonNode.Parse(await web.Browser.GetStringAsync("/api/gauge/readings", Cancel))!["entries"]!.AsArray();

    private static HttpRequestMessage Asked(HttpMethod method, string address, string? site, string? origin)
    {
        var request = new HttpRequestMessage(method, address);
        if (site is not null)
            request.Headers.Add("Sec-Fetch-Site", site);
        if (origin is not null)
            request.Headers.Add("Origin", origin);
        return request;
    }
}
