using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>
/// Readings that name an emulsion, a trough, a lamp or a mesh the shop does not have: nothing could be learnt from them, and
/// nobody would notice. A coat reading on a mesh of other days stays, since it teaches about its emulsion on every mesh.
/// </summary>
internal static class ShopReferences
{
    private const int MostNamesListed = 8;

    /// <summary>A name is compared letter by letter only for the first faults, and only a short one.</summary>
    private const int MostFaultsCompared = 50;
    private const int LongestCompared = 80;

    public static void Check(DocumentField readings, Shop shop, ProblemList problems)
    {
        var emulsions = Ids(shop.Emulsions.Select(emulsion => emulsion.Id));
        var troughs = Ids(shop.Troughs.Select(trough => trough.Id));
        var lamps = Ids(shop.Lamps.Select(lamp => lamp.Id));
        foreach (var (field, reading) in readings["coat"].Entries(ShopReader.MostReadings).Zip(shop.CoatReadings))
        {
            Known(field["emulsion"], reading.EmulsionId, emulsions, "emulsion", problems);
            Known(field["trough"], reading.TroughId, troughs, "trough", problems);
        }

        foreach (var (field, reading) in readings["runs"].Entries(ShopReader.MostReadings).Zip(shop.RunReadings))
            Known(field["emulsion"], reading.EmulsionId, emulsions, "emulsion", problems);

        var meshes = shop.Meshes.Concat(shop.Frames.Select(frame => frame.Mesh).OfType<MeshFabric>()).Select(Called).ToHashSet();
        foreach (var (field, reading) in readings["exposure"].Entries(ShopReader.MostReadings).Zip(shop.ExposureReadings))
        {
            Known(field["emulsion"], reading.EmulsionId, emulsions, "emulsion", problems);
            Known(field["lamp"], reading.LampId, lamps, "lamp", problems);
            Counted(field, reading, shop.Lamps, problems);
            if (reading.Mesh is { } mesh && !meshes.Contains(Called(mesh)))
            {
                Unknown(
                    field["mesh"], $"The shop has no mesh {Called(mesh)}.", null,
                    meshes, "List it in meshes, or leave the reading's mesh out where it counts for all.", problems);
            }
        }
    }

    private static void Counted(DocumentField field, ExposureReading reading, IReadOnlyList<Lamp> lamps, ProblemList problems)
    {
        if (reading.LampId is null && lamps.Count > 1)
            field["lamp"].Missing($"the lamp it was made on, one of: {string.Join(", ", lamps.Select(lamp => lamp.Id).Take(MostNamesListed))}");

        // Units belong to a machine and are never turned into seconds.
        var lamp = reading.LampId is { } id ? lamps.FirstOrDefault(known => Same(known.Id, id)) : lamps.Count == 1 ? lamps[0] : null;
        if (lamp is not null || lamps.Count == 0)
            StripReader.Counted(field, lamp?.Counts ?? ExposureCount.Seconds, "lamps", problems);
    }

    private static void Known(DocumentField field, string? id, HashSet<string> ids, string kind, ProblemList problems)
    {
        if (string.IsNullOrEmpty(id) || ids.Contains(id))
            return;
        var nearest = problems.Problems.Count < MostFaultsCompared ? Nearest(id, ids) : null;
        Unknown(field, $"The shop has no {kind} called '{id}'.", nearest, ids, $"List it in {kind}s, or take the reading out.", problems);
    }

    private static void Unknown(
        DocumentField field, string what, string? nearest, HashSet<string> known, string remedy, ProblemList problems)
    {
        var meant = nearest is not null ? $"Is '{nearest}' meant? "
            : known.Count > 0 ? $"Known are {string.Join(", ", known.Take(MostNamesListed))}{(known.Count > MostNamesListed ? " and others" : "")}. "
            : "";
        problems.Add(what, field.Path, meant + remedy);
    }

    /// <summary>The name that differs by a slip or two of the finger.</summary>
    private static string? Nearest(string id, HashSet<string> ids)
    {
        var asked = id.ToUpperInvariant();
        return ids
            .Where(known => Math.Max(known.Length, id.Length) <= LongestCompared)
            .Select(known => (Name: known, Slips: Slips(asked, known.ToUpperInvariant())))
            .Where(near => near.Slips <= Math.Max(1, near.Name.Length / 4))
            .OrderBy(near => near.Slips)
            .Select(near => near.Name)
            .FirstOrDefault();
    }

    /// <summary>Letters to add, drop or change between two words (V. I. Levenshtein, 1966).</summary>
    private static int Slips(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
                (corner, row[j]) = (row[j], Math.Min(Math.Min(row[j], row[j - 1]) + 1, corner + (a[i - 1] == b[j - 1] ? 0 : 1)));
        }

        return row[b.Length];
    }

    private static HashSet<string> Ids(IEnumerable<string> ids) => ids.Where(id => id.Length > 0).ToHashSet(StringComparer.OrdinalIgnoreCase);

    private static string Called(MeshFabric mesh) => mesh.Dyed ? $"{mesh.Name} dyed" : $"{mesh.Name} undyed";

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
