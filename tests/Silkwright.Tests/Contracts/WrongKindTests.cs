using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>A field that is there but of the wrong kind is told, once, and never taken as missing.</summary>
public class WrongKindTests
{
    [Theory]
    [InlineData("\"garment\": \"navy\"", "garment", "object")]
    [InlineData("\"garment\": []", "garment", "object")]
    [InlineData("\"colours\": {}", "colours", "list")]
    [InlineData("\"colours\": \"two\"", "colours", "list")]
    [InlineData("\"colours\": [\"white\"]", "colours[0]", "object")]
    [InlineData("\"colours\": [{\"ink\": \"uv\", \"needs\": \"fine\"}]", "colours[0].needs", "object")]
    [InlineData("\"colours\": [{\"ink\": \"uv\", \"needs\": [300]}]", "colours[0].needs", "object")]
    [InlineData("\"colours\": [{\"ink\": 7}]", "colours[0].ink", "text")]
    public void Of_a_job(string field, string place, string kind)
    {
        var colours = field.Contains("colours", StringComparison.Ordinal) ? "" : ", \"colours\": [{\"ink\": \"uv\"}]";
        Told(() => JobReader.Read($$"""{"run": 5, {{field}}{{colours}}}""", "job.json"), $"job.json: {place}", kind);
    }

    [Theory]
    [InlineData("\"room\": \"damp\"", "room", "object")]
    [InlineData("\"readings\": 7", "readings", "object")]
    [InlineData("\"prices\": \"high\"", "prices", "object")]
    [InlineData("\"film\": true", "film", "object")]
    [InlineData("\"meshes\": \"many\"", "meshes", "list")]
    [InlineData("\"meshes\": [61]", "meshes[0]", "object")]
    [InlineData("\"frames\": {}", "frames", "list")]
    [InlineData("\"frames\": [{\"insideWidthMm\": 500, \"insideHeightMm\": 700, \"mesh\": \"61/64\"}]", "frames[0].mesh", "object")]
    [InlineData("\"readings\": {\"coat\": {}}", "readings.coat", "list")]
    [InlineData("\"emulsions\": [{\"id\": \"a\", \"family\": \"diazo\", \"price\": 40}]", "emulsions[0].price", "object")]
    [InlineData("\"emulsions\": [{\"id\": \"a\", \"family\": \"diazo\", \"resists\": \"uv\"}]", "emulsions[0].resists", "list")]
    public void Of_a_shop(string field, string place, string kind) =>
        Told(() => ShopReader.Read($$"""{{{field}}}""", "shop.json"), $"shop.json: {place}", kind);

    [Fact]
    public void Nothing_at_all_is_the_same_as_a_field_left_out()
    {
        var job = JobReader.Read("""{"run": 5, "garment": null, "dueDate": null, "colours": [{"ink": "uv", "needs": null, "film": null}]}""", "job.json");
        Assert.Null(Assert.Single(job.Colours).Needs);
        Assert.Empty(ShopReader.Read("""{"meshes": null, "room": null, "readings": null, "prices": null}""", "shop.json").Meshes);
    }

    private static void Told(Action read, string place, string kind)
    {
        var problem = Assert.Single(Assert.Throws<InputProblemException>(read).Problems);
        Assert.Equal(place, problem.Where);
        Assert.Contains(kind, problem.What, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
    }
}
