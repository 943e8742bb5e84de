namespace Silkwright.Cli.Tests;

/// <summary>Where the project lies.</summary>
internal static class House
{
    public static string Path { get; } = Find();

    public static string Of(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "Silkwright.slnx")))
                return folder.FullName;
        }

        throw new InvalidOperationException("The tests must run from a folder inside the project.");
    }
}
