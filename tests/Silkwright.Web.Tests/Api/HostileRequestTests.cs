using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Api;

/// <summary>Requests that nobody sends in good faith: each is told what is wrong, where, and what to do, and none is a failure of ours.</summary>
public sealed class HostileRequestTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Half = "\\ud800";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    public static TheoryData<string, string> Bodies()
    {
        var data = new TheoryData<string, string>();
        foreach (var address in (string[])["/api/plan", "/api/jobs", "/api/screens", "/api/screens/S-0001/entries"])
        {
            data.Add(address, """{ "job": {}, "job": {}, "frame": "a", "frame": "b", "fact": {}, "fact": {} }""");
            data.Add(address, """{ "job": { "run": 1, "run": 2 }, "mesh": { "countPerCm": 1, "countPerCm": 2 }, "fact": { "kind": "degreased", "kind": "dryIn" } }""");
            data.Add(address, $$"""{ "job": { "name": "{{Half}}" }, "frame": "{{Half}}", "fact": { "kind": "dryIn", "place": "{{Half}}" }, "person": "{{Half}}" }""");
            data.Add(address, "");
            data.Add(address, "null");
            data.Add(address, new string('[', 5000));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_body_that_is_no_document_is_told(string address, string body) => await ToldAsync(await PostAsync(address, body), HttpStatusCode.BadRequest);

    [Fact]
    public async Task A_document_longer_than_any_shops_is_refused_unread()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/plan") { Content = new StringContent(new string(' ', 5 << 20), Encoding.UTF8, "application/json") };
        // The server answers before the body is sent.
        request.Headers.ExpectContinue = true;
        await ToldAsync(await web.Browser.SendAsync(request, Cancel), HttpStatusCode.RequestEntityTooLarge);
    }

    [Theory]
    [InlineData("DELETE", "/api/screens", HttpStatusCode.MethodNotAllowed)]
    [InlineData("PUT", "/api/plan", HttpStatusCode.MethodNotAllowed)]
    [InlineData("POST", "/api/mesh", HttpStatusCode.MethodNotAllowed)]
    [InlineData("GET", "/api/nothing", HttpStatusCode.NotFound)]
    [InlineData("GET", "/api/screens/..%2f..%2fetc", HttpStatusCode.NotFound)]
    [InlineData("GET", "/api/jobs/%F0%9F%92%A9/plan", HttpStatusCode.NotFound)]
    public async Task A_wrong_address_or_method_is_told(string method, string address, HttpStatusCode status)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), address);
        await ToldAsync(await web.Browser.SendAsync(request, Cancel), status);
    }

    /// <summary>A misspelt name left aside would be an answer to another question than the one asked.</summary>
    [Theory]
    [InlineData("/api/choose?ink=plastisol&run=500&humidty=90%25")]
    [InlineData("/api/mesh?count=61/cm&thread=64um&tension=20")]
    public async Task A_name_that_no_question_has_is_told(string address) => await ToldAsync(await web.Browser.GetAsync(address, Cancel), HttpStatusCode.BadRequest);

    /// <summary>
    /// A page of another origin may send text/plain without asking first (WHATWG Fetch, "CORS-safelisted request-header"), but not application/json.
    /// </summary>
    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data; boundary=x")]
    public async Task A_page_of_another_origin_writes_nothing(string type)
    {
        using var body = new StringContent("""{ "frame": "forged", "mesh": { "countPerCm": 61, "threadUm": 64 }, "person": "Mallory" }""");
        body.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        await ToldAsync(await web.Browser.PostAsync("/api/screens", body, Cancel), HttpStatusCode.UnsupportedMediaType);
        Assert.DoesNotContain(await web.Store.Screens.ListAsync(cancel: Cancel), s => s.Screen.Frame == "forged");
    }

    [Theory]
    [InlineData("/api/ink?mesh=61/cm&thread=64um&eom=-0um&coverage=35%25&area=900cm2&impressions=600", HttpStatusCode.OK)]
    [InlineData("/api/dry/time?temperature=25C&humidity=50%25&wet-thickness=30um&solids=1e-320%25", HttpStatusCode.BadRequest)]
    public async Task A_value_at_the_edge_of_numbers_is_answered_or_told(string question, HttpStatusCode status) =>
        Assert.Equal(status, (await web.Browser.GetAsync(question, Cancel)).StatusCode);

    [Theory]
    [InlineData("multipart/form-data")]
    [InlineData("multipart/form-data; boundary=")]
    [InlineData("multipart/form-data; boundary=B")]
    public async Task A_form_that_cannot_be_taken_apart_is_told(string type)
    {
        using var body = new ByteArrayContent("--B\r\nContent-Disposition: form-data; name=\"film\"; filename=\"\"><img src=x>.png\"\r\n\r\nx\r\n--B--\r\n"u8.ToArray());
        Assert.True(body.Headers.TryAddWithoutValidation("Content-Type", type));
        await ToldAsync(await web.Browser.PostAsync("/api/film", body, Cancel), HttpStatusCode.BadRequest);
    }

    [Theory]
    [InlineData("garbage")]
    [InlineData("--B\r\nContent-Disposition: form-data; name=\"film\"; filename=\"a.tif\"\r\n\r\nII*")]
    public async Task A_form_that_is_cut_short_is_told(string form)
    {
        using var body = new StringContent(form);
        body.Headers.ContentType = new("multipart/form-data") { Parameters = { new("boundary", "B") } };
        await ToldAsync(await web.Browser.PostAsync("/api/film", body, Cancel), HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task A_film_asked_about_with_a_misspelt_name_is_refused_before_it_is_measured()
    {
        using var body = new MultipartFormDataContent { { new ByteArrayContent(SmallFilm.Png), "film", "a.png" } };
        await ToldAsync(await web.Browser.PostAsync("/api/film?polarty=negative", body, Cancel), HttpStatusCode.BadRequest);
    }

    [Theory]
    [InlineData("""{ "fact": { "kind": "withdrawn" }, "person": "Ada", "why": "slip", "corrects": 1.5 }""")]
    [InlineData("""{ "fact": { "kind": "withdrawn" }, "person": "Ada", "why": "slip", "corrects": 1e308 }""")]
    [InlineData("""{ "fact": { "kind": "dryIn" }, "person": "Ada\u0000" }""")]
    [InlineData("""{ "fact": { "kind": "dryIn" }, "person": "Ada", "idempotencyKey": "a\u0000" }""")]
    [InlineData("""{ "fact": { "kind": "degreased" }, "person": "Ada", "at": "9999-12-31T23:59:59Z" }""")]
    public async Task An_entry_that_cannot_be_kept_as_it_is_written_is_told_and_not_kept(string entry)
    {
        var added = JsonNode.Parse(await (await PostAsync(
            "/api/screens", """{ "frame": "F-1", "mesh": { "countPerCm": 61, "threadUm": 64 }, "person": "Ada" }""")).Content.ReadAsStringAsync(Cancel))!;
        var id = (string)added["id"]!;
        _ = await PostAsync($"/api/screens/{id}/entries", """{ "fact": { "kind": "degreased" }, "person": "Ada" }""");

        await ToldAsync(await PostAsync($"/api/screens/{id}/entries", entry), HttpStatusCode.BadRequest);
        Assert.Single((await web.Store.Screens.ShowAsync(id, Cancel)).Events);
    }

    private static async Task ToldAsync(HttpResponseMessage answer, HttpStatusCode status)
    {
        var text = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        Assert.All(JsonNode.Parse(text)!["problems"]!.AsArray(), p =>
        {
            Assert.False(string.IsNullOrWhiteSpace((string?)p!["what"]));
            Assert.False(string.IsNullOrWhiteSpace((string?)p["where"]));
            Assert.False(string.IsNullOrWhiteSpace((string?)p["remedy"]));
        });
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
    }

    private Task<HttpResponseMessage> PostAsync(string address, string body) =>
        web.Browser.PostAsync(address, new StringContent(body, Encoding.UTF8, "application/json"), Cancel);
}
