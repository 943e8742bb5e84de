namespace Silkwright.Film.Tests;

/// <summary>A folder of one test's own, gone afterwards.</summary>
internal sealed class TestFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("film-test-");

    public string this[string name] => Path.Combine(folder.FullName, name);

    public void Dispose() => folder.Delete(recursive: true);
}
