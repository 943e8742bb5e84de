using ArchUnitNET.Domain;
using ArchUnitNET.Loader;

namespace Silkwright.Tests.Architecture;

/// <summary>Inside the library arrows run one way. A new arrow is a new line in this list.</summary>
public class ArrowsTests
{
    /// <summary>Which folder may need which. Estimates and Statistics are the ground: everyone may stand on them.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Estimates"] = [],
        ["Statistics"] = [],
        ["Naming"] = [],
        ["Gauging"] = ["Naming"],
        ["Artwork"] = [],
        ["Mesh"] = [],
        ["Light"] = ["Mesh", "Emulsion"],
        ["Moire"] = ["Mesh"],
        ["Emulsion"] = [],
        ["Catalogue"] = ["Emulsion"],
        ["Coating"] = ["Mesh", "Emulsion"],
        ["Drying"] = ["Emulsion"],
        ["Exposure"] = ["Mesh", "Emulsion", "Light"],
        ["Ink"] = ["Mesh", "Emulsion"],
        ["Life"] = ["Emulsion"],
        ["Stock"] = ["Emulsion"],
        ["Choosing"] = ["Artwork", "Mesh", "Emulsion", "Exposure", "Life", "Stock"],
        ["Plans"] = ["Naming", "Artwork", "Mesh", "Moire", "Emulsion", "Coating", "Drying", "Exposure", "Ink", "Life", "Stock", "Choosing"],
        ["Answers"] = ["Artwork", "Emulsion", "Catalogue", "Mesh", "Exposure", "Life", "Stock", "Choosing", "Plans"],
        ["Contracts"] = ["Naming", "Artwork", "Mesh", "Light", "Moire", "Emulsion", "Catalogue", "Gauging", "Coating", "Drying", "Exposure", "Ink", "Life", "Stock", "Choosing", "Plans", "Answers"],
    };

    private static readonly string[] Ground = ["Estimates", "Statistics"];

    private static readonly ArchUnitNET.Domain.Architecture Library =
        new ArchLoader().LoadAssembly(typeof(Silkwright.Plans.Planner).Assembly).Build();

    public static TheoryData<string> Folders => [.. Allowed.Keys];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_needs_only_what_the_list_allows(string folder)
    {
        var may = Allowed[folder].Concat(folder is "Estimates" ? [] : Ground).Append(folder).ToHashSet();
        var forbidden = TypesOf(folder)
            .SelectMany(type => type.Dependencies.Select(dependency => (Type: type, Needs: FolderOf(dependency.Target))))
            .Where(arrow => arrow.Needs is not null && !may.Contains(arrow.Needs))
            .Select(arrow => $"{arrow.Type.FullName} needs {arrow.Needs}")
            .Distinct();
        Assert.Empty(forbidden);
    }

    [Fact]
    public void Every_folder_of_the_library_is_in_the_list()
    {
        var folders = Library.Types.Select(FolderOf).OfType<string>().Distinct();
        Assert.Empty(folders.Except(Allowed.Keys));
    }

    [Fact]
    public void No_two_folders_need_each_other()
    {
        var circles =
            from arrow in Allowed
            from needed in arrow.Value
            where Allowed[needed].Contains(arrow.Key)
            select $"{arrow.Key} <-> {needed}";
        Assert.Empty(circles);
    }

    /// <summary>The guard itself is tried: the loader must see the arrows that are known to be there.</summary>
    [Fact]
    public void The_guard_sees_an_arrow_that_is_there() =>
        Assert.Contains(TypesOf("Plans"), type => type.Dependencies.Any(dependency => FolderOf(dependency.Target) == "Coating"));

    private static IEnumerable<IType> TypesOf(string folder) => Library.Types.Where(type => FolderOf(type) == folder);

    private static string? FolderOf(IType type)
    {
        var parts = type.FullName.Split('.');
        return parts is ["Silkwright", var folder, _, ..] ? folder : null;
    }
}
