namespace Silkwright.Cli.Tests;

/// <summary>A folder that is gone after the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("silkwright-").FullName;

    public string Write(string name, string text)
    {
        var path = System.IO.Path.Combine(Path, name);
        File.WriteAllText(path, text);
        return path;
    }

    public string Write(string name, byte[] bytes)
    {
        var path = System.IO.Path.Combine(Path, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    public void Dispose()
    {
        // Pooled connections keep the database open, which Windows does not let one delete.
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(Path, recursive: true);
    }
}
