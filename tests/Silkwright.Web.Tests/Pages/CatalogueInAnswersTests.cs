using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Silkwright.Contracts;

namespace Silkwright.Web.Tests.Pages;

/// <summary>What the kept catalogue knows reaches plans and choices, on the page and over HTTP alike.</summary>
public sealed class CatalogueInAnswersTests : IAsyncLifetime
{
    private const string Csv =
        """
        emulsion,property,value,ground,source,date
        Linnet,family,diazo,datasheet,invented sheet,2024-03-12
        Linnet,solidsPercent,28,datasheet,invented sheet,2024-03-12
        Siskin,family,photopolymer,datasheet,invented sheet,2025-11-03
        Siskin,solidsPercent,48,datasheet,invented sheet,2025-11-03
        """;

    private const string Job = """{ "name": "Phone", "run": 300, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] }""";
    private const string Told = "Linnet: solids by weight 28 %, from the catalogue (invented sheet, 2024-03-12)";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly RunningWeb web = new();

    public async ValueTask InitializeAsync()
    {
        await web.InitializeAsync();
        _ = await web.Store.Shops.SaveAsync((await web.Store.Shops.DefaultKeyAsync(Cancel))!, """{ "name": "Quay", "emulsions": [ { "id": "Linnet", "family": "diazo" } ] }""", "Ines", "First look round", cancel: Cancel);
        _ = await web.Store.Jobs.SaveAsync("phone", Job, "Ines", "Asked", cancel: Cancel);
    }

    public ValueTask DisposeAsync() => web.DisposeAsync();

    [Fact]
    public async Task A_jobs_plan_tells_what_the_kept_catalogue_told_of_the_shops_emulsion()
    {
        Assert.DoesNotContain(Told, await web.Browser.GetStringAsync("/jobs/phone", Cancel), StringComparison.Ordinal);
        await KeepAsync();
        Assert.Contains(Told, await web.Browser.GetStringAsync("/jobs/phone", Cancel), StringComparison.Ordinal);
        Assert.Contains(Told, await web.Browser.GetStringAsync("/shop", Cancel), StringComparison.Ordinal);
        var plan = JsonNode.Parse(await web.Browser.GetStringAsync("/api/jobs/phone/plan", Cancel))!;
        Assert.Equal("datasheet", (string?)plan["notes"]!.AsArray().Single(note => ((string)note!["text"]!).StartsWith(Told, StringComparison.Ordinal))!["ground"]);
        // The catalogue's other emulsions are not on the shelf, and nobody has asked for them.
        Assert.Empty(plan["colours"]![0]!["beaten"]!.AsArray());
    }

    [Fact]
    public async Task The_question_can_be_asked_of_the_kept_catalogue_once_there_is_one()
    {
        Assert.DoesNotContain("the kept catalogue", await web.Browser.GetStringAsync("/choose", Cancel), StringComparison.Ordinal);
        var none = await web.Browser.GetAsync("/choose?ink=plastisol&run=300&shelf=catalogue", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, none.StatusCode);
        Assert.Contains("No catalogue is kept here yet", await none.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        await KeepAsync();

        var page = await web.Browser.GetStringAsync("/choose?ink=plastisol&run=300&shelf=ownAndCatalogue", Cancel);
        Assert.All(["held against the kept catalogue", "Siskin", Told], said => Assert.Contains(said, page, StringComparison.Ordinal));
        Assert.Equal(["Linnet", "Siskin"], await CandidatesAsync("ownAndCatalogue"));
        Assert.Equal(["Linnet", "Siskin"], await CandidatesAsync("catalogue"));
        Assert.Equal(["Linnet"], await CandidatesAsync("own"));
    }

    [Theory]
    [InlineData("\"keptCatalogue\": true", "Siskin")]
    [InlineData("\"catalogue\": \"emulsion,property,value,ground,source,date\\nPipit,family,dualCure,datasheet,sheet,\"", "Pipit")]
    [InlineData("\"shop\": { \"name\": \"Mill\" }, \"keptCatalogue\": true", "Siskin")]
    public async Task A_plan_over_http_weighs_the_catalogue_that_is_asked_for(string asked, string named)
    {
        await KeepAsync();
        var (status, document) = await PlanAsync(asked);
        Assert.Equal(HttpStatusCode.OK, status);
        var colour = document["colours"]![0]!;
        Assert.Contains(named, colour["beaten"]!.AsArray().Select(one => (string?)one!["emulsion"]).Append((string?)colour["emulsion"]));
    }

    [Fact]
    public async Task Two_catalogues_and_one_with_faults_are_told_at_once()
    {
        var (status, document) = await PlanAsync("\"keptCatalogue\": true, \"catalogue\": \"emulsion\\nA\"");
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Equal(6, document["problems"]!.AsArray().Count);
    }

    [Fact]
    public async Task A_catalogue_that_is_no_text_is_told()
    {
        var (status, document) = await PlanAsync("\"catalogue\": 7");
        Assert.Equal((HttpStatusCode.BadRequest, "catalogue"), (status, (string?)Assert.Single(document["problems"]!.AsArray())!["where"]));
    }

    [Theory]
    [InlineData("attic")]
    [InlineData("1")]
    public async Task A_shelf_that_nobody_knows_is_told(string shelf)
    {
        var answer = await web.Browser.GetAsync($"/api/choose?ink=plastisol&run=300&shelf={shelf}", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("usual, own, catalogue, ownAndCatalogue", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_kept_catalogues_emulsions_are_weighed_for_the_shelf_where_asked()
    {
        await KeepAsync();
        Assert.DoesNotContain("Siskin", await web.Browser.GetStringAsync("/api/shelf", Cancel), StringComparison.Ordinal);
        Assert.Contains("Siskin", await web.Browser.GetStringAsync("/api/shelf?shelf=ownAndCatalogue", Cancel), StringComparison.Ordinal);
        Assert.Contains("shelf=ownAndCatalogue", await web.Browser.GetStringAsync("/shelf", Cancel), StringComparison.Ordinal);
        Assert.Contains("and of the kept catalogue", await web.Browser.GetStringAsync("/shelf?shelf=ownAndCatalogue", Cancel), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.BadRequest, (await web.Browser.GetAsync("/api/shelf?shelf=usual", Cancel)).StatusCode);
    }

    private async Task KeepAsync() => _ = await web.Store.Catalogues.SaveAsync(CatalogueReader.Read(Csv, "c.csv"), "Ines", cancel: Cancel);

    private async Task<IEnumerable<string?>> CandidatesAsync(string shelf)
    {
        var answer = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/choose?ink=plastisol&run=300&shelf={shelf}", Cancel))!;
        return answer["candidates"]!.AsArray().Select(one => (string?)one!["emulsion"]).Order();
    }

    private async Task<(HttpStatusCode Status, JsonNode Document)> PlanAsync(string asked)
    {
        using var body = new StringContent($"{{ \"job\": {Job}, {asked} }}", Encoding.UTF8, "application/json");
        var answer = await web.Browser.PostAsync("/api/plan", body, Cancel);
        return (answer.StatusCode, JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!);
    }
}
