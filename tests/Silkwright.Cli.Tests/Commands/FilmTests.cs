using Silkwright.Cli.Tests.Schema;
using Silkwright.Film.TestFilms;

namespace Silkwright.Cli.Tests.Commands;

/// <summary>Films of one small job, from the drawing to the answer.</summary>
public sealed class FilmTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public FilmTests()
    {
        var drawing = folder.Write("job.json", """
            {"name": "small", "widthMm": 60, "heightMm": 40, "dpi": 600,
             "parts": {"marks": [{"register": [30, 4, 3]}, {"register": [4, 20, 3]}, {"register": [56, 20, 3]}]},
             "films": [
               {"file": "base.tif", "shapes": [{"part": "marks"}, {"polygon": [15, 10, 35, 10, 15, 32]}]},
               {"file": "twice.tif", "shapes": [{"part": "marks"}, {"polygon": [15, 10, 35, 10, 15, 32]}]},
               {"file": "moved.tif", "shapes": [{"register": [30.4, 4, 3]}, {"register": [4.4, 20, 3]}, {"register": [56.4, 20, 3]}, {"disc": [30, 20, 5]}]}]}
            """);
        _ = FilmMaker.DrawAll(drawing, folder.Path, null, CancellationToken.None);
    }

    private string[] Films => [Path.Combine(folder.Path, "base.tif"), Path.Combine(folder.Path, "twice.tif"), Path.Combine(folder.Path, "moved.tif")];

    [Fact]
    public async Task The_films_of_one_job_are_held_against_each_other_for_a_program()
    {
        var run = await ShellRun.Of(["film", .. Films, "--frame-width", "180mm", "--frame-height", "300mm", "--mesh", "61/cm,64um", "--json"]);
        Assert.Equal(0, run.ExitCode);
        Assert.Empty(SchemaCheck.Faults("film.json", run.Document));
        var job = run.Document["job"]!;
        Assert.Equal("duplicate", (string?)Assert.Single(job["mirroredOrDuplicate"]!.AsArray())!["kind"]);
        Assert.Equal(0.4, (double)job["registerOffsetsMm"]![1]!["xMm"]!, 0.05);
        Assert.True((bool?)job["fitsFrame"]);
    }

    [Fact]
    public async Task And_for_people_with_what_to_do()
    {
        var run = await ShellRun.Of(["film", .. Films, "--frame-width", "160mm", "--frame-height", "300mm"]);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("hold the same image", run.Output, StringComparison.Ordinal);
        Assert.Contains("0.40 mm to the right", run.Output, StringComparison.Ordinal);
        Assert.Contains("Take a larger frame", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_film_asked_against_no_frame_has_no_job()
    {
        var run = await ShellRun.Of("film", Path.Combine(folder.Path, "base.tif"), "--json");
        Assert.Empty(SchemaCheck.Faults("film.json", run.Document));
        Assert.Null(run.Document["job"]);
    }

    /// <summary>The register marks' lines, 0.2 mm, are the finest that prints here.</summary>
    [Theory]
    [InlineData("120/cm,34um", "nothing finer than the mesh 120/34 can hold")]
    [InlineData("120/34", "nothing finer than the mesh 120/34 can hold")]
    [InlineData("21/cm,150um", "lines and 0 gaps finer than the mesh 21/150 can hold")]
    public async Task A_film_is_told_in_one_sentence_and_held_against_a_mesh(string mesh, string says)
    {
        var run = await ShellRun.Of("film", Path.Combine(folder.Path, "base.tif"), "--mesh", mesh);
        var text = string.Join(' ', run.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Finest line 0.1", text, StringComparison.Ordinal);
        Assert.Contains(says, text, StringComparison.Ordinal);
        Assert.Contains("% of its area.", text, StringComparison.Ordinal);
    }

    /// <summary>Squares of 0.06 mm are 1.4 px of 600 dpi: no more than 2 x 2 px each, 4 px, wherever they lie on the grid; 30 stand clear of each other.</summary>
    [Fact]
    public async Task A_film_of_specks_alone_is_told_as_that()
    {
        var drawing = folder.Write("dust.json", """{"name": "dust", "widthMm": 60, "heightMm": 40, "dpi": 600, "films": [{"file": "dust.tif", "shapes": [{"rect": [5, 10, 0.06, 0.06], "repeat": [30, 1.7, 0.3]}]}]}""");
        _ = FilmMaker.DrawAll(drawing, folder.Path, null, TestContext.Current.CancellationToken);
        string[] asked = ["film", Path.Combine(folder.Path, "dust.tif"), "--mesh", "61/cm,64um"];
        var text = string.Join(' ', (await ShellRun.Of(asked)).Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Nothing but 30 specks of four pixels or fewer is on this film: there is no artwork. Look at the file", text, StringComparison.Ordinal);
        Assert.DoesNotContain("narrow", text, StringComparison.Ordinal);
        Assert.DoesNotContain("can hold", text, StringComparison.Ordinal);
        var run = await ShellRun.Of([.. asked, Films[0], "--json"]);
        Assert.Empty(SchemaCheck.Faults("film.json", run.Document));
        Assert.StartsWith("Nothing but 30 specks", (string?)run.Document["films"]![0]!["words"], StringComparison.Ordinal);
        Assert.StartsWith("dust.tif: Nothing but 30 specks", (string?)run.Document["job"]!["remarks"]![0], StringComparison.Ordinal);
        var job = folder.Write("dust-job.json", """{"name": "Dust", "run": 50, "colours": [{"name": "Black", "film": "dust.tif", "ink": "plastisol", "role": "colour"}]}""");
        run = await ShellRun.Of("plan", job);
        Assert.Contains("Black: NO ARTWORK is on its film.", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("holds the artwork", run.Output, StringComparison.Ordinal);
    }

    /// <summary>A triangle with corners at (15, 10), (35, 10) and (15, 32) mm: at (20, 14) mm it is wider than 254 px of 600 dpi, 10.75 mm; its inscribed circle is 12.3 mm across.</summary>
    [Fact]
    public async Task A_spot_is_told_with_its_width()
    {
        string[] asked = ["film", Path.Combine(folder.Path, "base.tif"), "--mesh", "61/cm,64um", "--at", "20mm,0.5512in"];
        var run = await ShellRun.Of([.. asked, "--json"]);
        Assert.Equal(0, run.ExitCode);
        Assert.Empty(SchemaCheck.Faults("film.json", run.Document));
        Assert.Equal("image", (string?)run.Document["at"]!["kind"]);
        Assert.Equal(254 * 25_400 / 600.0, (double)run.Document["at"]!["widthUm"]!, 1e-6);
        Assert.Contains("cannot be told from the file", (string?)run.Document["rightReading"], StringComparison.Ordinal);
        var text = string.Join(' ', (await ShellRun.Of(asked)).Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("At 20.0, 14.0 mm: Prints, at least", text, StringComparison.Ordinal);
        Assert.Contains("its letters must read right", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("20mm", "is not a spot")]
    [InlineData("20,14", "--at")]
    [InlineData("20mm,41mm", "There is no film at 20, 41 mm")]
    public async Task A_spot_that_is_none_is_a_fault(string at, string says)
    {
        var run = await ShellRun.Of("film", Path.Combine(folder.Path, "base.tif"), "--at", at);
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("61", "not a mesh")]
    [InlineData("61/cm,64", "--mesh, thread")]
    [InlineData("156/64", "threads to the centimetre")]
    [InlineData("61/cm,200um", "no opening is left")]
    public async Task A_mesh_that_is_none_is_a_fault(string mesh, string says)
    {
        var run = await ShellRun.Of("film", Path.Combine(folder.Path, "base.tif"), "--mesh", mesh);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Files_without_a_name_and_links_that_lead_nowhere_are_told_as_that()
    {
        var link = Path.Combine(folder.Path, "link.tif");
        _ = File.CreateSymbolicLink(link, Path.Combine(folder.Path, "gone.tif"));
        var run = await ShellRun.Of("film", "", link);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("without a name", run.Error, StringComparison.Ordinal);
        Assert.Contains("a link to a file that is not there", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Films_of_one_name_are_told_with_their_folders_and_none_is_taken_twice()
    {
        var other = Directory.CreateDirectory(Path.Combine(folder.Path, "second")).FullName;
        File.Copy(Films[2], Path.Combine(other, "base.tif"));
        string[] asked = ["film", Films[0], Path.Combine(other, "base.tif")];
        var run = await ShellRun.Of([.. asked, "--json"]);
        Assert.Equal(asked[1..], run.Document["films"]!.AsArray().Select(film => (string?)film!["file"]));
        Assert.Equal(asked[1], (string?)run.Document["job"]!["registerOffsetsMm"]![0]!["against"]);
        run = await ShellRun.Of([.. asked, Path.Combine(other, "..", "base.tif")]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("named twice", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
    }

    /// <summary>A file stands where the folder of the films would be made.</summary>
    [Fact]
    public async Task A_demonstration_whose_films_cannot_be_drawn_is_told_with_what_to_do()
    {
        _ = Directory.CreateDirectory(Path.Combine(folder.Path, "artwork"));
        foreach (var name in (string[])["shop.json", "screens.json", "films"])
            _ = folder.Write(name, "{}");
        _ = folder.Write(Path.Combine("artwork", "one.json"), """{"name": "one", "widthMm": 20, "heightMm": 20, "dpi": 300, "films": [{"file": "one.tif", "shapes": [{"disc": [10, 10, 5]}]}]}""");
        var run = await ShellRun.Of("demo", "--from", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("can't be drawn", run.Error, StringComparison.Ordinal);
        Assert.Contains("Copy the demonstration's folder", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_film_alone_is_told_to_fit_its_frame()
    {
        var run = await ShellRun.Of("film", Films[0], "--frame-width", "300mm", "--frame-height", "300mm");
        Assert.Contains("fits the frame, with 75 mm on every side", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("each other", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--jsn", "Write --json if that is meant")]
    [InlineData("--polarty", "Write --polarity if that is meant")]
    public async Task An_option_written_wrong_is_not_taken_for_a_film(string option, string says)
    {
        var run = await ShellRun.Of("film", Films[0], option);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"There is no option {option} here", run.Error, StringComparison.Ordinal);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        run = await ShellRun.Of("film", "--", option);
        Assert.Contains("There is no such file", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Half_a_frame_is_a_fault()
    {
        var run = await ShellRun.Of("film", Path.Combine(folder.Path, "base.tif"), "--frame-width", "160mm");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--frame-height", run.Error, StringComparison.Ordinal);
    }

    public void Dispose() => folder.Dispose();
}
