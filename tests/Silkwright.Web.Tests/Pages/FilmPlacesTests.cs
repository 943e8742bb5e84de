using System.Net;
using System.Text.Json.Nodes;
using Silkwright.Film.TestFilms;
using Silkwright.Records.Films;
using SkiaSharp;

namespace Silkwright.Web.Tests.Pages;

/// <summary>A film of 1200 x 900 px at 600 dpi, drawn by hand: an upright bar of 10 px (423 µm) from x = 400, and beside it after a gap of 4 px (169 µm) a block of 300 px.</summary>
public sealed class FilmPlacesTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Tiles_show_the_film_at_every_size_and_no_others_are_there()
    {
        var film = await KeepAsync();
        using var whole = await PictureAsync($"/films/{film.Hash}/tiles/0/0/0.png");
        Assert.Equal((300, 225), (whole.Width, whole.Height));
        using var deep = await PictureAsync($"/films/{film.Hash}/tiles/2/0/0.png");
        Assert.Equal((512, 512), (deep.Width, deep.Height));
        Assert.Equal("0,255,0,255", string.Join(',', new[] { (405, 100), (411, 100), (420, 100), (399, 100) }.Select(at => deep.GetPixel(at.Item1, at.Item2).Red)));
        Assert.Equal(0, whole.GetPixel(150, 100).Red);
        foreach (var none in (string[])["3/0/0", "2/3/0", "0/0/1", "-1/0/0", "2/0/x"])
            Assert.Equal(HttpStatusCode.NotFound, (await web.Browser.GetAsync($"/films/{film.Hash}/tiles/{none}.png", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await web.Browser.GetAsync($"/films/{new string('0', 64)}/tiles/0/0/0.png", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await web.Browser.GetAsync("/films/..%2f..%2fetc/tiles/0/0/0.png", Cancel)).StatusCode);
    }

    [Theory]
    [InlineData("x=17.1mm&y=10mm", "image", 423.3, null)]
    [InlineData("x=0.686in&y=10mm&mesh=61/cm,64um", "gap", 169.3, "onTheEdge")]
    [InlineData("x=17.1mm&y=10mm&mesh=61/cm,64um&stencil-holds=500um", "image", 423.3, "finer")]
    public async Task A_spot_is_told_over_http(string spot, string kind, double widthUm, string? judgement)
    {
        var film = await KeepAsync();
        var document = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/films/{film.Hash}/width?{spot}", Cancel))!;
        Assert.Equal("silkwright/film-width/1", (string?)document["schema"]);
        Assert.Equal(kind, (string?)document["kind"]);
        Assert.Equal(widthUm, (double)document["widthUm"]!, 0.1);
        Assert.Equal(25_400 / 600.0, (double)document["highUm"]! - (double)document["widthUm"]!, 1e-9);
        Assert.Equal(judgement, (string?)document["against"]?["judgement"]);
    }

    [Theory]
    [InlineData("x=17.1mm", HttpStatusCode.BadRequest)]
    [InlineData("x=17.1&y=10mm", HttpStatusCode.BadRequest)]
    [InlineData("x=17.1mm&y=1000mm", HttpStatusCode.BadRequest)]
    [InlineData("x=17.1mm&y=10mm&z=1", HttpStatusCode.BadRequest)]
    public async Task A_spot_that_cannot_be_is_told(string spot, HttpStatusCode answer)
    {
        var film = await KeepAsync();
        Assert.Equal(answer, (await web.Browser.GetAsync($"/api/films/{film.Hash}/width?{spot}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await web.Browser.GetAsync($"/api/films/{new string('0', 64)}/width?x=1mm&y=1mm", Cancel)).StatusCode);
    }

    [Fact]
    public async Task The_jobs_page_tells_a_spot_without_any_script()
    {
        var film = await KeepAsync();
        const string job = """{"id": "spots", "person": "Ada", "job": {"name": "Spots", "run": 50, "colours": [{"ink": "plastisol", "film": "bars.tif"}]}}""";
        using var body = new StringContent(job, System.Text.Encoding.UTF8, "application/json");
        _ = (await web.Browser.PostAsync("/api/jobs", body, Cancel)).EnsureSuccessStatusCode();
        await web.Store.Jobs.AttachFilmAsync("spots", "bars.tif", film.Hash, "Ada", Cancel);
        var page = "";
        for (var wait = 0; wait < 100 && !page.Contains("film-spot", StringComparison.Ordinal); wait++)
        {
            await Task.Delay(200, Cancel);
            page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync("/jobs/spots?station=film&x=17.1mm&y=10mm", Cancel));
        }

        Assert.Contains("Prints, 423 µm (16.7 mil) wide, 381 µm", page, StringComparison.Ordinal);
        Assert.Contains("name=\"x\" value=\"17.1mm\"", page, StringComparison.Ordinal);
        Assert.Contains("class=\"disc\"", page, StringComparison.Ordinal);
        Assert.Contains("Which side reads right cannot be told from the file", page, StringComparison.Ordinal);
        Assert.Contains("May fill in:", page, StringComparison.Ordinal);
        var off = WebUtility.HtmlDecode(await web.Browser.GetStringAsync("/jobs/spots?station=film&x=80&y=10", Cancel));
        Assert.Contains("There is no film at 80, 10 mm.", off, StringComparison.Ordinal);
    }

    /// <summary>A pixel of the page in the middle of every tenth of its side: 81 specks.</summary>
    [Fact]
    public async Task The_jobs_page_tells_that_a_film_is_bare_wherever_it_opens()
    {
        var path = Path.Combine(Path.GetTempPath(), $"silkwright-dust-{Guid.NewGuid():N}.tif");
        FilmTiffWriter.Write(path, 1000, 1000, 600, (top, rows, strip) =>
        {
            for (var at = 100; at < 1000; at += 100)
            {
                for (var y = 0; y < rows; y++)
                    strip[at, y] = (top + y) % 100 == 0 && top + y > 0;
            }
        });
        await using (var content = File.OpenRead(path))
        {
            var film = await web.Store.Films.AddAsync(content, "dust.tif", "Ada", Cancel);
            using var body = new StringContent("""{"id": "dust", "person": "Ada", "job": {"name": "Dust", "run": 50, "colours": [{"ink": "plastisol", "film": "dust.tif"}]}}""", System.Text.Encoding.UTF8, "application/json");
            _ = (await web.Browser.PostAsync("/api/jobs", body, Cancel)).EnsureSuccessStatusCode();
            await web.Store.Jobs.AttachFilmAsync("dust", "dust.tif", film.Hash, "Ada", Cancel);
        }

        File.Delete(path);
        var page = "";
        for (var wait = 0; wait < 100 && !page.Contains("id=\"bench\"", StringComparison.Ordinal); wait++)
        {
            await Task.Delay(200, Cancel);
            page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync("/jobs/dust", Cancel));
        }

        Assert.Contains("dust.tif: Nothing but 81 specks of four pixels or fewer is on this film", page, StringComparison.Ordinal);
        Assert.Contains("no artwork is on its film", page, StringComparison.Ordinal);
        Assert.DoesNotContain("holds the artwork", page, StringComparison.Ordinal);
        page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync("/jobs/dust?station=film", Cancel));
        Assert.Contains("<p>Nothing but 81 specks of four pixels or fewer is on this film: there is no artwork. Look at the file", page, StringComparison.Ordinal);
    }

    /// <summary>Two pages of an inch square: on the first a square of half an inch, on the second an upright bar of a tenth, 2540 µm. Needs pdftoppm, as a shop does that sends PDFs.</summary>
    [Fact]
    public async Task A_page_of_a_pdf_is_chosen_when_it_is_uploaded_and_kept_with_the_job()
    {
        var pdf = PdfPageWriter.Make(72, 72, 0, "0 g 18 18 36 36 re f", "0 g 18 7.2 7.2 57.6 re f");
        var answer = await UploadAsync("Pages", "2", "400", pdf);
        Assert.Equal("/jobs/pages", answer.RequestMessage!.RequestUri!.AbsolutePath);
        var film = (await web.Store.Jobs.FilmsAsync("pages", Cancel))["base.pdf"];
        Assert.Equal((2, 400.0), (film.Page, film.Dpi!.Value));
        Assert.EndsWith(".p2.400dpi", film.Address, StringComparison.Ordinal);
        using var whole = await PictureAsync($"/films/{film.Address}/tiles/0/0/0.png");
        Assert.Equal((400, 400), (whole.Width, whole.Height));
        Assert.Equal((0, 255), (whole.GetPixel(120, 200).Red, whole.GetPixel(200, 200).Red));
        var document = JsonNode.Parse(await web.Browser.GetStringAsync($"/api/films/{film.Address}/width?x=7.62mm&y=12.7mm", Cancel))!;
        Assert.Equal(2540, (double)document["widthUm"]!, 64.0);
    }

    [Theory]
    [InlineData("0", "", "is no page")]
    [InlineData("3", "", "There is no page 3")]
    [InlineData("", "ten", "is no resolution of a film")]
    public async Task A_page_or_a_resolution_that_cannot_be_is_told_and_nothing_is_kept(string page, string dpi, string says)
    {
        var answer = await UploadAsync("No such page", page, dpi, PdfPageWriter.Make(72, 72, 0, "0 g 18 18 36 36 re f", "0 g 1 1 7 7 re f"));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(says, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Cancel)), StringComparison.Ordinal);
        Assert.Null(await web.Store.Jobs.CurrentAsync("no-such-page", Cancel));
    }

    /// <summary>8 px at 600 dpi are 0.34 mm.</summary>
    [Fact]
    public async Task A_film_that_does_not_say_its_resolution_is_taken_with_one_named_beside_it()
    {
        var answer = await UploadAsync("No resolution", [], SmallFilm.PngOfNoResolution, "plain.png");
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var text = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Cancel));
        Assert.Contains("Give its resolution, for example dpi 1200", text, StringComparison.Ordinal);
        answer = await UploadAsync("No resolution", [new("dpi", "half")], SmallFilm.PngOfNoResolution, "plain.png");
        Assert.Contains("'half' is no resolution", WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Cancel)), StringComparison.Ordinal);
        answer = await UploadAsync("No resolution", [new("dpi", "600")], SmallFilm.PngOfNoResolution, "plain.png");
        Assert.Equal("/jobs/no-resolution", answer.RequestMessage!.RequestUri!.AbsolutePath);
        var film = (await web.Store.Jobs.FilmsAsync("no-resolution", Cancel))["plain.png"];
        Assert.EndsWith(".600dpi", film.Address, StringComparison.Ordinal);
        var off = await web.Browser.GetAsync($"/api/films/{film.Address}/width?x=1mm&y=0.1mm", Cancel);
        Assert.Contains("It is 0.3 mm wide", await off.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    private Task<HttpResponseMessage> UploadAsync(string name, string page, string dpi, byte[] pdf) => UploadAsync(name, [new("pdfPage", page), new("pdfDpi", dpi)], pdf, "base.pdf");

    private async Task<HttpResponseMessage> UploadAsync(string name, IReadOnlyList<KeyValuePair<string, string>> typed, byte[] film, string fileName)
    {
        using var form = new MultipartFormDataContent { { new ByteArrayContent(film), "films", fileName } };
        var fields = await web.HiddenFieldsAsync("/jobs/new", "new-job");
        foreach (var (field, value) in (IEnumerable<KeyValuePair<string, string>>)[.. fields, new("name", name), new("run", "50"), new("ink", "plastisol"), new("by", "Ada"), .. typed])
            form.Add(new StringContent(value), field);
        return await web.Browser.PostAsync("/jobs/new", form, Cancel);
    }

    private async Task<StoredFilm> KeepAsync()
    {
        var path = Path.Combine(Path.GetTempPath(), $"silkwright-bars-{Guid.NewGuid():N}.tif");
        try
        {
            FilmTiffWriter.Write(path, 1200, 900, 600, (_, rows, strip) =>
            {
                for (var y = 0; y < rows; y++)
                {
                    for (var x = 400; x < 714; x++)
                        strip[x, y] = x is < 410 or >= 414;
                }
            });
            await using var content = File.OpenRead(path);
            return await web.Store.Films.AddAsync(content, "bars.tif", "Ada", Cancel);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private async Task<SKBitmap> PictureAsync(string address) => SKBitmap.Decode(await web.Browser.GetByteArrayAsync(address, Cancel));
}
