using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Silkwright.Web.Tests.Pages;

/// <summary>Light beside a film's edge, on its page and over HTTP.</summary>
public sealed class EdgeTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Question = "count=77/cm&thread=48um&mesh-colour=dyed&lamp=tubes&photons=20000";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Page_and_programs_get_the_same_answer()
    {
        var document = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/light/edge?{Question}", Cancel))!;
        Assert.Equal("silkwright/light-edge/1", (string?)document["schema"]);
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/light/edge?{Question}", Cancel));
        var through = document["estimates"]!["throughAverage"]!["value"]!.GetValue<double>();
        var told = Regex.Match(page, "of the light on the film</th>.*?class=\"value\">([0-9.]+) <small>%", RegexOptions.Singleline).Groups[1].Value;
        Assert.Equal(100 * through, double.Parse(told, CultureInfo.InvariantCulture), 1.0);
    }

    /// <summary>The slider is an extra: without script every exposure has its own small picture, and the big one shows one outline.</summary>
    [Fact]
    public async Task Every_exposure_has_its_picture_and_one_outline_is_shown()
    {
        var page = await web.Browser.GetStringAsync($"/light/edge?{Question}", Cancel);
        Assert.Equal(9, Regex.Count(page, "aria-label=\"What is cured, to scale.\""));
        Assert.Equal(9, Regex.Count(page, "data-outline="));
        Assert.Single(Regex.Matches(page, "data-outline=\"\\d\" visibility=\"visible\""));
        Assert.Matches("data-exposure[^>]* hidden", page);
    }

    /// <summary>Read back off the drawing: threads of 48 µm every 10000/77 = 129.87 µm.</summary>
    [Fact]
    public async Task The_drawing_is_to_scale()
    {
        var page = await web.Browser.GetStringAsync($"/light/edge?{Question}", Cancel);
        var threads = Regex.Matches(page, "class=\"thread\" cx=\"([-0-9.]+)\" cy=\"[-0-9.]+\" rx=\"([0-9.]+)\" ry=\"([0-9.]+)\"")
            .Select(thread => thread.Groups.Values.Skip(1).Select(group => double.Parse(group.Value, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        Assert.True(threads.Length >= 2);
        Assert.Equal(129.87 / 48, (threads[1][0] - threads[0][0]) / (2 * threads[0][1]), 0.01);
        Assert.Equal(threads[0][1], threads[0][2], 0.011);
    }

    [Fact]
    public async Task Before_anything_is_asked_there_is_a_form_and_no_fault()
    {
        var page = await web.Browser.GetStringAsync("/light/edge", Cancel);
        Assert.Contains("name=\"mesh-colour\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"problems\"", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/light/edge?count=77&thread=48um", "count")]
    [InlineData("/light/edge?count=77/cm&thread=48um&image=line", "width")]
    [InlineData("/api/light/edge?count=77/cm", "thread")]
    [InlineData("/api/light/edge?count=77/cm&thread=48um&photons=1e8", "keeps everybody else waiting")]
    [InlineData("/api/light/edge?count=77/cm&thread=48um&phtons=1e5", "phtons")]
    public async Task A_question_with_faults_is_told_them(string address, string told)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(told, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }
}
