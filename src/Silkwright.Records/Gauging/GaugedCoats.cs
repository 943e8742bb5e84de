using Silkwright.Coating;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Gauging;
using Silkwright.Mesh;
using Silkwright.Naming;
using Silkwright.Plans;
using Silkwright.Records.Store;

namespace Silkwright.Records.Gauging;

/// <summary>What the kept gauge readings of a shop say of its coats, for its plans to learn from.</summary>
public static class GaugedCoats
{
    /// <summary>More than these teach little new.</summary>
    private const int Most = 200;

    /// <summary>The latest coats of emulsions, meshes and troughs that the shop has, where their strokes were told.</summary>
    /// <param name="store">The shop's records.</param>
    /// <param name="shopKey">The shop.</param>
    /// <param name="shop">What it says of itself.</param>
    /// <param name="cancel">Stops the work.</param>
    public static async Task<IReadOnlyList<CoatReading>> OfShopAsync(SilkwrightStore store, string shopKey, Shop shop, CancellationToken cancel = default)
    {
        var entries = await store.Gauging.EntriesAsync(shopKey, cancel);
        var made = entries.Where(entry => entry is { MeshCountPerCm: not null, ThreadUm: not null, Strokes: not null })
            .GroupBy(entry => entry.Recipe).ToDictionary(recipe => recipe.Key, recipe => recipe.First());
        var emulsions = shop.Emulsions.ToLookup(emulsion => Spellings.Key(emulsion.Id));
        var troughs = shop.Troughs.ToLookup(trough => Spellings.Key(trough.Id));
        return [.. ScreenMeans.Of(entries).Select(coat => made.TryGetValue(coat.Recipe, out var how) ? ReadingOf(coat, how, shop, Known(emulsions, coat.Emulsion), Known(troughs, coat.Trough)) : null)
            .OfType<CoatReading>().OrderByDescending(reading => reading.On).Take(Most)];
    }

    private static T? Known<T>(ILookup<string, T> byName, string? name)
        where T : class => name is null ? null : byName[Spellings.Key(name)].FirstOrDefault();

    private static CoatReading? ReadingOf(CoatedReading coat, GaugeEntry how, Shop shop, StencilEmulsion? emulsion, Trough? trough)
    {
        var name = new MeshFabric(how.MeshCountPerCm!.Value, how.ThreadUm!.Value).Name;
        var mesh = shop.Meshes.FirstOrDefault(known => known.Name == name);
        var strokes = StrokeText.TryRead(how.Strokes!, "strokes", new ProblemList());
        // A coat thinner than its mesh, or begun with an empty edge, is a slip that no plan should rest on.
        return mesh is null || emulsion is null || (trough is null && coat.Trough is not null) || coat.EomUm < 0 || strokes is not [{ Scrape: false }, ..]
            ? null
            : new CoatReading { EmulsionId = emulsion.Id, Mesh = mesh, Strokes = strokes, TroughId = trough?.Id, Operator = coat.Operator, EomUm = coat.EomUm, On = coat.On };
    }
}
