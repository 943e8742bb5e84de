using Silkwright.Estimates;

namespace Silkwright.Cli;

/// <summary>Files that a person names on the command line.</summary>
internal static class InputFile
{
    /// <summary>Longest document taken. A job of 24 colours is a few kilobytes; a film named by mistake is not. [bytes]</summary>
    private const long MostBytes = 16 * 1024 * 1024;

    /// <summary>The text of a UTF-8 file, with or without a mark at its start.</summary>
    /// <param name="path">As typed.</param>
    /// <param name="what">What it should be, with its article: "a job".</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The file is missing, unreadable or too large.</exception>
    public static async Task<string> ReadTextAsync(string path, string what, CancellationToken cancel)
    {
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > MostBytes })
                throw new InputProblemException(new Problem($"This file is too large to be {what}.", path, $"Name {what}'s JSON file."));
            return await File.ReadAllTextAsync(path, cancel);
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new InputProblemException(new Problem("There is no such file.", path, $"Check the path of {what}; it counts from {Directory.GetCurrentDirectory()}."));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputProblemException(new Problem($"This file can't be read: {failure.Message}", path, "Check the path and the right to read it."));
        }
    }
}
