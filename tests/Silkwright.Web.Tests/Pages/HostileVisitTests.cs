using System.Net;

namespace Silkwright.Web.Tests.Pages;

/// <summary>Addresses, names and forms that no page of ours makes.</summary>
public sealed class HostileVisitTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("evil.example")]
    [InlineData("127.0.0.1.evil.example")]
    [InlineData("127.0.0.1:99999")]
    [InlineData("192.0.2.7")]
    public async Task Another_name_that_leads_here_is_refused(string host)
    {
        // RFC 6761, section 6.3, keeps localhost for this machine; every other name may be anybody's.
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/jobs");
        Assert.True(request.Headers.TryAddWithoutValidation("Host", host));
        var answer = await web.Browser.SendAsync(request, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("[::1]:5080")]
    [InlineData("shop.localhost:80")]
    public async Task This_machines_own_names_are_answered(string host)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        Assert.True(request.Headers.TryAddWithoutValidation("Host", host));
        Assert.Equal(HttpStatusCode.OK, (await web.Browser.SendAsync(request, Cancel)).StatusCode);
    }

    [Theory]
    [InlineData("//evil.example")]
    [InlineData("/\\evil.example")]
    [InlineData("https://evil.example/")]
    [InlineData("/\t/evil.example")]
    [InlineData("/jobs/\r\nX: y")]
    [InlineData("javascript:alert(1)")]
    public async Task A_choice_leads_back_to_a_page_here_and_nowhere_else(string back)
    {
        var form = await web.HiddenFieldsAsync("/", "safe");
        (form["name"], form["value"], form["back"]) = ("units", "metric", back);
        var answer = await web.Browser.PostAsync("/choices", new FormUrlEncodedContent(form), Cancel);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal($"{web.Browser.BaseAddress}", $"{answer.RequestMessage!.RequestUri}");
    }

    [Theory]
    [InlineData("colour=NaN")]
    [InlineData("colour=99999999999")]
    [InlineData("colour=%3Cscript%3Ealert(1)%3C/script%3E&station=%22%3E%3Cimg%20src=x%3E&place=-1")]
    public async Task An_address_of_a_job_that_names_no_colour_shows_the_first(string query)
    {
        const string text = """{ "name": "Kite", "run": 100, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] }""";
        _ = await web.Store.Jobs.SaveAsync("kite", text, "Ada", "first", cancel: Cancel);
        var answer = await web.Browser.GetAsync($"/jobs/kite?{query}", Cancel);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("<script>alert", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "name": "\ud800" }""")]
    [InlineData("[")]
    [InlineData("")]
    public async Task A_shop_document_that_is_none_comes_back_with_its_fault(string text)
    {
        var form = await web.HiddenFieldsAsync("/shop/edit", "edit-shop");
        (form["text"], form["why"], form["by"]) = (text, "slip", "Ada");
        var answer = await web.Browser.PostAsync("/shop/edit", new FormUrlEncodedContent(form), Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("Nothing was changed.", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("x=NaN&y=1&side=1")]
    [InlineData("x=1&y=1&side=NaN")]
    [InlineData("x=Infinity&y=1&side=1")]
    public async Task A_spot_of_a_film_that_is_nowhere_is_told(string spot)
    {
        using var content = new MemoryStream(SmallFilm.Png);
        var film = await web.Store.Films.AddAsync(content, "spot.png", "Ada", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, (await web.Browser.GetAsync($"/films/{film.Hash}/detail.png?{spot}", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_film_held_against_a_width_that_is_none_is_told_and_against_a_real_one_drawn()
    {
        using var content = new MemoryStream(SmallFilm.Png);
        var film = await web.Store.Films.AddAsync(content, "heat.png", "Ada", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, (await web.Browser.GetAsync($"/films/{film.Hash}/heat.png?held=NaN", Cancel)).StatusCode);
        var picture = await web.Browser.GetAsync($"/films/{film.Hash}/heat.png?held=200&side=100", Cancel);
        Assert.Equal((HttpStatusCode.OK, "image/png"), (picture.StatusCode, picture.Content.Headers.ContentType?.MediaType));
    }
}
