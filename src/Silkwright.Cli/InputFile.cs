using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Readers;

namespace Silkwright.Cli;

/// <summary>Files that a person names on the command line.</summary>
internal static class InputFile
{
    /// <summary>Longest document taken. A job of 24 colours is a few kilobytes; a film named by mistake is not. [bytes]</summary>
    private const long MostBytes = 16 * 1024 * 1024;

    /// <summary>The same for tables written as a document: 300 emulsions by 10,000 jobs with long names. [bytes]</summary>
    public const long MostTableBytes = 8 * MostBytes;

    /// <summary>The text of a file in UTF-8, or in UTF-16 where its mark says so.</summary>
    /// <param name="path">As typed.</param>
    /// <param name="what">What it should be, with its article: "a job".</param>
    /// <param name="cancel">Stops the work.</param>
    /// <param name="mostBytes">The longest that is taken. [bytes]</param>
    /// <exception cref="InputProblemException">The file is missing, no file, unreadable, too large or not text.</exception>
    public static async Task<string> ReadTextAsync(string path, string what, CancellationToken cancel, long mostBytes = MostBytes)
    {
        if (!Path.Exists(path))
            throw new InputProblemException(new Problem("There is no such file.", path, $"Check the path of {what}; it counts from {Directory.GetCurrentDirectory()}."));
        RegularFile.Require(path, path);
        try
        {
            return SentText.Of((await ReadBytesAsync(path, what, mostBytes, cancel)).Span, path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputProblemException(new Problem($"This file can't be read: {failure.Message}", path, "Check the path and the right to read it."));
        }
    }

    /// <summary>What a file holds, as long as that is not too much: a file may also grow, or say that it is shorter than it is.</summary>
    private static async Task<ReadOnlyMemory<byte>> ReadBytesAsync(string path, string what, long mostBytes, CancellationToken cancel)
    {
        await using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var bytes = new MemoryStream();
        var part = new byte[64 * 1024];
        while (await file.ReadAsync(part, cancel) is var got and > 0)
        {
            if (bytes.Length + got > mostBytes)
                throw new InputProblemException(new Problem($"This file is too large to be {what}.", path, "Check that this is the file meant."));
            await bytes.WriteAsync(part.AsMemory(0, got), cancel);
        }

        return bytes.GetBuffer().AsMemory(0, (int)bytes.Length);
    }
}
