using Silkwright.Estimates;

namespace Silkwright.Cli;

/// <summary>Files that a person asks to have written.</summary>
internal static class OutputFile
{
    /// <summary>The kind of picture that a name asks for: <c>png</c> or <c>svg</c>.</summary>
    /// <exception cref="InputProblemException">It is neither.</exception>
    public static string PictureKind(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".PNG" => "png",
        ".SVG" => "svg",
        _ => throw new InputProblemException(new Problem($"'{Path.GetFileName(path)}' is no picture that is drawn here.", "--picture", "Name a file that ends in .png or .svg.")),
    };

    /// <summary>What is read is not written over.</summary>
    /// <param name="path">What is to be written, as typed.</param>
    /// <param name="read">What is read, as typed.</param>
    /// <param name="where">The option that names what is to be written.</param>
    /// <exception cref="InputProblemException">They are one file.</exception>
    public static void RefuseInput(string path, string read, string where)
    {
        if (Path.Exists(path) && Real(path) == Real(read))
            throw new InputProblemException(new Problem($"{Path.GetFileName(path)} is the file that is read.", where, "Name another file: this one would be lost."));
    }

    private static string Real(string path) => new FileInfo(path) is { } file && file.ResolveLinkTarget(returnFinalTarget: true) is { } target ? target.FullName : Path.GetFullPath(path);

    /// <summary>Before long work: tries whether what comes of it can be written. What is there stays as it is.</summary>
    /// <exception cref="InputProblemException">The file cannot be written.</exception>
    public static void Try(string path)
    {
        try
        {
            var isNew = !File.Exists(path);
            using (File.Open(path, FileMode.OpenOrCreate, FileAccess.Write))
            {
            }

            if (isNew)
                File.Delete(path);
        }
        catch (Exception failure) when (IsRefusal(failure))
        {
            throw Refused(path, failure);
        }
    }

    /// <summary>Writes all of it, or leaves nothing of it.</summary>
    /// <exception cref="InputProblemException">The file cannot be written.</exception>
    public static async Task WriteAsync(string path, byte[] bytes, CancellationToken cancel)
    {
        FileStream file;
        try
        {
            file = File.Create(path);
        }
        catch (Exception failure) when (IsRefusal(failure))
        {
            throw Refused(path, failure);
        }

        try
        {
            await using (file)
                await file.WriteAsync(bytes, cancel);
        }
        catch (OperationCanceledException)
        {
            TakeAway(path);
            throw;
        }
        catch (Exception failure) when (IsRefusal(failure))
        {
            TakeAway(path);
            throw new InputProblemException(new Problem($"This file can't be written to its end: {failure.Message}", path, "Make room where it goes, or name another place; nothing of it is kept."));
        }
    }

    /// <summary>What is cut short; a device has no length, and stays.</summary>
    private static void TakeAway(string path)
    {
        if (new FileInfo(Real(path)) is { Exists: true, Length: > 0 } half)
            half.Delete();
    }

    private static bool IsRefusal(Exception failure) => failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;

    private static InputProblemException Refused(string path, Exception failure) => new(Directory.Exists(path)
        ? new Problem("This file can't be written: it is a folder.", path, "Name a file in it.")
        : new Problem($"This file can't be written: {failure.Message}", path, "Name a folder that is there and may be written to."));
}
