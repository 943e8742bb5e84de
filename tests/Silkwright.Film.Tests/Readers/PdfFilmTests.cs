using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Readers;

/// <summary>Pages written by hand; the oracle is the geometry written. Needs pdftoppm, as a shop does that sends PDFs.</summary>
public sealed class PdfFilmTests : IDisposable
{
    /// <summary>A page of 6 x 4 in; black 2 x 2 in, 1 in from the left and 1 in from the bottom.</summary>
    private const string Square = "0 g 72 72 144 144 re f";

    private readonly TestFolder folder = new();

    [Fact]
    public void A_page_is_drawn_where_it_says_at_the_resolution_given()
    {
        NeedsPoppler();
        var (film, bits) = Read(Write("a.pdf", 0, Square), new FilmOptions(300));
        Assert.Equal((1800, 1200, 300.0), (film.WidthPx, film.HeightPx, film.Dpi));
        Assert.Equal((false, true), (bits[299, 700], bits[301, 700]));
        Assert.Equal((true, false), (bits[898, 700], bits[901, 700]));
        Assert.Equal((false, true), (bits[500, 298], bits[500, 301]));
        Assert.Equal(100 * 4 / 24.0, 100.0 * BitRow.Count(bits.All) / (1800 * 1200), 0.1);
    }

