using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>What a shop's own gauge readings taught of its coats, and the strokes they lead to.</summary>
public sealed class LearntShopCoats
{
    private readonly Shop shop;
    private readonly CoatHierarchy learnt;
    private readonly IReadOnlyList<CoatRead> reads;

    private LearntShopCoats(Shop shop)
    {
        this.shop = shop;
        reads = ShopCoats.Reads(shop);
        learnt = CoatHierarchy.Of(reads, shop.Experience);
    }

    /// <summary>Who and what lays otherwise than its like.</summary>
    public IReadOnlyList<CoatEffect> Effects => learnt.Effects();

    /// <summary>Readings learnt from.</summary>
    public int Count => reads.Count;

    /// <summary>Learns.</summary>
    /// <param name="shop">As it is told; what it does not tell is assumed as in a plan.</param>
    public static LearntShopCoats Of(Shop shop) => new(ShopAssumptions.Fill(shop).Shop);

    /// <summary>What other shops' readings taught, where it was brought in.</summary>
    public CoatExperience? Elsewhere => shop.Experience;

    /// <summary>The readings of a shop that teach, as they are given to others as experience.</summary>
    public static IReadOnlyList<CoatRead> ReadsOf(Shop shop) => ShopCoats.Reads(ShopAssumptions.Fill(shop).Shop);

    /// <summary>Each reading beside what the other readings alone say it should have been.</summary>
    /// <param name="most">As many of the latest.</param>
    public IReadOnlyList<(CoatRead Read, Estimate Expected)> Held(int most) => learnt.Held(most);

    /// <summary>The liquids it has; a capillary film is laid, not stroked.</summary>
    public IReadOnlyList<StencilEmulsion> Liquids => [.. shop.Emulsions.Where(emulsion => emulsion.Family != EmulsionFamily.CapillaryFilm)];

    public IReadOnlyList<MeshFabric> Meshes => shop.Meshes;

    public IReadOnlyList<Trough> Troughs => shop.Troughs;

    /// <summary>Who has coated what was read.</summary>
    public IReadOnlyList<string> People => [.. ShopCoats.PeopleOf(shop).Names.Select(person => person.Name)];

    /// <summary>The shortest strokes for a wanted thickness, out of the shop's people and troughs.</summary>
    /// <param name="wantedUm">[µm]</param>
    /// <param name="toleranceUm">Either way. [µm]</param>
    /// <param name="emulsion">A liquid.</param>
    /// <param name="mesh">The mesh.</param>
    /// <param name="person">Only this one; none: any of them.</param>
    /// <param name="troughId">Only this one; none: any of them.</param>
    public CoatAim Aim(double wantedUm, double toleranceUm, StencilEmulsion emulsion, MeshFabric mesh, string? person = null, string? troughId = null) => CoatAim.Of(
        wantedUm, toleranceUm,
        [
            .. from trough in shop.Troughs.Where(trough => troughId is null || trough.Id == troughId)
               from name in People.Where(name => person is null || name == person).DefaultIfEmpty()
               select ShopCoats.Asked(shop, trough, emulsion, WovenMesh.Of(mesh)) with { Operator = name },
        ],
        learnt);
}
