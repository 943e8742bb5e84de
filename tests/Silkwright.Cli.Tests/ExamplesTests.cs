using System.CommandLine;
using System.Diagnostics;
using System.Text.RegularExpressions;
using Silkwright.Film.TestFilms;

namespace Silkwright.Cli.Tests;

/// <summary>What the help prints as examples, run as a person would: in a folder with the demonstration, in the order of the work.</summary>
public sealed partial class ExamplesTests : IDisposable
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Every_example_runs_as_printed()
    {
        CopyDemonstration();
        // A server does not end by itself: ServeTests holds it.
        var lines = Verbs(Shell.Root(new Surroundings { Output = TextWriter.Null, Error = TextWriter.Null }))
            .Where(verb => verb.Name != "serve")
            .OrderBy(verb => verb.Name switch { "demo" => 0, "keep" => 1, _ => 2 })
            .SelectMany(verb => verb.Examples.Select(example => example.Line))
            .ToArray();
        Assert.True(lines.Length > 20, $"only {lines.Length} examples are printed");
        foreach (var line in lines)
        {
            var (exitCode, error) = await RunAsync(line);
            Assert.True(exitCode == 0, $"{line}\n{error}");
        }
    }

    /// <summary>The demonstration as it comes, each film drawn coarsely as one small block: what lies on the films is not the question here.</summary>
    private void CopyDemonstration()
    {
        foreach (var file in Directory.EnumerateFiles(House.Of("demo"), "*.*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".json" or ".csv"))
        {
            var copy = Path.Combine(folder.Path, Path.GetRelativePath(House.Path, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        var films = Directory.CreateDirectory(Path.Combine(folder.Path, "demo", "films")).FullName;
        foreach (var film in Directory.EnumerateFiles(House.Of("demo", "artwork"), "*.json").SelectMany(FilmRecipeReader.Read))
            FilmMaker.Draw(film with { Dpi = 150, Shapes = [new FilmShape { Outline = "M5 5H15V15H5Z" }] }, Path.Combine(films, film.File), null, Cancel);
    }

    /// <summary>Runs a line; where it sends its output into a file, so does this.</summary>
    private async Task<(int ExitCode, string Error)> RunAsync(string line)
    {
        var (command, into) = line.Split(" > ") is [var before, var file] ? (before, file) : (line, null);
        var words = Word().Matches(command).Select(word => word.Value.Replace("\"", "", StringComparison.Ordinal)).ToArray();
        Assert.Equal("silkwright", words[0]);
        using var program = Process.Start(new ProcessStartInfo("dotnet", [typeof(Shell).Assembly.Location, .. words[1..]])
        {
            WorkingDirectory = folder.Path,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var output = program.StandardOutput.ReadToEndAsync(Cancel);
        var error = program.StandardError.ReadToEndAsync(Cancel);
        await program.WaitForExitAsync(Cancel);
        if (into is not null)
            await File.WriteAllTextAsync(Path.Combine(folder.Path, into), await output, Cancel);
        _ = await output;
        return (program.ExitCode, await error);
    }

    private static IEnumerable<Verb> Verbs(Command command) =>
        (command is Verb verb ? [verb] : Enumerable.Empty<Verb>()).Concat(command.Subcommands.SelectMany(Verbs));

    [GeneratedRegex("""(?:[^\s"]|"[^"]*")+""")]
    private static partial Regex Word();
}
