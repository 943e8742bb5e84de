using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Tests.Contracts;

public class JobReaderTests
{
    [Fact]
    public void Only_the_ink_and_the_run_are_needed()
    {
        var job = JobReader.Read("""{"run": 200, "colours": [{"ink": "waterBased"}]}""", "job.json");
        Assert.Equal(200, job.Run);
        Assert.Equal(InkKind.WaterBased, Assert.Single(job.Colours).Ink);
    }

    [Fact]
    public void A_byte_order_mark_and_a_trailing_comma_do_no_harm() =>
        Assert.Equal(5, JobReader.Read("\uFEFF{\"run\": 5, \"colours\": [{\"ink\": \"uv\",}]}", "job.json").Run);

    [Fact]
    public void All_faults_are_told_at_once_with_their_places()
    {
        var fault = Assert.Throws<InputProblemException>(() => JobReader.Read(
            """{"run": -3, "dueDate": "tomorrow", "colours": [{"ink": "gouache", "needs": {"rulingLpi": "fine"}}, {}]}""", "job.json"));
        Assert.Equal(
            ["job.json: run", "job.json: dueDate", "job.json: colours[0].needs.rulingLpi", "job.json: colours[0].ink", "job.json: colours[1].ink"],
            fault.Problems.Select(problem => problem.Where));
        Assert.All(fault.Problems, problem => Assert.NotEmpty(problem.Remedy));
        Assert.Contains("plastisol, waterBased, discharge, solvent, uv", fault.Problems[3].Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[1, 2]")]
    [InlineData("{\"run\": 5,, }")]
    [InlineData("name,run\nx,5")]
    public void What_is_not_a_job_is_told_as_such(string text)
    {
        var fault = Assert.Throws<InputProblemException>(() => JobReader.Read(text, "job.json"));
        Assert.StartsWith("job.json", Assert.Single(fault.Problems).Where, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1.5")]
    [InlineData("0")]
    [InlineData("1e12")]
    public void A_run_is_a_whole_number_of_pieces(string run) => Assert.Throws<InputProblemException>(
        () => JobReader.Read($$"""{"run": {{run}}, "colours": [{"ink": "uv"}]}""", "job.json"));

    [Fact]
    public void A_job_written_and_read_again_is_the_same_job()
    {
        var job = new JobDocument
        {
            Name = "Harbour µ, \"quoted\"",
            Date = new DateOnly(2026, 11, 25),
            DueDate = new DateOnly(2026, 11, 27),
            Garment = new Garment("black", "jersey", true),
            Run = 640,
            Colours =
            [
                new JobDocumentColour { Name = "base", Film = "films/base.tif", Ink = InkKind.Discharge, Role = InkRole.Underbase, ImpressionsPerGarment = 2 },
                new JobDocumentColour { Name = "top", Ink = InkKind.WaterBased, Needs = new TypedNeeds(180, 200, 45.5, 12, 900), Kind = WorkKind.FineLettering },
            ],
        };
        var again = JobReader.Read(JobWriter.Write(job), "job.json");
        Assert.Equal(job with { Colours = [] }, again with { Colours = [] });
        Assert.Equal(job.Colours, again.Colours);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_film_whose_name_is_empty_is_told_as_that(string film)
    {
        var fault = Assert.Throws<InputProblemException>(() =>
            JobReader.Read($$"""{"run": 5, "colours": [{"ink": "uv", "film": "{{film}}"}]}""", "job.json"));
        var problem = Assert.Single(fault.Problems);
        Assert.Contains("empty", problem.What, StringComparison.Ordinal);
        Assert.Contains("colours[0].film", problem.Where, StringComparison.Ordinal);
    }
}
