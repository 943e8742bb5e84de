using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Mesh;
using Silkwright.Naming;

namespace Silkwright.Plans;

/// <summary>What a shop's gauge readings teach of all its coats.</summary>
internal static class ShopCoats
{
    /// <summary>All its emulsions, meshes and troughs together.</summary>
    public static CoatHierarchy Of(Shop shop) => CoatHierarchy.Of(Reads(shop), shop.Experience);

    /// <summary>The readings that teach, as the model takes them.</summary>
    public static IReadOnlyList<CoatRead> Reads(Shop shop) => Reads(shop, PeopleOf(shop));

    /// <summary>Who has coated what was read, each one however the name is spelled.</summary>
    public static Spellings PeopleOf(Shop shop)
    {
        var people = new Spellings();
        foreach (var reading in shop.CoatReadings)
            _ = people.Of(reading.Operator);
        return people;
    }

    private static IReadOnlyList<CoatRead> Reads(Shop shop, Spellings people) =>
    [
        .. from reading in shop.CoatReadings
           join emulsion in shop.Emulsions on reading.EmulsionId.ToUpperInvariant() equals emulsion.Id.ToUpperInvariant()
           let trough = TroughOf(reading, shop.Troughs)
           where trough is not null
           select new CoatRead(
               new CoatObservation
               {
                   Shop = shop.Name,
                   Operator = people.Of(reading.Operator),
                   Trough = trough,
                   EdgeIsKnown = trough.Id.Length > 0,
                   Emulsion = emulsion,
                   Mesh = WovenMesh.Of(reading.Mesh),
                   Strokes = reading.Strokes,
                   Screen = reading.Screen,
               },
               reading.EomUm),
    ];

    /// <summary>A coat of the shop that nobody has laid yet, its strokes still to be found.</summary>
    public static CoatObservation Asked(Shop shop, Trough trough, StencilEmulsion emulsion, WovenMesh mesh) =>
        new() { Shop = shop.Name, Trough = trough, Emulsion = emulsion, Mesh = mesh, Strokes = [] };

    /// <summary>The trough a reading names; one without a name where it names none and there are several; none where the shop has it no more and its edge is not known.</summary>
    private static Trough? TroughOf(CoatReading reading, IReadOnlyList<Trough> troughs)
    {
        if (reading.TroughId is { } named)
            return troughs.FirstOrDefault(trough => Spellings.AreOne(trough.Id, named));
        return troughs is [var only] ? only : new Trough("", CoatDefaults.RoundEdgeMm);
    }
}
