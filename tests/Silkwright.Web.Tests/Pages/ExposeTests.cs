using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Pages;

/// <summary>Step tests on the page and over HTTP.</summary>
public sealed class ExposeTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Case = "lamp=ledArray&family=dualCure&mesh-colour=dyed&line=150um";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_planned_test_has_a_row_of_buttons_for_every_strip()
    {
        var plan = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/expose/ladder?{Case}", Cancel))!;
        Assert.Equal("silkwright/expose-ladder/1", (string?)plan["schema"]);
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/expose?{Case}", Cancel));
        foreach (var strip in plan["strips"]!.AsArray())
            Assert.Contains($"value=\"{strip!["seconds"]!.GetValue<double>():0.###}\"", page, StringComparison.Ordinal);
        Assert.Contains("name=\"solid1\" value=\"7\"", page, StringComparison.Ordinal);
        Assert.Contains("burn eyes and skin", page, StringComparison.Ordinal);
    }

    /// <summary>Nine strips about 12 s do not fit on settings of 5 s: the page tells so as programs are told.</summary>
    [Fact]
    public async Task A_ladder_finer_than_the_settings_is_told_on_the_page_and_over_http()
    {
        var plan = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/expose/ladder?{Case}&around=12&setting=5&within=5%25", Cancel))!;
        Assert.NotEmpty(plan["sharedSettings"]!.AsArray());
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/expose?{Case}&around=12&setting=5&within=5", Cancel));
        Assert.Contains("name=\"setting\"", page, StringComparison.Ordinal);
        var told = plan["notes"]!.AsArray().Select(note => (string)note!["text"]!).Single(text => text.Contains("finer than the machine", StringComparison.Ordinal));
        Assert.Contains(told, page, StringComparison.Ordinal);
    }

    /// <summary>A wider spot blurs the edge: less room, told alike on the page and to programs.</summary>
    [Fact]
    public async Task The_spot_of_written_light_is_asked_for_and_counts()
    {
        Assert.Contains("name=\"spot\"", await web.Browser.GetStringAsync("/expose", Cancel), StringComparison.Ordinal);
        async Task<double> StopsAsync(string spot) =>
            JsonNode.Parse(await web.Browser.GetStringAsync($"/api/expose/window?{Case}&imaging=direct&spot={spot}", Cancel))!["latitudeStops"]!.GetValue<double>();
        Assert.True(await StopsAsync("40um") < await StopsAsync("10um") - 0.1);
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/expose?{Case}&imaging=direct&spot=12&amount1=42&solid1=6&soft1=1&held1=1", Cancel));
        Assert.Contains("12 µm wide at half its height", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pressed_readings_are_answered_as_programs_are()
    {
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync(
            $"/expose?{Case}&amount1=42&solid1=6&soft1=1&held1=1&amount2=60&solid2=7&soft2=0&held2=1&amount3=85&solid3=8&soft3=0&held3=1&amount4=300&solid4=2&soft4=1&damp4=1", Cancel));
        Assert.Contains("Aim at ", page, StringComparison.Ordinal);
        Assert.Contains("The wedge as it will look", page, StringComparison.Ordinal);
        Assert.Contains("left out: a damp coat", page, StringComparison.Ordinal);
        Assert.Contains("Next strip", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("amount1=NaN&solid1=5")]
    [InlineData("amount1=1e308&solid1=5")]
    [InlineData("amount1=20&solid1=999")]
    [InlineData("amount1=20&solid1=x")]
    public async Task Readings_that_no_button_gives_are_told_and_not_reckoned_with(string typed)
    {
        var answer = await web.Browser.GetAsync($"/expose?{Case}&{typed}", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("strip 1", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_case_with_many_days_is_read_over_http_and_its_drift_told()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "Silkwright.slnx")))
            root = Path.GetDirectoryName(root)!;
        var json = await File.ReadAllTextAsync(Path.Combine(root, "demo", "exposure-case.json"), Cancel);
        var answer = await web.Browser.PostAsync("/api/expose/test", new StringContent(json, System.Text.Encoding.UTF8, "application/json"), Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var history = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!["history"]!;
        Assert.True(history["drifted"]!.GetValue<bool>());
        Assert.Equal("2026-06-22", (string?)history["since"]);
        Assert.Contains(history["because"]!.AsArray(), cause => ((string?)cause)!.Contains("L-231", StringComparison.Ordinal));
        var window = await web.Browser.PostAsync("/api/expose/window", new StringContent(json, System.Text.Encoding.UTF8, "application/json"), Cancel);
        Assert.Equal(HttpStatusCode.OK, window.StatusCode);
    }

    /// <summary>Over HTTP nobody has a file: the field of the body is named, with how to write it, and the example is one that is taken.</summary>
    [Theory]
    [InlineData("mesh")]
    [InlineData("emulsion")]
    [InlineData("lamp")]
    public async Task A_case_without_a_needed_field_is_told_the_field(string missing)
    {
        var body = JsonNode.Parse("""{"mesh": {"countPerCm": 77, "threadUm": 48}, "emulsion": {"family": "diazo"}, "lamp": {"kind": "tubeBank"}}""")!.AsObject();
        _ = body.Remove(missing);
        var answer = await web.Browser.PostAsJsonAsync("/api/expose/window", body, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var problem = Assert.Single(JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!["problems"]!.AsArray())!;
        Assert.Equal($"body: {missing}", (string?)problem["where"]);
        var remedy = (string)problem["remedy"]!;
        Assert.DoesNotContain("SHOP", remedy, StringComparison.Ordinal);
        body[missing] = JsonNode.Parse(remedy[remedy.IndexOf('{', StringComparison.Ordinal)..^1]);
        Assert.Equal(HttpStatusCode.OK, (await web.Browser.PostAsJsonAsync("/api/expose/window", body, Cancel)).StatusCode);
    }

    [Fact]
    public async Task Depths_are_fitted_over_http()
    {
        var answer = await web.Browser.PostAsJsonAsync("/api/expose/fit", new { table = "doseMjPerCm2,curedDepthUm\n15,22.1\n25,48.9\n40,72.4\n65,98.8\n100,121.6\n160,146.9\n250,170.2\n" }, Cancel);
        // lm of R: LinearModelTests
        Assert.Equal(52.75228309, JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!["penetrationDepthUm"]!.GetValue<double>(), 1e-6);
    }

    [Theory]
    [InlineData("/expose?amount1=sixty&solid1=7", "strip 1")]
    [InlineData("/expose?counts=units", "around")]
    [InlineData("/api/expose/window?lamp=sun", "lamp")]
    [InlineData("/api/expose/curve?penetration-depth=70um", "critical-dose")]
    public async Task A_question_with_faults_is_told_them(string address, string where)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(where, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Before_anything_is_asked_there_is_a_form_and_the_shops_tests()
    {
        var page = await web.Browser.GetStringAsync("/expose", Cancel);
        Assert.Contains("name=\"lamp\"", page, StringComparison.Ordinal);
        Assert.Contains("This shop", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"problems\"", page, StringComparison.Ordinal);
    }
}
