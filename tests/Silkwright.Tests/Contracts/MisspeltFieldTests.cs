using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>A field that looks like a known one written wrong is told, at any depth; what is somebody's own is passed over.</summary>
public class MisspeltFieldTests
{
    [Theory]
    [InlineData("\"dueDat\": \"2026-12-01\"", "job.json", "dueDate")]
    [InlineData("\"garment\": {\"color\": \"navy\"}", "job.json: garment", "colour")]
    [InlineData("\"timesPerMoth\": 2", "job.json", "timesPerMonth")]
    public void Of_a_job(string field, string place, string meant) => Told(() => JobReader.Read($$"""{"run": 5, {{field}}, "colours": [{"ink": "uv"}]}""", "job.json"), place, meant);

    [Theory]
    [InlineData("{\"ink\": \"uv\", \"rle\": \"underbase\"}", "colours[1]", "role")]
    [InlineData("{\"ink\": \"uv\", \"needs\": {\"finestLineUM\": 100}}", "colours[1].needs", "finestLineUm")]
    public void Of_a_jobs_colour(string colour, string place, string meant) => Told(() => JobReader.Read($$"""{"run": 5, "colours": [{"ink": "uv"}, {{colour}}]}""", "job.json"), $"job.json: {place}", meant);

    [Theory]
    [InlineData("\"emulsion\": []", "shop.json", "emulsions")]
    [InlineData("\"room\": {\"humidty\": 40, \"humidityPercnt\": 40}", "shop.json: room", "humidityPercent")]
    [InlineData("\"meshes\": [{\"countPerCm\": 61, \"threadUm\": 64, \"dyd\": true}]", "shop.json: meshes[0]", "dyed")]
    [InlineData("\"emulsions\": [{\"id\": \"a\", \"family\": \"diazo\", \"solidPercent\": 40}]", "shop.json: emulsions[0]", "solidsPercent")]
    [InlineData("\"emulsions\": [{\"id\": \"a\", \"family\": \"diazo\", \"price\": {\"grams\": 900, \"cost\": 40, \"Grams\": 800}}]", null, null)]
    [InlineData("\"lamps\": [{\"kind\": \"ledArray\", \"distanceMM\": 300}]", "shop.json: lamps[0]", "distanceMm")]
    [InlineData("\"readings\": {\"coats\": []}", "shop.json: readings", "coat")]
    public void Of_a_shop(string field, string? place, string? meant) => Told(() => ShopReader.Read($$"""{{{field}}}""", "shop.json"), place, meant);

    [Fact]
    public void Of_an_exposure_case() => Told(
        () => ExposureCaseReader.Read("""{"mesh": {"countPerCm": 61, "threadUm": 64}, "emulsion": {"family": "diazo"}, "lamp": {"kind": "ledArray"}, "detail": {"finestLinUm": 100}}""", "case"), "case: detail", "finestLineUm");

    [Fact]
    public void Of_a_light_edge_case() => Told(
        () => EdgeCaseReader.Read("""{"mesh": {"countPerCm": 61, "threadUm": 64}, "photon": 1000}""", "case"), "case", "photons");

    [Fact]
    public void Somebodys_own_fields_are_passed_over() => Assert.Equal(
        5, JobReader.Read("""{"run": 5, "customer": "Quay", "tags": {"colour": 1, "runn": 2}, "garment": {"supplier": "ours"}, "colours": [{"ink": "uv", "pantone": "none"}]}""", "job.json").Run);

    /// <summary>Names of a map are the shop's own: two emulsions may be called nearly alike.</summary>
    [Fact]
    public void Names_that_are_told_and_there_already_are_no_slips() => Assert.Single(
        ShopReader.Read("""{"lamps": [{"id": "a", "ids": "b", "kind": "ledArray"}]}""", "shop.json").Lamps);

    private static void Told(Action read, string? place, string? meant)
    {
        if (place is null)
        {
            read();
            return;
        }

        var problem = Assert.Single(Assert.Throws<InputProblemException>(read).Problems);
        Assert.Equal(place, problem.Where);
        Assert.Contains($"Write {meant} if that is meant", problem.Remedy, StringComparison.Ordinal);
    }
}
