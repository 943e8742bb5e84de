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
        var run = await ShellRun.Of(["film", .. Films, "--frame-width", "180mm", "--frame-height", "300mm", "--json"]);
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

    [Fact]
    public async Task Half_a_frame_is_a_fault()
    {
        var run = await ShellRun.Of("film", Path.Combine(folder.Path, "base.tif"), "--frame-width", "160mm");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--frame-height", run.Error, StringComparison.Ordinal);
    }

    public void Dispose() => folder.Dispose();
}
