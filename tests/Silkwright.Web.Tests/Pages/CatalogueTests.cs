using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Pages;

/// <summary>A catalogue shown on its page and answered over HTTP.</summary>
public sealed class CatalogueTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Two =
        """
        emulsion;property;value;ground;source;date
        Left;family;diazo;datasheet;sheet <1>;2025-01-31
        Left;solidsPercent;30%;datasheet;sheet <1>;2025-01-31
        Left;solidsPercent;25%;measuredHere;oven;2026-02-01
        Right;family;capillaryFilm;datasheet;sheet;
        """;

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("text")]
    [InlineData("file")]
    public async Task Pasted_or_sent_as_a_file_it_shows_the_sheets_the_conflict_and_the_questions(string field)
    {
        var (status, html) = await ShowAsync(field, Two);

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.All(["Left", "Right", "sources conflict", "in conflict: 30", "sheet &lt;1&gt;", "Nobody knows, so measure", "undated"], said => Assert.Contains(said, html, StringComparison.Ordinal));
        Assert.Equal(1, html.Split("class=\"sources\"").Length - 1);
        Assert.DoesNotContain("sheet <1>", html[..html.IndexOf("<textarea", StringComparison.Ordinal)], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faults_come_back_with_the_text_line_and_column()
    {
        var (status, html) = await ShowAsync("text", Two.Replace("30%", "300%", StringComparison.Ordinal).Replace("oven", "", StringComparison.Ordinal));

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.All(["2 things to put right", "text: line 3, column 3 (value)", "text: line 4, column 5 (source)", "300%"], said => Assert.Contains(said, html, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_film_sent_by_mistake_is_told_to_be_too_large()
    {
        var (status, html) = await ShowAsync("file", new string('x', 5 << 20));

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Contains("too large to be a catalogue", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_text_is_answered_as_a_document_over_http()
    {
        using var body = new StringContent(Two, Encoding.UTF8, "text/csv");
        var answer = await web.Browser.PostAsync("/api/catalogue", body, Cancel);
        var document = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!;

        Assert.Equal("silkwright/catalogue/1", (string?)document["schema"]);
        Assert.Equal(["Left", "Right"], document["emulsions"]!.AsArray().Select(sheet => (string?)sheet!["emulsion"]));
        var solids = document["emulsions"]![0]!["values"]![1]!;
        Assert.Equal((25, true), ((double)solids["used"]!["value"]!, (bool)solids["conflicts"]!));
    }

    [Theory]
    [InlineData("emulsion,property\nA,solidsPercent")]
    [InlineData("")]
    public async Task What_is_no_catalogue_is_refused_over_http_with_problem_details(string text)
    {
        using var body = new StringContent(text, Encoding.UTF8, "text/csv");
        var answer = await web.Browser.PostAsync("/api/catalogue", body, Cancel);

        Assert.Equal((HttpStatusCode.BadRequest, "application/problem+json"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
    }

    [Fact]
    public async Task Bytes_that_are_no_text_are_refused()
    {
        using var body = new ByteArrayContent([0xff, 0xfe, 0xfd, 0x80]);
        Assert.Equal(HttpStatusCode.BadRequest, (await web.Browser.PostAsync("/api/catalogue", body, Cancel)).StatusCode);
    }

    [Fact]
    public async Task One_to_fill_in_is_given()
    {
        var answer = await web.Browser.GetAsync("/api/catalogue/template", Cancel);
        Assert.Equal("text/csv", answer.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("emulsion,property,value,ground,source,date", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    private async Task<(HttpStatusCode Status, string Html)> ShowAsync(string field, string text)
    {
        using var form = new MultipartFormDataContent();
        foreach (var (name, value) in await web.HiddenFieldsAsync("/shop/catalogue", "catalogue"))
            form.Add(new StringContent(value), name);
        if (field == "file")
            form.Add(new ByteArrayContent(Encoding.UTF8.GetBytes(text)), "file", "c.csv");
        form.Add(new StringContent(field == "text" ? text : ""), "text");
        var answer = await web.Browser.PostAsync("/shop/catalogue", form, Cancel);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(Cancel));
    }
}
