using Silkwright.Coating.Learning;

namespace Silkwright.Contracts;

/// <summary>Readings taken in: what is learnt from, what is flagged, and who wished not to share.</summary>
internal sealed class CoatReadings
{
    private readonly ILookup<string, CoatRead> apart;

    /// <param name="rows">All readings.</param>
    /// <param name="without">Shops whose readings teach nobody else.</param>
    public CoatReadings(IReadOnlyList<CoatRow> rows, IReadOnlyCollection<string> without)
    {
        Rows = rows;
        Flags = CoatRowChecks.Of(rows);
        var leftOut = Flags.Where(flag => !flag.Used).Select(flag => flag.Line).ToHashSet();
        Used = [.. rows.Where(row => !leftOut.Contains(row.Line))];
        var optedOut = without.ToHashSet(StringComparer.OrdinalIgnoreCase);
        Shared = [.. Used.Where(row => !optedOut.Contains(row.Coat.Shop)).Select(Read)];
        apart = Used.Where(row => optedOut.Contains(row.Coat.Shop)).ToLookup(row => row.Coat.Shop, Read);
        OptedOut = optedOut;

        static CoatRead Read(CoatRow row) => new(row.Coat, row.EomUm!.Value);
    }

    public IReadOnlyList<CoatRow> Rows { get; }

    public IReadOnlyList<CoatFlag> Flags { get; }

    public IReadOnlyList<CoatRow> Used { get; }

    /// <summary>What every shop that shares learns from.</summary>
    public IReadOnlyList<CoatRead> Shared { get; }

    public IReadOnlySet<string> OptedOut { get; }

    /// <summary>A shop's own readings, where it keeps them to itself.</summary>
    public IReadOnlyList<CoatRead> Own(string shop) => [.. apart[shop]];
}
