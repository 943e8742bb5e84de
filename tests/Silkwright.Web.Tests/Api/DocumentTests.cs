using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using Silkwright.Film.TestFilms;

namespace Silkwright.Web.Tests.Api;

public sealed class DocumentTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_mesh_document_answers_the_shells_texts()
    {
        var mesh = await GetAsync("/api/mesh?count=120/cm&thread=40um");

        // A mesh maker's page for 120/40 (trade-practice collection, geometry of relaxed mesh): pitch is 10 mm / 120 by definition.
        Assert.Equal("silkwright/mesh/1", (string?)mesh["schema"]);
        Assert.Equal(83.333, (double)mesh["pitchUm"]!, tolerance: 0.001);
        Assert.Equal(43.333, (double)mesh["openingUm"]!, tolerance: 0.001);
    }

    [Fact]
    public async Task Saturated_air_at_25_degrees_holds_the_published_vapour_pressure()
    {
        var air = await GetAsync("/api/dry/air?temperature=25C&humidity=50%25");

        // ASHRAE Handbook, Fundamentals, chapter 1, saturation table: 3.1693 kPa at 25 °C (recalled from memory), within 0.1 %.
        Assert.Equal(3169.3, (double)air["saturationPressurePa"]!, tolerance: 3.2);
    }

    [Fact]
    public async Task Two_wedge_steps_double_the_exposure()
    {
        var step = await GetAsync("/api/expose/step?seconds=60s&observed=5&target=7");

        // 10^(2 * 0.15) = 1.995 by the definition of density.
        Assert.Equal(119.7, (double)step["seconds"]!, tolerance: 0.1);
    }

    [Fact]
    public async Task Every_fault_of_a_question_is_told_at_once_with_its_remedy()
    {
        var answer = await web.Browser.GetAsync("/api/mesh?count=61&thread=thick", Cancel);
        var problem = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!;

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        var problems = problem["problems"]!.AsArray();
        Assert.Equal(["count", "thread"], problems.Select(p => (string?)p!["where"]));
        Assert.All(problems, p => Assert.False(string.IsNullOrWhiteSpace((string?)p!["remedy"])));
    }

    [Theory]
    [InlineData("/api/mesh?count=٣/cm&thread=64um", "count")]
    [InlineData("/api/mesh?count=61/cm&thread=６４um", "thread")]
    [InlineData("/api/expose/step?units=٦٠&observed=5&target=7", "units")]
    [InlineData("/api/dry/time?temperature=25C&humidity=50%25&wet-thickness=५..६um&solids=40%25", "wet-thickness")]
    public async Task Digits_of_another_script_are_told_and_never_a_failure_of_ours(string question, string where)
    {
        var answer = await web.Browser.GetAsync(question, Cancel);
        var problem = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!;

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(where, (string?)Assert.Single(problem["problems"]!.AsArray())!["where"]);
    }

    [Fact]
    public async Task A_job_without_films_gets_a_plan()
    {
        var body = """{ "job": { "name": "Phone", "run": 300, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] } }""";
        var answer = await PostAsync("/api/plan", body);
        var plan = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!;

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("silkwright/plan/1", (string?)plan["schema"]);
        Assert.Single(plan["colours"]!.AsArray());
        Assert.NotEmpty(plan["notes"]!.AsArray());
    }

    /// <summary>By hand: A alone 10 + 5 x 2 + 5 x 9 = 65; B alone cannot make flags; both 10 + 12 + 5 x 2 + 5 x 3 = 47.</summary>
    [Fact]
    public async Task A_shelf_small_enough_to_price_by_hand_is_priced_so()
    {
        var body = """{"emulsions": [{"id": "A", "fixedCostPerMonth": 10}, {"id": "B", "fixedCostPerMonth": 12}], "jobs": [{"id": "flags", "screensPerMonth": 5, "costs": {"A": 2}}, {"id": "tees", "screensPerMonth": 5, "costs": {"A": 9, "B": 3}}]}""";
        var answer = await PostAsync("/api/shelf", body);
        var shelf = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!;

        Assert.Equal("silkwright/shelf/1", (string?)shelf["schema"]);
        Assert.Equal(47, (double)shelf["monthlyCost"]!, tolerance: 1e-9);
        Assert.Equal(HttpStatusCode.BadRequest, (await PostAsync("/api/shelf", """{"emulsions": []}""")).StatusCode);
    }

    [Fact]
    public async Task Coats_are_predicted_out_of_tables_as_in_the_shell()
    {
        const string header = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses";
        var tables = new JsonObject { ["readings"] = $"{header},eomUm\nA,B,c,D,38,61,64,2,1,17\n", ["cases"] = $"{header}\nA,B,c,D,38,61,64,2,1\n" };
        var coat = JsonNode.Parse(await (await PostAsync("/api/coat/predict", tables.ToJsonString())).Content.ReadAsStringAsync(Cancel))!;
        var needed = JsonNode.Parse(await (await PostAsync("/api/coat/readings", new JsonObject { ["readings"] = (string)tables["readings"]!, ["wanted"] = "2um" }.ToJsonString())).Content.ReadAsStringAsync(Cancel))!;

        Assert.Equal("measuredHere", (string?)Assert.Single(coat["cases"]!.AsArray())!["ground"]);
        Assert.True((int)needed["readingsNeeded"]! >= 1);
        var next = JsonNode.Parse(await (await PostAsync("/api/coat/next", tables.ToJsonString())).Content.ReadAsStringAsync(Cancel))!;
        Assert.True((double)Assert.Single(next["readings"]!.AsArray())!["shrinksUm"]! > 0);
        tables["without"] = new JsonArray("a");
        Assert.Contains("A shares nothing", await (await PostAsync("/api/coat/next", tables.ToJsonString())).Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        tables["readings"] = $"{header},eomUm\nA,B,c,D,3,61,64,2,1,17\n";
        var refused = await PostAsync("/api/coat/predict", tables.ToJsonString());
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
        Assert.Contains("line 2, column 5", await refused.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    /// <summary>A field written wrong would share a shop that wished not to.</summary>
    [Theory]
    [InlineData("/api/coat/predict", "witout", "without")]
    [InlineData("/api/coat/next", "witout", "without")]
    [InlineData("/api/coat/experience", "witout", "without")]
    [InlineData("/api/coat/aim", "tolerence", "tolerance")]
    public async Task A_field_written_wrong_is_told_with_the_one_that_was_meant(string path, string written, string meant)
    {
        var refused = await PostAsync(path, new JsonObject { [written] = new JsonArray("Cellar") }.ToJsonString());

        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
        var text = await refused.Content.ReadAsStringAsync(Cancel);
        Assert.Contains($"'{written}'", text.Replace("\\u0027", "'", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains($"Write {meant}", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Experience_is_made_and_used_as_in_the_shell()
    {
        const string header = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses";
        var readings = $"{header},eomUm\n{string.Concat(Enumerable.Range(0, 12).Select(i => FormattableString.Invariant($"A,B,c,D,38,61,64,{1 + (i % 2)},1,{14 + i}\n")))}";
        var experience = JsonNode.Parse(await (await PostAsync("/api/coat/experience", new JsonObject { ["readings"] = readings }.ToJsonString())).Content.ReadAsStringAsync(Cancel))!;
        Assert.Equal("silkwright/coat-experience/1", (string?)experience["schema"]);
        var asked = new JsonObject { ["readings"] = $"{header},eomUm\nZ,Y,x,D,38,61,64,1,1,17\n", ["cases"] = $"{header}\nZ,Y,x,D,38,61,64,2,1\n" };
        var alone = await FirstAsync();
        asked["experience"] = new JsonArray(experience.DeepClone());
        var helped = await FirstAsync();

        Assert.NotEqual((double)alone["eomUm"]!, (double)helped["eomUm"]!, 0.1);
        var planned = new JsonObject { ["job"] = JsonNode.Parse("""{"name": "N", "run": 100, "colours": [{"name": "a", "ink": "plastisol", "kind": "largeSolid"}]}"""), ["shop"] = new JsonObject(), ["experience"] = new JsonArray(experience.DeepClone()) };
        var plan = JsonNode.Parse(await (await PostAsync("/api/plan", planned.ToJsonString())).Content.ReadAsStringAsync(Cancel))!;
        Assert.Equal("measuredElsewhere", (string?)plan["colours"]![0]!["coat"]!["eomUm"]!["ground"]);
        asked["experience"] = new JsonArray(experience.DeepClone(), experience.DeepClone());
        Assert.Equal(HttpStatusCode.BadRequest, (await PostAsync("/api/coat/predict", asked.ToJsonString())).StatusCode);
        var keeps = await PostAsync("/api/coat/experience", """{"shop": {"name": "Cellar", "sharesExperience": false}}""");
        Assert.Contains("Cellar shares nothing", await keeps.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);

        async Task<JsonNode> FirstAsync() => JsonNode.Parse(await (await PostAsync("/api/coat/predict", asked.ToJsonString())).Content.ReadAsStringAsync(Cancel))!["cases"]![0]!;
    }

    [Theory]
    [InlineData("not json at all")]
    [InlineData("[1, 2]")]
    [InlineData("""{ "job": { "run": -5, "colours": [] } }""")]
    [InlineData("""{ "job": { "run": 5, "colours": [ { "ink": "gold" } ] }, "shop": { "meshes": "many" } }""")]
    public async Task A_bad_job_is_told_what_where_and_what_to_do_and_never_a_stack(string body)
    {
        var answer = await PostAsync("/api/plan", body);
        var text = await answer.Content.ReadAsStringAsync(Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.All(JsonNode.Parse(text)!["problems"]!.AsArray(), p =>
        {
            Assert.False(string.IsNullOrWhiteSpace((string?)p!["what"]));
            Assert.False(string.IsNullOrWhiteSpace((string?)p!["where"]));
            Assert.False(string.IsNullOrWhiteSpace((string?)p!["remedy"]));
        });
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Several_films_are_one_job_and_are_held_against_each_other()
    {
        using var form = new MultipartFormDataContent
        {
            { new ByteArrayContent(SmallFilm.Png), "film", "base.png" },
            { new ByteArrayContent(SmallFilm.Png), "film", "moon.png" },
        };
        var answer = await web.Browser.PostAsync("/api/film?frame-width=500mm&frame-height=50", form, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        answer = await web.Browser.PostAsync("/api/film?frame-width=500mm&frame-height=50cm&mesh=61/cm,64um", form, Cancel);
        var document = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!;

        Assert.Equal(["base.png", "moon.png"], document["films"]!.AsArray().Select(film => (string?)film!["file"]));
        Assert.True((bool?)document["job"]!["sameSize"]);
        Assert.True((bool?)document["job"]!["fitsFrame"]);
        Assert.Equal(0, (int)document["films"]![0]!["finerThanMesh"]!["lines"]!);
        Assert.StartsWith("Nothing prints anywhere on this film: there is no artwork.", (string?)document["films"]![0]!["words"], StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(web.FilmsFolder));
    }

    [Fact]
    public async Task A_pdf_is_drawn_at_the_resolution_asked_for_and_says_so()
    {
        using var form = new MultipartFormDataContent { { new ByteArrayContent(PdfPageWriter.Make(72, 72, 0, "0 g 18 18 36 36 re f")), "film", "base.pdf" } };
        var answer = await web.Browser.PostAsync("/api/film?dpi=300", form, Cancel);
        var text = await answer.Content.ReadAsStringAsync(Cancel);
        var installed = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, "pdftoppm")));

        Assert.Equal(installed ? HttpStatusCode.OK : HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(installed ? "drawn at 300 dpi" : "poppler-utils", text, StringComparison.Ordinal);
        if (installed)
            Assert.Equal(25, (double)JsonNode.Parse(text)!["coveragePercent"]!, 0.5);
    }

    [Fact]
    public async Task A_file_that_is_no_film_is_refused_and_nothing_is_kept()
    {
        using var form = new MultipartFormDataContent { { new ByteArrayContent(Encoding.ASCII.GetBytes("hello, not a film")), "film", "../../poster.tif" } };
        var answer = await web.Browser.PostAsync("/api/film", form, Cancel);
        var text = await answer.Content.ReadAsStringAsync(Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("poster.tif", text, StringComparison.Ordinal);
        Assert.DoesNotContain(".incoming", text, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(web.FilmsFolder));
    }

    [Fact]
    public async Task A_screen_is_put_on_record_and_written_to_once_for_each_key()
    {
        var added = JsonNode.Parse(await (await PostAsync("/api/screens", """{ "frame": "F-9", "mesh": { "countPerCm": 61, "threadUm": 64 }, "person": "Ada" }""")).Content.ReadAsStringAsync(Cancel))!;
        var id = (string)added["id"]!;
        const string entry = """{ "fact": { "kind": "degreased" }, "person": "Ada", "idempotencyKey": "k-1" }""";
        _ = await PostAsync($"/api/screens/{id}/entries", entry);
        var again = JsonNode.Parse(await (await PostAsync($"/api/screens/{id}/entries", entry)).Content.ReadAsStringAsync(Cancel))!;

        Assert.Single(again["entries"]!.AsArray());
        Assert.Equal("degreased", (string?)again["stage"]);
    }

    [Fact]
    public async Task The_program_says_when_it_is_ready_and_what_it_answers()
    {
        Assert.Equal("ready", await web.Browser.GetStringAsync("/health/ready", Cancel));
        var api = await web.Browser.GetFromJsonAsync<JsonObject>("/openapi/v1.json", Cancel);
        Assert.Contains("/api/plan", api!["paths"]!.AsObject().Select(p => p.Key));
    }

    [Theory]
    [InlineData("site.css", "text/css")]
    [InlineData("site.js", "text/javascript")]
    [InlineData("plex-sans.woff2", "font/woff2")]
    public async Task Style_script_and_type_are_there_however_the_program_is_started(string file, string type)
    {
        var answer = await web.Browser.GetAsync($"/look/{file}", Cancel);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
        Assert.True((await answer.Content.ReadAsByteArrayAsync(Cancel)).Length > 500);
    }

    private async Task<JsonNode> GetAsync(string address) => JsonNode.Parse(await web.Browser.GetStringAsync(address, Cancel))!;

    private Task<HttpResponseMessage> PostAsync(string address, string body) =>
        web.Browser.PostAsync(address, new StringContent(body, Encoding.UTF8, "application/json"), Cancel);
}
