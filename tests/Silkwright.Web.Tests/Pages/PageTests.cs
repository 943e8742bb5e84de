using System.Net;

namespace Silkwright.Web.Tests.Pages;

public sealed class PageTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/", "To make, in order of the day it is wanted")]
    [InlineData("/jobs", "New job")]
    [InlineData("/jobs/new", "Plan this job")]
    [InlineData("/choose", "Which emulsion?")]
    [InlineData("/shelf", "The shop has no emulsions to choose from")]
    [InlineData("/screens", "Put a screen on record")]
    [InlineData("/shop", "Emulsions and their lots")]
    [InlineData("/shop/edit", "Shop document")]
    [InlineData("/shop/catalogue", "Show a catalogue")]
    public async Task Every_place_opens_in_an_empty_store(string address, string words)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(words, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/jobs/nothing-here")]
    [InlineData("/screens/S-9999")]
    [InlineData("/no/such/place")]
    public async Task What_is_not_there_says_so(string address)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("There is nothing at this address", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_described_by_phone_shows_its_making_line()
    {
        var form = await web.HiddenFieldsAsync("/jobs/new", "new-job");
        foreach (var (name, value) in new[] { ("name", "Band <b>tour</b>"), ("run", "250"), ("ink", "waterBased"), ("kind", "fullFrontSpot"), ("by", "Ada") })
            form[name] = value;
        var answer = await web.Browser.PostAsync("/jobs/new", Multipart(form), Cancel);
        var html = await answer.Content.ReadAsStringAsync(Cancel);

        Assert.Equal("/jobs/band-b-tour-b", answer.RequestMessage!.RequestUri!.AbsolutePath);
        Assert.Equal(6, html.Split("<li class=\"station\"").Length - 1);
        Assert.Contains("Band &lt;b&gt;tour&lt;/b&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>tour</b>", html, StringComparison.Ordinal);
        Assert.Matches(@":</b>\s+\S+ holds the artwork\.", html[..html.IndexOf("<li class=\"station\"", StringComparison.Ordinal)]);
    }

    [Fact]
    public async Task The_page_tells_before_the_line_what_is_not_held_and_before_the_times_that_a_step_test_is_due()
    {
        const string address = "/jobs/too-fine";
        const string body = """{"id": "too-fine", "person": "Ada", "job": {"name": "Too fine", "run": 250, "colours": [{"ink": "plastisol", "needs": {"finestLineUm": 40}}]}}""";
        using var content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
        _ = (await web.Browser.PostAsync("/api/jobs", content, Cancel)).EnsureSuccessStatusCode();
        var html = await web.Browser.GetStringAsync($"{address}?station=expose", Cancel);
        var head = html[..html.IndexOf("<li class=\"station\"", StringComparison.Ordinal)];
        Assert.Contains("does not hold the artwork.", head, StringComparison.Ordinal);
        Assert.Contains("Thicken what is finer to", head, StringComparison.Ordinal);
        Assert.InRange(html.IndexOf("Make a step test before exposing.", StringComparison.Ordinal), 0, html.IndexOf("Least that cures", StringComparison.Ordinal));
        Assert.Contains("Thicken what is finer to", await web.Browser.GetStringAsync($"{address}/print", Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_pressed_twice_makes_one_job()
    {
        var form = await web.HiddenFieldsAsync("/jobs/new", "new-job");
        foreach (var (name, value) in new[] { ("name", "Pressed twice"), ("run", "50"), ("ink", "plastisol"), ("kind", "largeSolid"), ("by", "Ada") })
            form[name] = value;
        var first = await web.Browser.PostAsync("/jobs/new", Multipart(form), Cancel);
        var second = await web.Browser.PostAsync("/jobs/new", Multipart(form), Cancel);
        form["run"] = "60";
        var other = await web.Browser.PostAsync("/jobs/new", Multipart(form), Cancel);

        Assert.Equal("/jobs/pressed-twice", first.RequestMessage!.RequestUri!.AbsolutePath);
        Assert.Equal("/jobs/pressed-twice", second.RequestMessage!.RequestUri!.AbsolutePath);
        Assert.Equal("/jobs/pressed-twice-2", other.RequestMessage!.RequestUri!.AbsolutePath);
    }

    [Fact]
    public async Task A_form_with_faults_comes_back_filled_with_every_fault_told()
    {
        var form = await web.HiddenFieldsAsync("/jobs/new", "new-job");
        foreach (var (name, value) in new[] { ("name", "Unfinished"), ("run", "many"), ("ink", "plastisol"), ("kind", "largeSolid"), ("by", "Ada") })
            form[name] = value;
        var answer = await web.Browser.PostAsync("/jobs/new", Multipart(form), Cancel);
        var html = await answer.Content.ReadAsStringAsync(Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("&#x27;many&#x27; is not a number.", html, StringComparison.Ordinal);
        Assert.Contains("value=\"Unfinished\"", html, StringComparison.Ordinal);
        Assert.Null(await web.Store.Jobs.CurrentAsync("unfinished", Cancel));
    }

    [Fact]
    public async Task A_form_without_its_token_is_refused()
    {
        var answer = await web.Browser.PostAsync("/choices", new FormUrlEncodedContent(new Dictionary<string, string> { ["name"] = "light", ["value"] = "safe", ["back"] = "/" }), Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    private static MultipartFormDataContent Multipart(Dictionary<string, string> fields)
    {
        var form = new MultipartFormDataContent();
        foreach (var (name, value) in fields)
            form.Add(new StringContent(value), name);
        return form;
    }
}
