using System.Net;
using System.Net.Http.Headers;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Silkwright.Web.Tests.Pages;

public sealed class GaugeTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private const string Map = "/gauge?screen=S-9&unit=um&bare=78.2&p=1:90.1,2:91.4,3:89.8";

    [Fact]
    public async Task A_number_and_enter_fill_the_next_place_and_mark_the_one_after()
    {
        var page = await PageAsync($"{Map}&reading=90.6");
        Assert.Contains("Place 5", page, StringComparison.Ordinal);
        Assert.Contains("1:90.1,2:91.4,3:89.8,4:90.6", page, StringComparison.Ordinal);
        // mean of 11.9, 13.2, 11.6 and 12.4, by hand
        Assert.Contains("12.3 µm", page, StringComparison.Ordinal);
        Assert.Contains("Even so far", page, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(page, "class=\"place next\""));
        Assert.Contains("autofocus", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3.56", "other unit")]
    [InlineData("60", "thinner than the bare mesh")]
    [InlineData("ninety", "read as a thickness")]
    public async Task A_slip_is_told_and_the_place_stays_as_it_was(string typed, string says)
    {
        var answer = await web.Browser.GetAsync($"{Map}&reading={typed}", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Cancel));
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("Place 4", page, StringComparison.Ordinal);
        Assert.Contains("value=\"1:90.1,2:91.4,3:89.8\"", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/gauge?bare=NaN&unit=um", "bare")]
    [InlineData("/gauge?bare=-78&unit=um", "bare")]
    [InlineData("/gauge?bare=5&unit=um", "is no bare mesh")]
    [InlineData("/gauge?unit=furlong", "'furlong' is not a unit")]
    [InlineData("/gauge?unit=um&at=12", "no place '12'")]
    [InlineData("/gauge?unit=um&p=1:ninety", "can't be understood")]
    [InlineData("/gauge?unit=um&p=1:1e300", "can't be understood")]
    public async Task Nonsense_in_the_address_is_told(string address, string says)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(says, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Cancel)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_uneven_coat_names_the_place_to_read_again()
    {
        var page = await PageAsync("/gauge?unit=um&p=1:12,2:12.4,3:11.8,4:12.2,5:18,6:12,7:12.1,8:11.9,9:12.2");
        Assert.Contains("Uneven: read place 5 again", page, StringComparison.Ordinal);
        Assert.Contains("All nine are read", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task In_mil_the_same_readings_are_the_same_micrometres()
    {
        var page = await PageAsync("/gauge?unit=mil&bare=3.0&reading=3.5");
        // 3.5 mil is 88.9 µm; half a mil over the mesh
        Assert.Contains("1:88.9", page, StringComparison.Ordinal);
        Assert.Contains("0.5 mil", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_kept_over_http_is_charted_on_the_page_and_given_back_as_a_shop_reads_it()
    {
        var rows = string.Concat(Enumerable.Range(1, 20).Select(day => $"S-{day},Ines,{(day > 12 ? "new" : "old")},Wren 47,61,64,P S,2026-11-{day:00},{(day > 12 ? 16 : 12) + (day % 3 * 0.4)}\n"));
        var kept = await PostAsync("/api/gauge/readings?by=Ines", $"screen,operator,trough,emulsion,mesh count,thread (um),strokes,date,eom (um)\n{rows}");
        Assert.Equal(20, kept["kept"]!.GetValue<int>());
        var page = await PageAsync("/gauge");
        Assert.Contains("New trough new coats", page, StringComparison.Ordinal);
        Assert.Contains("since Fri 13 Nov 2026", page, StringComparison.Ordinal);
        var readings = JsonNode.Parse(await web.Browser.GetStringAsync("/api/gauge/readings", Cancel))!;
        Assert.Equal(20, readings["readings"]!["coat"]!.AsArray().Count);
        var chart = JsonNode.Parse(await web.Browser.GetStringAsync("/api/gauge/chart", Cancel))!;
        Assert.Contains(chart["says"]!.AsArray(), says => page.Contains(says!.GetValue<string>(), StringComparison.Ordinal));

        using var none = new StringContent("");
        var third = readings["entries"]!.AsArray().Single(entry => (string?)entry!["screen"] == "S-3")!["number"]!;
        Assert.Equal(HttpStatusCode.BadRequest, (await web.Browser.PostAsync($"/api/gauge/readings/{third}/withdraw?by=Ines", none, Cancel)).StatusCode);
        var withdrawn = await web.Browser.PostAsync($"/api/gauge/readings/{third}/withdraw?by=Ines&why=on+a+thread", none, Cancel);
        Assert.Equal(HttpStatusCode.OK, withdrawn.StatusCode);
        var after = JsonNode.Parse(await withdrawn.Content.ReadAsStringAsync(Cancel))!;
        Assert.Equal("on a thread", (string?)after["entries"]!.AsArray().Single(entry => (string?)entry!["screen"] == "S-3")!["withdrawnBecause"]);
        Assert.Equal(19, after["readings"]!["coat"]!.AsArray().Count);
    }

    [Fact]
    public async Task A_reading_is_taken_back_on_its_page_with_who_and_why_and_stays_there()
    {
        _ = await PostAsync("/api/gauge/readings?by=Ines&source=page-test", "screen,operator,emulsion,eom (um)\nS-back,Ines,Wren 47,12.5\n");
        var number = (int)JsonNode.Parse(await web.Browser.GetStringAsync("/api/gauge/readings", Cancel))!["entries"]!.AsArray().Single(entry => (string?)entry!["screen"] == "S-back")!["number"]!;
        Assert.Contains($"/gauge/readings?take={number}#take-back", await PageAsync("/gauge/readings"), StringComparison.Ordinal);
        var address = $"/gauge/readings?take={number}";
        var form = Regex.Match(await PageAsync(address), "<form[^>]*id=\"take-back\".*?</form>", RegexOptions.Singleline).Value;
        var fields = Regex.Matches(form, "<input[^>]*name=\"([^\"]+)\"[^>]*value=\"([^\"]*)\"").ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value);
        (fields["by"], fields["why"]) = ("Bram", "");
        using var silent = new FormUrlEncodedContent(fields);
        Assert.Equal(HttpStatusCode.BadRequest, (await web.Browser.PostAsync(address, silent, Cancel)).StatusCode);
        fields["why"] = "the gauge stood on a thread";
        using var sent = new FormUrlEncodedContent(fields);
        var answer = await web.Browser.PostAsync(address, sent, Cancel);
        Assert.True(answer.IsSuccessStatusCode || answer.StatusCode is HttpStatusCode.Found or HttpStatusCode.SeeOther);
        var page = await PageAsync("/gauge/readings");
        Assert.Contains("by Bram: the gauge stood on a thread", page, StringComparison.Ordinal);
        Assert.DoesNotContain($"take={number}#", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_read_on_the_map_is_kept_with_the_name_of_who_read_it()
    {
        const string address = "/gauge?screen=S-77&operator=Bram&unit=um&bare=78&p=1:90,2:91";
        var page = await PageAsync(address);
        string[] forms = [.. Regex.Matches(page, "<form[^>]*method=\"post\".*?</form>", RegexOptions.Singleline).Select(match => match.Value)];
        var form = forms.Single(one => one.Contains("name=\"key\"", StringComparison.Ordinal));
        var fields = Regex.Matches(form, "<input[^>]*name=\"([^\"]+)\"[^>]*value=\"([^\"]*)\"").ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value);
        fields["by"] = "Tamsin";
        using var sent = new FormUrlEncodedContent(fields);
        var answer = await web.Browser.PostAsync(address, sent, Cancel);
        Assert.True(answer.IsSuccessStatusCode || answer.StatusCode is HttpStatusCode.Found or HttpStatusCode.SeeOther, await answer.Content.ReadAsStringAsync(Cancel));
        var readings = JsonNode.Parse(await web.Browser.GetStringAsync("/api/gauge/readings", Cancel))!["entries"]!.AsArray().Where(entry => (string?)entry!["screen"] == "S-77").ToArray();
        Assert.Equal([12.0, 13.0], readings.Select(entry => entry!["eomUm"]!.GetValue<double>()));
        Assert.All(readings, entry => Assert.Equal(("Tamsin", "Bram"), ((string?)entry!["recordedBy"], (string?)entry["operator"])));
    }

    [Fact]
    public async Task A_study_over_http_tells_its_figures_and_bad_input_its_faults()
    {
        var study = await PostAsync("/api/gauge/study?wanted=1um", "screen,operator,coated (um)\na,I,60\na,I,61\nb,I,70\nb,I,70.5\na,B,60.5\na,B,61.5\nb,B,71\nb,B,70\n");
        Assert.Equal("anova", (string?)study["method"]);
        using var content = new StringContent("screen,coated\na,60\n", new MediaTypeHeaderValue("text/csv"));
        Assert.Equal(HttpStatusCode.BadRequest, (await web.Browser.PostAsync("/api/gauge/study", content, Cancel)).StatusCode);
    }

    private async Task<JsonNode> PostAsync(string address, string text)
    {
        using var content = new StringContent(text, new MediaTypeHeaderValue("text/csv"));
        var answer = await web.Browser.PostAsync(address, content, Cancel);
        var body = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.True(answer.IsSuccessStatusCode, body);
        return JsonNode.Parse(body)!;
    }

    private async Task<string> PageAsync(string address) => WebUtility.HtmlDecode(await web.Browser.GetStringAsync(address, Cancel));
}
