using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Silkwright.Web.Tests.Pages;

public sealed class MoireTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Question = "count=90/cm&thread=48um&ruling=25/cm&angle=0deg";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Page_and_programs_get_the_same_answer()
    {
        var document = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/mesh/moire?{Question}", Cancel))!;
        Assert.Equal("silkwright/mesh-moire/1", (string?)document["schema"]);
        var period = document["patterns"]![0]!["periodMm"]!.GetValue<double>();
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/mesh/moire?{Question}", Cancel));
        Assert.Contains($"It repeats every {period:0.000} mm", page, StringComparison.Ordinal);
        Assert.Contains("film at", page, StringComparison.Ordinal);
    }

    /// <summary>The measure under the drawing: 3 x 25 against 90 threads is 10/15 mm, and the drawing is 20 mm in 900 px.</summary>
    [Fact]
    public async Task The_drawing_is_to_scale_and_there()
    {
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/mesh/moire?{Question}", Cancel));
        Assert.Contains("M360 580v4h30v-4", page, StringComparison.Ordinal);
        var picture = await web.Browser.GetByteArrayAsync(Regex.Match(page, "href=\"(/mesh/moire\\.png[^\"]+)\"").Groups[1].Value, Cancel);
        Assert.Equal([0x89, 0x50, 0x4E, 0x47], picture[..4]);
    }

    [Fact]
    public async Task Before_anything_is_asked_there_is_a_form_and_no_fault()
    {
        var page = await web.Browser.GetStringAsync("/mesh/moire", Cancel);
        Assert.Contains("name=\"ruling\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"problems\"", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/mesh/moire?count=61&ruling=45/in&angle=22.5", "count")]
    [InlineData("/mesh/moire.png?count=61/cm", "ruling")]
    [InlineData("/api/mesh/moire?count=61/cm&ruling=45/in", "angle")]
    public async Task A_question_with_faults_is_told_them(string address, string where)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(where, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }
}
