using System.CommandLine;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Cli;

/// <summary>The folder a shop keeps its records in, as <c>--data</c> names it.</summary>
internal static class RecordsFolder
{
    public static Option<string> Option() => new("--data")
    {
        Description = "the folder the shop keeps its records in; ./data when not given",
        HelpName = "FOLDER",
        DefaultValueFactory = _ => "data",
    };

    /// <summary>Opens records that are there. A name written wrong would be another shop's, empty and new.</summary>
    /// <exception cref="InputProblemException">The folder holds no records, or can't be used.</exception>
    public static Task<SilkwrightStore> OpenAsync(string path, Surroundings surroundings, CancellationToken cancel)
    {
        if (!DataFolder.HoldsRecords(path))
        {
            throw new InputProblemException(new Problem(
                Directory.Exists(path) ? "This folder holds no records." : "There is no such folder.",
                Path.GetFullPath(path),
                $"Check the name after --data; it counts from {Directory.GetCurrentDirectory()}. To begin a shop's records there: `silkwright serve --data {path}`, or with the demonstration shop: `silkwright demo --data {path}`."));
        }

        return SilkwrightStore.OpenAsync(DataFolder.Open(path), surroundings.Time, cancel);
    }

    /// <summary>Opens the records, begun where there are none; then that is told.</summary>
    /// <exception cref="InputProblemException">The folder can't be used.</exception>
    public static async Task<SilkwrightStore> OpenOrBeginAsync(string path, Surroundings surroundings, CancellationToken cancel)
    {
        var begun = !DataFolder.HoldsRecords(path);
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(path), surroundings.Time, cancel);
        if (begun)
            await TellBegunAsync(path, surroundings);
        return store;
    }

    public static Task TellBegunAsync(string path, Surroundings surroundings) => surroundings.Error.WriteLineAsync($"New records are begun in {Path.GetFullPath(path)}.");
}
