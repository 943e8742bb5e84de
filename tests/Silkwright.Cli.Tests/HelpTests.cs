using System.CommandLine;

namespace Silkwright.Cli.Tests;

public sealed class HelpTests
{
    /// <summary>Every verb with something to run, as its words.</summary>
    public static TheoryData<string> Verbs => [.. Leaves(Shell.Root(Silent())).Select(path => string.Join(' ', path))];

    [Theory]
    [MemberData(nameof(Verbs))]
    public async Task Help_says_what_the_verb_answers_and_shows_an_example(string verb)
    {
        var run = await ShellRun.Of([.. verb.Split(' '), "--help"]);
        Assert.Equal(0, run.ExitCode);
        Assert.Empty(run.Error);
        Assert.Contains("Examples:", run.Output, StringComparison.Ordinal);
        Assert.Contains($"silkwright {verb}", run.Output[run.Output.IndexOf("Examples:", StringComparison.Ordinal)..], StringComparison.Ordinal);
        var leaf = Leaf(verb);
        Assert.Contains(leaf.Description![..Math.Min(30, leaf.Description!.Length)], run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_verb_at_all_shows_the_verbs()
    {
        var run = await ShellRun.Of();
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("mesh", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mehs")]
    [InlineData("mesh", "--cuont", "61/cm")]
    public async Task What_is_not_a_verb_or_an_option_ends_with_2_and_points_to_the_help(params string[] args)
    {
        var run = await ShellRun.Of(args);
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains("--help", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mehs --count 61/cm", "'mehs' is not a verb", "Write mesh if that is meant")]
    [InlineData("screen shwo S-1", "'shwo' is not a verb", "Write show if that is meant")]
    [InlineData("mesh --cuont 61/cm --thread 64um", "There is no option --cuont here", "Write --count if that is meant")]
    [InlineData("plan job.json --shp shop.json", "There is no option --shp here", "Write --shop if that is meant")]
    [InlineData("mesh --count 61/cm --thread 64um too", "'too' is one word too many", "--help")]
    public async Task A_name_written_wrong_is_one_fault_that_tells_the_one_meant(string line, string what, string remedy)
    {
        var run = await ShellRun.Of(line.Split(' '));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(what, run.Error, StringComparison.Ordinal);
        Assert.Contains(remedy, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("reasons", run.Error, StringComparison.Ordinal);
    }

    private static Surroundings Silent() => new() { Output = TextWriter.Null, Error = TextWriter.Null };

    private static Command Leaf(string verb) =>
        verb.Split(' ').Aggregate(Shell.Root(Silent()), (command, word) => command.Subcommands.Single(sub => sub.Name == word));

    private static IEnumerable<IReadOnlyList<string>> Leaves(Command command) => command.Subcommands.SelectMany(sub =>
        sub.Subcommands.Count == 0 ? [[sub.Name]] : Leaves(sub).Select(rest => (IReadOnlyList<string>)[sub.Name, .. rest]));
}
