using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>Documents that nobody types in good faith, or only by a slip.</summary>
public class HostileDocumentTests
{
    [Theory]
    [InlineData("{\"run\": 5, \"run\": 500, \"colours\": [{\"ink\": \"uv\"}]}", "twice")]
    [InlineData("{\"run\": NaN, \"colours\": [{\"ink\": \"uv\"}]}", "not readable as JSON")]
    [InlineData("{\"run\": \"NaN\", \"colours\": [{\"ink\": \"uv\"}]}", "a number")]
    [InlineData("{\"run\": 1e999, \"colours\": [{\"ink\": \"uv\"}]}", "outside")]
    [InlineData("{\"run\": 1e308, \"colours\": [{\"ink\": \"uv\"}]}", "1E+308 is outside")]
    [InlineData("{\"run\": 5e-324, \"colours\": [{\"ink\": \"uv\"}]}", "outside")]
    [InlineData("{\"run\": 5, \"name\": \"a\\u001b[2Jb\", \"colours\": [{\"ink\": \"uv\"}]}", "cannot be seen")]
    [InlineData("{\"run\": 5, \"name\": \"a\\u202eb\", \"colours\": [{\"ink\": \"uv\"}]}", "cannot be seen")]
    [InlineData("{\"run\": 5, \"name\": \"\\ud800\", \"colours\": [{\"ink\": \"uv\"}]}", "cannot be seen")]
    [InlineData("{\"run\": 5, \"colours\": []}", "1 to 24")]
    [InlineData("{\"run\": 5}", "1 to 24")]
    [InlineData("name;run\r\nx;5\r\n", "not readable as JSON")]
    public void Are_refused_in_words(string json, string what) => Told(json, what);

    [Fact]
    public void A_name_may_not_fill_a_page() =>
        Told($$"""{"run": 5, "name": "{{new string('n', 100_000)}}", "colours": [{"ink": "uv"}]}""", "100000 characters long");

    [Fact]
    public void A_list_of_a_million_colours_is_one_fault() =>
        Told($$"""{"run": 5, "colours": [{{string.Join(',', Enumerable.Repeat("0", 1_000_000))}}]}""", "1000000 entries");

    [Fact]
    public void Nesting_without_end_is_refused() =>
        Told($$"""{"run": 5, "colours": {{new string('[', 100_000)}}""", "not readable as JSON");

    [Fact]
    public void Lines_may_end_as_on_any_system() =>
        Assert.Equal(5, JobReader.Read("{\r\n\"run\": 5,\r\n\"colours\": [{\"ink\": \"uv\"}]\r\n}\r\n", "job.json").Run);

    [Theory]
    [InlineData("0001-01-01")]
    [InlineData("9999-12-31")]
    public void Dates_go_from_the_first_to_the_last_of_the_calendar(string date) => Assert.Equal(
        date,
        JobReader.Read($$"""{"run": 5, "dueDate": "{{date}}", "colours": [{"ink": "uv"}]}""", "job.json").DueDate!.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private static void Told(string json, string what)
    {
        var problem = Assert.Single(Assert.Throws<InputProblemException>(() => JobReader.Read(json, "job.json")).Problems);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.StartsWith("job.json", problem.Where, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
    }
}
