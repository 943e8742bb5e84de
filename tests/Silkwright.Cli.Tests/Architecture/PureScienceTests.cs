using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Silkwright.Plans;

namespace Silkwright.Cli.Tests.Architecture;

/// <summary>The science has no files, no clock, no database, no network and no chance without a seed: read from its compiled references.</summary>
public sealed class PureScienceTests
{
    private static readonly string[] ForbiddenTypes =
    [
        "System.IO.File", "System.IO.FileInfo", "System.IO.FileStream", "System.IO.Directory", "System.IO.DirectoryInfo", "System.IO.StreamReader",
        "System.Console", "System.TimeProvider", "System.Diagnostics.Stopwatch", "System.Threading.Thread",
    ];

    private static readonly string[] ForbiddenMembers =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Random.get_Shared", "System.Guid.NewGuid", "System.Environment.get_TickCount64", "System.Environment.GetEnvironmentVariable",
    ];

    [Fact]
    public void It_touches_no_files_no_clock_and_no_console() => Assert.Empty(Types(typeof(Planner)).Intersect(ForbiddenTypes));

    [Fact]
    public void It_asks_for_no_present_time_and_no_chance_of_the_machine() => Assert.Empty(Members(typeof(Planner)).Select(member => member.Name).Intersect(ForbiddenMembers));

    [Fact]
    public void Every_random_source_takes_a_seed() =>
        Assert.DoesNotContain(Members(typeof(Planner)), member => member is { Name: "System.Random..ctor", Parameters: 0 });

    [Fact]
    public void It_needs_no_assembly_but_the_base_library_and_its_two_packages() => Assert.All(
        typeof(Planner).Assembly.GetReferencedAssemblies(),
        assembly => Assert.Matches("^(System\\.|MathNet\\.Numerics$|UnitsNet$)", assembly.Name));

    /// <summary>The rule must bite: the shell uses files and a clock, and is found out by the same reading.</summary>
    [Fact]
    public void The_same_reading_finds_files_in_the_shell() => Assert.Contains("System.IO.File", Types(typeof(Shell)));

    private static List<string> Types(Type of) => Read(of, reader => reader.TypeReferences
        .Select(reader.GetTypeReference)
        .Select(type => $"{reader.GetString(type.Namespace)}.{reader.GetString(type.Name)}"));

    private static List<(string Name, int Parameters)> Members(Type of) => Read(of, reader => reader.MemberReferences
        .Select(reader.GetMemberReference)
        .Where(member => member.Parent.Kind == HandleKind.TypeReference && member.GetKind() == MemberReferenceKind.Method)
        .Select(member =>
        {
            var type = reader.GetTypeReference((TypeReferenceHandle)member.Parent);
            var signature = reader.GetBlobReader(member.Signature);
            signature.ReadSignatureHeader();
            return ($"{reader.GetString(type.Namespace)}.{reader.GetString(type.Name)}.{reader.GetString(member.Name)}", signature.ReadCompressedInteger());
        }));

    private static List<T> Read<T>(Type of, Func<MetadataReader, IEnumerable<T>> read)
    {
        using var file = File.OpenRead(of.Assembly.Location);
        using var image = new PEReader(file);
        return [.. read(image.GetMetadataReader())];
    }
}
