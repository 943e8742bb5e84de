using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Silkwright.Web.Tests.Pages;

public sealed class CoatTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Before_anything_is_asked_there_is_a_form_and_no_fault()
    {
        var page = await web.Browser.GetStringAsync("/coat", Cancel);

        Assert.Contains("name=\"wanted\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"problems\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_answer_comes_first_with_its_reasons_and_the_section_to_scale()
    {
        var page = await PageAsync($"/coat?wanted=14um&emulsion={Uri.EscapeDataString(await EmulsionAsync())}&mesh=0");

        Assert.Contains("lands in", page, StringComparison.Ordinal);
        Assert.Contains("cross-section", page, StringComparison.Ordinal);
        Assert.True(page.IndexOf("id=\"answer\"", StringComparison.Ordinal) < page.IndexOf("name=\"wanted\"", StringComparison.Ordinal));
    }

    /// <summary>One shop, one question: the page and HTTP must tell the same strokes, chance and thickness.</summary>
    [Fact]
    public async Task The_page_answers_as_http_does_for_the_kept_shop()
    {
        var emulsion = await EmulsionAsync();
        var asked = new JsonObject { ["keptShop"] = true, ["wanted"] = "14um", ["emulsion"] = emulsion, ["count"] = "43/cm", ["thread"] = "80um", ["area"] = "2000cm2" };
        using var body = new StringContent(asked.ToJsonString(), System.Text.Encoding.UTF8, "application/json");
        var answered = await web.Browser.PostAsync("/api/coat/aim", body, Cancel);
        var told = JsonNode.Parse(await answered.Content.ReadAsStringAsync(Cancel))!;
        var page = await PageAsync($"/coat?wanted=14um&emulsion={Uri.EscapeDataString(emulsion)}&mesh=0&area=2000cm2");

        Assert.Contains((string)told["strokes"]!, page, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"lands in {(double)told["chancePercent"]!:0} % of cases"), page, StringComparison.Ordinal);
        Assert.All(told["because"]!.AsArray(), sentence => Assert.Contains((string)sentence!, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Experience_is_taken_in_on_its_page_and_taken_back_with_who_and_why()
    {
        const string address = "/coat/experience";
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "Silkwright.slnx")))
            root = Path.GetDirectoryName(root)!;
        using var file = new MultipartFormDataContent
        {
            { new StringContent(await File.ReadAllTextAsync(Path.Combine(root, "demo", "coat-experience.json"), Cancel)), "file", "theirs.json" },
            { new StringContent("Ines"), "by" },
        };
        foreach (var (name, value) in Fields(await PageAsync(address), "keep-experience"))
            file.Add(new StringContent(value), name);
        Assert.True(Went(await web.Browser.PostAsync(address, file, Cancel)));
        Assert.Contains("72 readings of 3 shops", await PageAsync(address), StringComparison.Ordinal);
        var kept = JsonNode.Parse(await web.Browser.GetStringAsync("/api/coat/experience/kept", Cancel))!["entries"]![0]!;
        Assert.Equal(("theirs.json", 72), ((string?)kept["source"], (int)kept["readings"]!));
        Assert.Contains("what 72 readings of 3 other shops taught", await PageAsync($"/coat?wanted=14um&emulsion={Uri.EscapeDataString(await EmulsionAsync())}&mesh=0"), StringComparison.Ordinal);

        var back = Fields(await PageAsync($"{address}?take=1"), "take-back");
        (back["by"], back["why"]) = ("Bram", "another climate");
        using var sent = new FormUrlEncodedContent(back);
        Assert.True(Went(await web.Browser.PostAsync($"{address}?take=1", sent, Cancel)));
        Assert.Contains("by Bram: another climate", await PageAsync(address), StringComparison.Ordinal);
    }

    private static bool Went(HttpResponseMessage answer) => answer.IsSuccessStatusCode || answer.StatusCode is HttpStatusCode.Found or HttpStatusCode.SeeOther;

    private async Task<string> PageAsync(string address) => WebUtility.HtmlDecode(await web.Browser.GetStringAsync(address, Cancel));

    private async Task<string> EmulsionAsync()
    {
        var form = await PageAsync("/coat");
        var from = form.IndexOf("<option value=\"", form.IndexOf("name=\"emulsion\"", StringComparison.Ordinal), StringComparison.Ordinal) + 15;
        return form[from..form.IndexOf('"', from)];
    }

    /// <summary>What the form of a name sends unseen.</summary>
    private static Dictionary<string, string> Fields(string page, string form) => Regex.Matches(page, "<form.*?</form>", RegexOptions.Singleline).Select(match => match.Value)
        .Single(one => one.Contains($"value=\"{form}\"", StringComparison.Ordinal))
        is var found ? Regex.Matches(found, "<input type=\"hidden\"[^>]*name=\"([^\"]+)\"[^>]*value=\"([^\"]*)\"").ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value) : [];

    [Theory]
    [InlineData("/coat?wanted=14&emulsion=x&mesh=0")]
    [InlineData("/coat?wanted=14um&emulsion=nobody's&mesh=99")]
    public async Task What_cannot_be_is_told_on_the_page(string address)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("problems", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }
}
