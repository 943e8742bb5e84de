using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Pages;

/// <summary>A catalogue kept by its page and over HTTP, each seen by the other.</summary>
public sealed class KeptCatalogueTests : IAsyncLifetime
{
    private const string First = "emulsion,property,value,ground,source,date\nLeft,family,diazo,datasheet,\"sheet <1>; \"\"new\"\"\",2025-01-31\nLeft,solidsPercent,30,datasheet,\"sheet <1>; \"\"new\"\"\",2025-01-31\n";
    private const string Second = "emulsion,property,value,ground,source,date\nLeft,family,diazo,datasheet,\"sheet <1>; \"\"new\"\"\",2025-01-31\nLeft,solidsPercent,27,measuredHere,oven,2026-02-01\nRight,family,photopolymer,datasheet,sheet,\n";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly RunningWeb web = new();

    public ValueTask InitializeAsync() => web.InitializeAsync();

    public ValueTask DisposeAsync() => web.DisposeAsync();

    [Fact]
    public async Task Shown_then_kept_on_the_page_it_is_there_with_who_and_when()
    {
        var shown = await ShowAsync(First);
        Assert.All(["None is kept yet", "Keep this catalogue", "<b>New:</b> Left"], said => Assert.Contains(said, shown, StringComparison.Ordinal));
        Assert.Null(await web.Store.Catalogues.CurrentAsync(Cancel));

        var (status, kept) = await KeepAsync(shown, "Ines");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.All(["Kept by <b>Ines</b>", "revision 1", "sheet &lt;1&gt;; &quot;new&quot;"], said => Assert.Contains(said, kept, StringComparison.Ordinal));
        Assert.DoesNotContain("Keep this catalogue", kept, StringComparison.Ordinal);
        Assert.Equal(First, (await web.Store.Catalogues.CurrentAsync(Cancel))!.Revision.Text);

        var changed = await ShowAsync(Second);
        Assert.All(["Against the kept one", "<b>Changed:</b> Left", "becomes 27 %"], said => Assert.Contains(said, changed, StringComparison.Ordinal));
        _ = await web.Browser.PutAsync("/api/catalogue?by=Bram", Csv(First.Replace(",30,", ",31,", StringComparison.Ordinal)), Cancel);
        var (late, told) = await KeepAsync(changed, "Ines");
        Assert.Equal(HttpStatusCode.BadRequest, late);
        Assert.All(["Bram has saved revision 2", "Nothing was changed.", "Keep this catalogue"], said => Assert.Contains(said, told, StringComparison.Ordinal));
        Assert.Equal(2, (await web.Store.Catalogues.CurrentAsync(Cancel))!.Revision.Revision);
    }

    [Fact]
    public async Task Over_http_a_check_keeps_nothing_and_what_is_put_is_got()
    {
        var none = await web.Browser.GetAsync("/api/catalogue", Cancel);
        Assert.Equal((HttpStatusCode.NotFound, "application/problem+json"), (none.StatusCode, none.Content.Headers.ContentType!.MediaType));

        var put = await DocumentAsync(await web.Browser.PutAsync("/api/catalogue?by=Ines&basedOn=0", Csv(First), Cancel));
        Assert.Equal((1, "Ines"), ((int)put["kept"]!["revision"]!, (string)put["kept"]!["savedBy"]!));
        var check = await DocumentAsync(await web.Browser.PostAsync("/api/catalogue", Csv(Second), Cancel));
        Assert.Null(check["kept"]);
        Assert.Equal("Right", (string?)Assert.Single(check["changes"]!["new"]!.AsArray()));
        var change = Assert.Single(check["changes"]!["changed"]!.AsArray())!;
        Assert.Equal(("solidsPercent", 30, 27), ((string)change["property"]!, (double)change["before"]!["value"]!, (double)change["after"]!["value"]!));

        var got = await DocumentAsync(await web.Browser.GetAsync("/api/catalogue", Cancel));
        Assert.Equal("Left", (string?)Assert.Single(got["emulsions"]!.AsArray())!["emulsion"]);
        Assert.Equal(First, await web.Browser.GetStringAsync("/api/catalogue/text", Cancel));
    }

    [Theory]
    [InlineData("", "by")]
    [InlineData("?by=Ines&basedOn=last", "basedOn")]
    [InlineData("?by=Ines&basedOn=7", "the kept catalogue")]
    [InlineData("?by=a%00b", "by")]
    public async Task Nobody_named_and_a_revision_never_seen_are_told(string query, string where)
    {
        var answer = await web.Browser.PutAsync($"/api/catalogue{query}", Csv(First), Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var problem = Assert.Single(JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!["problems"]!.AsArray())!;
        Assert.Equal(where, (string?)problem["where"]);
        Assert.Null(await web.Store.Catalogues.CurrentAsync(Cancel));
    }

    private static StringContent Csv(string text) => new(text, Encoding.UTF8, "text/csv");

    private static async Task<JsonNode> DocumentAsync(HttpResponseMessage answer)
    {
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!;
    }

    private async Task<string> ShowAsync(string text)
    {
        using var form = new MultipartFormDataContent();
        foreach (var (name, value) in await web.HiddenFieldsAsync("/shop/catalogue", "catalogue"))
            form.Add(new StringContent(value), name);
        form.Add(new StringContent(text), "text");
        var answer = await web.Browser.PostAsync("/shop/catalogue", form, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(Cancel);
    }

    /// <summary>Presses the button of the page that was shown.</summary>
    private async Task<(HttpStatusCode Status, string Html)> KeepAsync(string shown, string by)
    {
        using var form = new FormUrlEncodedContent(RunningWeb.HiddenFieldsOf(shown, "keep-catalogue").Append(new("by", by)));
        var answer = await web.Browser.PostAsync("/shop/catalogue", form, Cancel);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(Cancel));
    }
}
