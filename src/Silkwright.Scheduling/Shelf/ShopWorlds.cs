using Silkwright.Choosing;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The worlds of a shop: every input of every cost drawn from the engines' intervals, the same luck for every shelf.</summary>
internal sealed class ShopWorlds : IShelfWorlds
{
    /// <summary>Worlds drawn: a chance is right to about a point and a half in a hundred.</summary>
    private const int Worlds = 1000;
    private const int Seed = 3;

    private readonly Dictionary<string, StencilEmulsion> emulsions;
    private readonly Dictionary<string, ColourWork> colours;
    private readonly Estimate labour;
    private readonly CostLuck luck;
    private readonly Dictionary<string, double[]> waste = [];
    private readonly ShopStock stock;

    /// <param name="shop">The shop.</param>
    /// <param name="work">The month's colours.</param>
    /// <param name="stock">What keeping costs at the pace of the case.</param>
    public ShopWorlds(Shop shop, IReadOnlyList<ColourWork> work, ShopStock stock)
    {
        this.stock = stock;
        emulsions = shop.Emulsions.ToDictionary(emulsion => emulsion.Id);
        colours = work.ToDictionary(colour => colour.Name);
        labour = ShopStock.LabourPerHour(shop);
        luck = new CostLuck([.. emulsions.Keys], Worlds, Seed);
    }

    public int Count => Worlds;

    /// <summary>Keeping stands on common practice.</summary>
    public Ground Ground => Ground.CommonPractice;

    public double Keeping(ShelfStand stand, int world)
    {
        var emulsion = emulsions[stand.Emulsion.Id];
        var size = SizeOf(stand);
        var key = $"{emulsion.Id} {stand.Size}";
        if (!waste.TryGetValue(key, out var grams))
            grams = waste[key] = [.. Enumerable.Range(0, Worlds).Select(w => stock.WasteGramsAt(emulsion, size, luck.OfWaste(emulsion.Id, w)))];
        var price = TriangularLaw.At(ShopStock.PricePerKg(emulsion, size), luck.Of(emulsion.Id, CostInput.PricePerKg, world));
        var rate = TriangularLaw.At(labour, luck.Of(emulsion.Id, CostInput.LabourPerHour, world));
        return (ShopStock.MinutesToKeep(emulsion) / 60 * rate) + (grams[world] * price / 1000);
    }

    public double PerScreen(ShelfJob job, ShelfStand stand, int world)
    {
        var (id, emulsion) = (stand.Emulsion.Id, emulsions[stand.Emulsion.Id]);
        var cost = colours[job.Id].Of(id).Case with { PricePerKg = ShopStock.PricePerKg(emulsion, SizeOf(stand)) };
        return CostModel.TotalAt(cost, input => luck.Of(id, input, world));
    }

    private ContainerPrice SizeOf(ShelfStand stand) => ShopStock.Sizes(emulsions[stand.Emulsion.Id])[stand.Size];
}
