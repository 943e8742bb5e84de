using Silkwright.Coating;
using Silkwright.Estimates;
using Silkwright.Naming;

namespace Silkwright.Contracts;

/// <summary>Shops, and the people and troughs of each, under the names that readings first spell them by.</summary>
internal sealed class CoatNames
{
    private readonly Spellings shops = new();
    private readonly Spellings people = new();
    private readonly Spellings troughs = new();

    /// <summary>One and the same trough wherever it comes: what is worked out with it is worked out once.</summary>
    private readonly Dictionary<Trough, Trough> spelled = [];

    public string Shop(string name) => shops.Of(name);

    /// <param name="name">None: none.</param>
    /// <param name="shop">As first spelled.</param>
    public string? Person(string? name, string shop) => people.Of(name, shop);

    /// <param name="name">None: none.</param>
    /// <param name="shop">As first spelled.</param>
    public string? TroughId(string? name, string shop) => troughs.Of(name, shop);

    /// <summary>The row under the first spelling of all its names.</summary>
    public CoatRow Of(CoatRow row)
    {
        var (coat, shop) = (row.Coat, Shop(row.Coat.Shop));
        var (person, trough) = (Person(coat.Operator, shop), TroughOf(coat.Trough, shop));
        return shop == coat.Shop && person == coat.Operator && trough == coat.Trough ? row : row with { Coat = coat with { Shop = shop, Operator = person, Trough = trough } };
    }

    public IEnumerable<Note> Notes() =>
        [.. SpellingNotes.Of(shops, "shop", "shops"), .. SpellingNotes.Of(people, "person", "people"), .. SpellingNotes.Of(troughs, "trough", "troughs")];

    private Trough TroughOf(Trough trough, string shop)
    {
        if (trough.Id.Length == 0 || troughs.Of(trough.Id, shop) is var id && id == trough.Id)
            return trough;
        var first = trough with { Id = id };
        return spelled.TryGetValue(first, out var known) ? known : spelled[first] = first;
    }
}