    [Fact]
    public void Greys_are_cut_at_the_middle_and_the_answer_says_so()
    {
        NeedsPoppler();
        var (film, bits) = Read(Write("a.pdf", 0, "0.4 g 0 0 72 288 re f 0.6 g 144 0 72 288 re f"), new FilmOptions(300));
        Assert.Equal((true, false), (bits[150, 600], bits[750, 600]));
        Assert.Contains(film.Remarks, remark => remark.Contains("darker than the middle", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_resolution_a_page_is_drawn_at_1200_dpi_and_says_so()
    {
        NeedsPoppler();
        using var film = FilmFile.Open(Write("a.pdf", 0, Square), new FilmOptions());
        Assert.Equal((7200, 4800, 1200.0), (film.Header.WidthPx, film.Header.HeightPx, film.Header.Dpi));
        Assert.Contains(film.Header.Remarks, remark => remark.Contains("1200 dpi, as none was given", StringComparison.Ordinal));
    }

    [Fact]
    public void A_page_that_asks_to_be_turned_is_turned()
    {
        NeedsPoppler();
        var (film, bits) = Read(Write("a.pdf", 90, Square), new FilmOptions(300));
        Assert.Equal((1200, 1800), (film.WidthPx, film.HeightPx));

        // Turned clockwise, the lower left corner comes to the upper left.
        Assert.Equal((false, true), (bits[500, 298], bits[500, 302]));
        Assert.Equal((false, true), (bits[298, 500], bits[302, 500]));
    }

    [Fact]
    public void Another_page_can_be_chosen_and_one_that_is_not_there_is_refused()
    {
        NeedsPoppler();
        var path = Write("a.pdf", 0, Square, "0 g 0 0 36 288 re f");
        var (film, bits) = Read(path, new FilmOptions(300, Page: 2));
        Assert.Equal((true, false), (bits[100, 600], bits[500, 600]));
        Assert.Contains(film.Remarks, remark => remark.Contains("2 pages; page 2 was read", StringComparison.Ordinal));
        Assert.Contains("the file has 2", Refused(path, new FilmOptions(300, Page: 3)).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_a_pdf_has_pages_to_choose()
    {
        File.WriteAllBytes(folder["a.png"], Pngs.Make(new bool[40, 40], 0, 1, 47244));
        Assert.Contains("only a PDF", Refused(folder["a.png"], new FilmOptions(Page: 2)).What, StringComparison.Ordinal);
    }

    /// <summary>A slanted edge may fall a pixel aside when a slice is drawn alone.</summary>
    [Fact]
    public void Rows_from_the_middle_are_the_rows_of_the_whole()
    {
        NeedsPoppler();
        var path = Write("a.pdf", 0, "0 g 72 72 m 300 200 l 100 250 l f");
        var (_, whole) = Read(path, new FilmOptions(300));
        using var film = FilmFile.Open(path, new FilmOptions(300));
        var rows = 0;
        film.ReadRows(400, 300, (y, row) =>
        {
            var apart = 0;
            for (var i = 0; i < row.Length; i++)
                apart += System.Numerics.BitOperations.PopCount(row[i] ^ whole.Row(y)[i]);
            Assert.InRange(apart, 0, 2);
            rows++;
        }, CancellationToken.None);
        Assert.Equal(300, rows);
    }

    [Fact]
    public void Where_the_program_is_not_installed_the_remedy_is_to_install_it()
    {
        var thrown = Assert.Throws<InputProblemException>(() => PdfFilm.Open(Write("a.pdf", 0, Square), new FilmOptions(), folder[""]));
        Assert.Contains("poppler-utils", Assert.Single(thrown.Problems).Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pdf_cut_short_or_scrambled_is_damaged()
    {
        NeedsPoppler();
        var bytes = PdfPageWriter.Make(432, 288, 0, Square);
        File.WriteAllBytes(folder["cut.pdf"], bytes[..120]);
        Assert.Contains("damaged", Refused(folder["cut.pdf"], new FilmOptions(300)).What, StringComparison.Ordinal);
        Assert.Contains("damaged", Refused(Write("odd.pdf", 0, "0 g 72 72 144 (((( re f"), new FilmOptions(300)).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_larger_than_a_film_is_refused_before_it_is_drawn()
    {
        NeedsPoppler();
        File.WriteAllBytes(folder["a.pdf"], PdfPageWriter.Make(14_400, 14_400, 0, Square));
        Assert.Contains("--dpi", Refused(folder["a.pdf"], new FilmOptions(1200)).Remedy, StringComparison.Ordinal);
    }

    /// <summary>A name like an option is a file's name all the same.</summary>
    [Fact]
    public void A_file_s_name_is_never_an_option_or_a_command()
    {
        NeedsPoppler();
        Assert.Equal(1800, Read(Write("-h $(touch x) ; \"a\".pdf", 0, Square), new FilmOptions(300)).Film.WidthPx);
        Assert.False(File.Exists(folder["x"]));
    }

    /// <summary>A page that takes minutes: a hundred thousand shapes as large as the page.</summary>
    [Fact]
    public async Task Drawing_ends_with_the_work()
    {
        NeedsPoppler();
        var path = Write("a.pdf", 0, string.Concat(Enumerable.Repeat("0 0 m 432 288 l 0 288 l 432 0 l h f* ", 100_000)));
        using var film = FilmFile.Open(path, new FilmOptions(2400));
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(500));
        var work = Task.Run(() => Record.Exception(() => film.ReadRows(0, film.Header.HeightPx, (_, _) => { }, stop.Token)), TestContext.Current.CancellationToken);
        Assert.IsType<OperationCanceledException>(await work.WaitAsync(TimeSpan.FromSeconds(8), TestContext.Current.CancellationToken), exactMatch: false);
    }

    public void Dispose() => folder.Dispose();

    private static void NeedsPoppler() =>
        Assert.SkipUnless(PdfProgram.Find("pdftoppm", Environment.GetEnvironmentVariable("PATH") ?? "") is not null, "pdftoppm is not installed here.");

    private string Write(string name, int turned, params string[] contents)
    {
        File.WriteAllBytes(folder[name], PdfPageWriter.Make(432, 288, turned, contents));
        return folder[name];
    }

    private static (FilmHeader Film, PackedBitmap Bits) Read(string path, FilmOptions options)
    {
        using var film = FilmFile.Open(path, options);
        return (film.Header, FilmFile.ReadBits(film, null, CancellationToken.None));
    }

    private static Problem Refused(string path, FilmOptions options) =>
        Assert.Single(Assert.Throws<InputProblemException>(() => Read(path, options)).Problems);
}
