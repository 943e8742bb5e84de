using System.CommandLine;
using Silkwright.Coating.Learning;
using Silkwright.Contracts;

namespace Silkwright.Cli.Commands.Coat;

/// <summary>Files of what other shops' readings taught, as verbs take them.</summary>
internal static class ExperienceFiles
{
    public static Option<string[]> Option() => new("--experience")
    {
        Description = "what other shops' readings taught, as coat experience makes it (optional; may be given again)",
        HelpName = "EXPERIENCE.json",
        AllowMultipleArgumentsPerToken = false,
    };

    /// <summary>All of them added up; none where none is named.</summary>
    /// <exception cref="Estimates.InputProblemException">One can't be read, or they hold the same readings.</exception>
    public static async Task<CoatExperience?> TogetherAsync(string[]? paths, CancellationToken cancel) => CoatExperienceQuestion.Together(await ReadAsync(paths, cancel));

    /// <summary>Each with its name.</summary>
    public static async Task<IReadOnlyList<(string Where, CoatExperience Experience)>> ReadAsync(string[]? paths, CancellationToken cancel)
    {
        var files = new List<(string, CoatExperience)>();
        foreach (var path in paths ?? [])
        {
            var name = Path.GetFileName(path);
            files.Add((name, CoatExperienceReader.Read(await InputFile.ReadTextAsync(path, "coat experience", cancel), name)));
        }

        return files;
    }
}
