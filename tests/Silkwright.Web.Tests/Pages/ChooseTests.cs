using System.Net;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Pages;

public sealed class ChooseTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Question = "ink=waterBased&run=2000&pace=3&light=yellow&humidity=70%25";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Page_sheet_and_programs_get_the_same_answer()
    {
        var document = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/choose?{Question}", Cancel))!;
        var emulsion = (string)document["emulsion"]!;
        Assert.Equal("silkwright/choose/1", (string?)document["schema"]);
        Assert.Contains($"Take {emulsion}", await web.Browser.GetStringAsync($"/choose?{Question}", Cancel), StringComparison.Ordinal);
        var sheet = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/choose/sheet?{Question}", Cancel));
        Assert.Contains($"Take {emulsion}", sheet, StringComparison.Ordinal);
        Assert.All(document["stopIf"]!.AsArray(), sentence => Assert.Contains((string)sentence!, sheet, StringComparison.Ordinal));
        Assert.All(document["cautions"]!.AsArray(), caution => Assert.Contains((string)caution!["text"]!, sheet, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Before_anything_is_asked_there_is_a_form_and_no_fault()
    {
        var page = await web.Browser.GetStringAsync("/choose", Cancel);
        Assert.Contains("name=\"run\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"problems\"", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/choose?ink=waterBased&run=none&humidity=dry", "run")]
    [InlineData("/choose/sheet?ink=waterBased", "run")]
    [InlineData("/api/choose?ink=lava&run=100", "ink")]
    public async Task A_question_with_faults_is_told_them(string address, string where)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(where, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_typed_comes_back_as_text_and_never_as_markup()
    {
        var page = await web.Browser.GetStringAsync("/choose?ink=plastisol&run=10&garment=%22%3E%3Cscript%3Ealert(1)%3C/script%3E", Cancel);
        Assert.DoesNotContain("<script>alert(1)", page, StringComparison.Ordinal);
        Assert.Contains("alert(1)", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_question_is_kept_as_a_job_of_the_shop()
    {
        var address = $"/choose?{Question}&work=fullFrontSpot&garment=black";
        var page = await web.Browser.GetStringAsync(address, Cancel);
        var answer = await web.Browser.PostAsync(address, new FormUrlEncodedContent(new Dictionary<string, string>
        {
            ["__RequestVerificationToken"] = TokenIn(page),
            ["_handler"] = "keep-job",
            ["name"] = "Asked on the telephone",
            ["by"] = "Ada",
        }), Cancel);
        Assert.StartsWith("/jobs/asked-on-the-telephone", answer.RequestMessage!.RequestUri!.AbsolutePath, StringComparison.Ordinal);
        var form = await web.Browser.GetStringAsync($"{answer.RequestMessage.RequestUri.AbsolutePath}/edit", Cancel);
        Assert.All(["value=\"2000\"", "value=\"black\"", "value=\"waterBased\" selected", "value=\"fullFrontSpot\" selected"], kept => Assert.Contains(kept, form, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_job_without_a_name_is_not_kept_and_the_answer_stays()
    {
        var page = await web.Browser.GetStringAsync($"/choose?{Question}", Cancel);
        var answer = await web.Browser.PostAsync($"/choose?{Question}", new FormUrlEncodedContent(new Dictionary<string, string>
        {
            ["__RequestVerificationToken"] = TokenIn(page),
            ["_handler"] = "keep-job",
            ["name"] = " ",
            ["by"] = "Ada",
        }), Cancel);
        var told = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Cancel));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("The job has no name.", told, StringComparison.Ordinal);
        Assert.Contains("id=\"answer\"", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Humidity_is_percent_with_its_sign_or_without()
    {
        var bare = await web.Browser.GetStringAsync($"/choose/sheet?{Question.Replace("%25", "", StringComparison.Ordinal)}", Cancel);
        var signed = await web.Browser.GetStringAsync($"/choose/sheet?{Question}", Cancel);
        Assert.Equal(Facts(signed), Facts(bare));
    }

    private static string Facts(string sheet) => sheet[sheet.IndexOf("Facts taken", StringComparison.Ordinal)..sheet.IndexOf("Recommendation", StringComparison.Ordinal)];

    private static string TokenIn(string page) => System.Text.RegularExpressions.Regex.Match(page, "name=\"__RequestVerificationToken\" value=\"([^\"]+)\"").Groups[1].Value;
}
