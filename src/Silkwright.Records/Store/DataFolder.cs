using Silkwright.Estimates;

namespace Silkwright.Records.Store;

/// <summary>The folder a shop keeps its records in: silkwright.db and films/.</summary>
public sealed class DataFolder
{
    private const string DatabaseName = "silkwright.db";

    private DataFolder(string path) => Path = path;

    /// <summary>The folder, in full.</summary>
    public string Path { get; }

    /// <summary>The embedded database.</summary>
    public string DatabasePath => System.IO.Path.Combine(Path, DatabaseName);

    /// <summary>Where films lie, each named by the hash of what it holds.</summary>
    public string FilmsPath => System.IO.Path.Combine(Path, "films");

    /// <summary>What pictures of films are drawn from: made from them when it is missing, and no part of a backup.</summary>
    public string TilesPath => System.IO.Path.Combine(Path, "tiles");

    /// <summary>Whether a shop's records were begun in a folder. Nothing is made.</summary>
    /// <param name="path">Any path.</param>
    public static bool HoldsRecords(string path) => File.Exists(System.IO.Path.Combine(path, DatabaseName));

    /// <summary>Opens the folder, making it where it is missing.</summary>
    /// <param name="path">Any folder the user can write to.</param>
    /// <exception cref="InputProblemException">The folder cannot be made or written to.</exception>
    public static DataFolder Open(string path)
    {
        if (string.IsNullOrWhiteSpace(path) || path.Contains('\0', StringComparison.Ordinal))
            throw new InputProblemException(new Problem("The data folder is not named.", "--data", "Name a folder, such as --data data."));
        var folder = new DataFolder(System.IO.Path.GetFullPath(path));
        try
        {
            _ = Directory.CreateDirectory(folder.FilmsPath);
            // The only honest proof that a folder takes files is a file.
            var probe = System.IO.Path.Combine(folder.Path, $".write-{Guid.NewGuid():N}");
            File.WriteAllBytes(probe, []);
            File.Delete(probe);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new InputProblemException(new Problem(
                $"The data folder cannot be written to: {fault.Message}",
                folder.Path,
                "Name another folder with --data, or give this user the right to write there."));
        }

        return folder;
    }

    /// <summary>A file of the folder by its path relative to it, as records keep it.</summary>
    public string FullPath(string relativePath) => System.IO.Path.Combine(Path, relativePath);
}
