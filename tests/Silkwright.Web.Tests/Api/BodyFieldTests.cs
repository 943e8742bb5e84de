using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Api;

/// <summary>Fields of a body that are written wrong or of the wrong kind are told as what they are, never passed over or called missing.</summary>
public sealed class BodyFieldTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private const string Job = """{ "run": 300, "colours": [ { "ink": "plastisol", "kind": "leftChestSpot" } ] }""";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/api/plan", "\"job\": JOB, \"shp\": {}", "shop")]
    [InlineData("/api/plan", "\"job\": JOB, \"keptCatalog\": true", "keptCatalogue")]
    [InlineData("/api/jobs", "\"job\": JOB, \"person\": \"Ada\", \"whyy\": \"new\"", "why")]
    [InlineData("/api/screens", "\"frame\": \"F\", \"mesh\": {\"countPerCm\": 61, \"threadUm\": 64}, \"person\": \"Ada\", \"meshLott\": \"T\"", "meshLot")]
    [InlineData("/api/screens", "\"frame\": \"F\", \"mesh\": {\"countPerCm\": 61, \"threadUm\": 64, \"dyd\": true}, \"person\": \"Ada\"", "dyed")]
    [InlineData("/api/screens/S-0001/entries", "\"fact\": {\"kind\": \"degreased\"}, \"persn\": \"Ada\"", "person")]
    [InlineData("/api/screens/S-0001/entries", "\"fact\": {\"kind\": \"printed\", \"impressions\": 60, \"jobIdd\": \"x\"}, \"person\": \"Ada\"", "jobId")]
    [InlineData("/api/expose/fit", "\"tabel\": \"\"", "table")]
    [InlineData("/api/shelf", "\"emulsions\": [{\"id\": \"A\", \"fixedCostPerMonth\": 10}], \"jobs\": [{\"id\": \"f\", \"screensPerMonth\": 5, \"mustStayOnn\": \"A\", \"costs\": {\"A\": 2}}]", "mustStayOn")]
    public async Task A_field_written_wrong_is_told_with_what_was_meant(string address, string fields, string meant)
    {
        var problems = await RefusedAsync(address, fields);
        Assert.Contains(problems, problem => problem.Remedy.StartsWith($"Write {meant} if that is meant", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/api/coat/readings", "\"readings\": \"\", \"wanted\": 14", "wanted", "a text")]
    [InlineData("/api/coat/predict", "\"readings\": [], \"cases\": \"\"", "readings", "a text")]
    [InlineData("/api/expose/fit", "\"table\": {}", "table", "a text")]
    [InlineData("/api/plan", "\"job\": 5", "job", "an object")]
    [InlineData("/api/plan", "\"job\": JOB, \"shop\": \"quay\"", "shop", "an object")]
    [InlineData("/api/plan", "\"job\": JOB, \"catalogue\": {}", "catalogue", "a text")]
    [InlineData("/api/plan", "\"job\": JOB, \"keptCatalogue\": \"yes\"", "keptCatalogue", "true or false")]
    [InlineData("/api/jobs", "\"job\": JOB, \"person\": 7", "person", "a text")]
    [InlineData("/api/jobs", "\"job\": [], \"person\": \"Ada\"", "job", "an object")]
    [InlineData("/api/screens", "\"frame\": 7, \"mesh\": {\"countPerCm\": 61, \"threadUm\": 64}, \"person\": \"Ada\"", "frame", "a text")]
    [InlineData("/api/screens", "\"frame\": \"F\", \"mesh\": \"61/64\", \"person\": \"Ada\"", "mesh", "an object")]
    [InlineData("/api/screens", "\"frame\": \"F\", \"mesh\": {\"countPerCm\": 61, \"threadUm\": 64, \"dyed\": \"no\"}, \"person\": \"Ada\"", "mesh.dyed", "true or false")]
    [InlineData("/api/screens/S-0001/entries", "\"fact\": \"degreased\", \"person\": \"Ada\"", "fact", "an object")]
    [InlineData("/api/screens/S-0001/entries", "\"fact\": {\"kind\": \"degreased\"}, \"person\": \"Ada\", \"at\": 14", "at", "a text")]
    public async Task A_field_of_the_wrong_kind_is_told_as_that(string address, string fields, string where, string kind)
    {
        var problem = Assert.Single(await RefusedAsync(address, fields));
        Assert.Equal(where, problem.Where);
        Assert.Contains(kind, problem.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/plan", "application/json")]
    [InlineData("/api/shelf", "application/json")]
    [InlineData("/api/catalogue", "text/csv")]
    [InlineData("/api/gauge/read", "text/csv")]
    public async Task A_body_in_utf_16_is_told_how_to_save_it(string address, string type)
    {
        using var body = new ByteArrayContent(new UnicodeEncoding(bigEndian: false, byteOrderMark: false).GetBytes("""{ "run": 5 }"""));
        body.Headers.ContentType = new(type);
        var answer = await web.Browser.PostAsync(address, body, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("UTF-8", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/gauge/readings?take=abc&before=1e9")]
    [InlineData("/coat/experience?take=abc")]
    public async Task A_page_asked_with_nonsense_is_shown_as_if_it_were_not_there(string address)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);
        Assert.True((int)answer.StatusCode < 500, $"{answer.StatusCode}");
        Assert.DoesNotContain("System.", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    private async Task<IReadOnlyList<(string What, string Where, string Remedy)>> RefusedAsync(string address, string fields)
    {
        using var body = new StringContent($"{{ {fields.Replace("JOB", Job, StringComparison.Ordinal)} }}", Encoding.UTF8, "application/json");
        var answer = await web.Browser.PostAsync(address, body, Cancel);
        var text = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.True(answer.StatusCode == HttpStatusCode.BadRequest, text);
        return [.. JsonNode.Parse(text)!["problems"]!.AsArray().Select(problem => ((string)problem!["what"]!, (string)problem["where"]!, (string)problem["remedy"]!))];
    }
}
