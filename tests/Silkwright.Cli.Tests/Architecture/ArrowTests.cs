using System.Xml.Linq;

namespace Silkwright.Cli.Tests.Architecture;

/// <summary>Which project may need which: a new arrow is a visible line here.</summary>
public sealed class ArrowTests
{
    private static readonly Dictionary<string, string[]> Projects = new()
    {
        ["Silkwright"] = [],
        ["Silkwright.Film"] = ["Silkwright"],
        ["Silkwright.Scheduling"] = ["Silkwright"],
        ["Silkwright.Records"] = ["Silkwright"],
        ["Silkwright.Records.Postgres"] = ["Silkwright.Records"],
        ["Silkwright.Web"] = ["Silkwright", "Silkwright.Film", "Silkwright.Scheduling", "Silkwright.Records"],
        ["Silkwright.Cli"] = ["Silkwright.Scheduling", "Silkwright.Web"],
    };

    /// <summary>The science needs these packages alone.</summary>
    private static readonly string[] SciencePackages = ["MathNet.Numerics", "UnitsNet"];

    [Fact]
    public void Every_project_of_the_source_is_in_the_list() => Assert.Equal(Projects.Keys.Order(), Found().Keys.Order());

    [Fact]
    public void No_project_needs_more_than_the_list_allows() => Assert.All(Found(), project =>
        Assert.Empty(Included(project.Value, "ProjectReference").Select(Path.GetFileNameWithoutExtension).Except(Projects[project.Key])));

    [Fact]
    public void The_science_needs_its_two_packages_and_no_more() =>
        Assert.Equal(SciencePackages, Included(Found()["Silkwright"], "PackageReference").Order());

    private static Dictionary<string, string> Found() => Directory.GetFiles(House.Of("src"), "*.csproj", SearchOption.AllDirectories)
        .ToDictionary(path => Path.GetFileNameWithoutExtension(path));

    private static IEnumerable<string> Included(string project, string item) =>
        XDocument.Load(project).Descendants(item).Select(reference => reference.Attribute("Include")!.Value.Replace('\\', '/'));
}
