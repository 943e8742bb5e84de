using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Readings taken in: what is learnt from, what is flagged, and who wished not to share.</summary>
internal sealed class CoatReadings
{
    private readonly ILookup<string, CoatRead> apart;
    private readonly CoatNames names = new();

    /// <param name="rows">All readings.</param>
    /// <param name="without">Shops whose readings teach nobody else.</param>
    /// <exception cref="InputProblemException">One of them is not among the readings: a slip in its name would share what it keeps to itself.</exception>
    public CoatReadings(IReadOnlyList<CoatRow> rows, IReadOnlyCollection<string> without)
    {
        Rows = [.. rows.Select(names.Of)];
        string[] shops = [.. Rows.Select(row => row.Coat.Shop).Distinct()];
        var problems = new ProblemList();
        foreach (var name in without.Where(name => !shops.Contains(names.Shop(name))))
            problems.Add($"No shop of the readings is called '{NearName.Shown(name)}'.", "without", NearName.Of(name, shops) is { } near ? $"Write {near} if that is meant: a shop that shares nothing must be known by its name." : $"Name one of {string.Join(", ", shops.Take(8))}, or leave it out.");
        problems.ThrowIfAny();
        Flags = CoatRowChecks.Of(Rows);
        var leftOut = Flags.Where(flag => !flag.Used).Select(flag => flag.Line).ToHashSet();
        Used = [.. Rows.Where(row => !leftOut.Contains(row.Line))];
        var optedOut = without.Select(names.Shop).ToHashSet();
        Shared = [.. Used.Where(row => !optedOut.Contains(row.Coat.Shop)).Select(Read)];
        apart = Used.Where(row => optedOut.Contains(row.Coat.Shop)).ToLookup(row => row.Coat.Shop, Read);
        OptedOut = optedOut;

        static CoatRead Read(CoatRow row) => new(row.Coat, row.EomUm!.Value);
    }

    /// <summary>All, each under the first spelling of its shop, person and trough.</summary>
    public IReadOnlyList<CoatRow> Rows { get; }

    public IReadOnlyList<CoatFlag> Flags { get; }

    public IReadOnlyList<CoatRow> Used { get; }

    /// <summary>What every shop that shares learns from.</summary>
    public IReadOnlyList<CoatRead> Shared { get; }

    public IReadOnlySet<string> OptedOut { get; }

    /// <summary>What was assumed of the names of shops, people and troughs.</summary>
    public IEnumerable<Note> NameNotes => names.Notes();

    /// <summary>A shop's name, its person's and its trough's, where they are told, as the readings first spell them.</summary>
    public (string Shop, string? Person, string? TroughId) Spelled(string shop, string? person, string? troughId)
    {
        var known = names.Shop(shop);
        return (known, names.Person(person, known), names.TroughId(troughId, known));
    }

    /// <summary>Cases under the readings' own spelling of their names.</summary>
    public IReadOnlyList<CoatRow> Spelled(IReadOnlyList<CoatRow> cases) => [.. cases.Select(names.Of)];

    /// <summary>A shop's own readings, where it keeps them to itself.</summary>
    public IReadOnlyList<CoatRead> Own(string shop) => [.. apart[shop]];
}
