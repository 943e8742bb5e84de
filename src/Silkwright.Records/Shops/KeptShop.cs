using Silkwright.Contracts;
using Silkwright.Plans;
using Silkwright.Records.Gauging;
using Silkwright.Records.Screens;
using Silkwright.Records.Store;

namespace Silkwright.Records.Shops;

/// <summary>A kept shop as plans see it: its document, and what the record of its screens, its gauge readings and other shops' experience add to it.</summary>
public static class KeptShop
{
    /// <exception cref="Estimates.InputProblemException">The document can't be read.</exception>
    public static async Task<Shop> OfAsync(SilkwrightStore store, ShopRevision revision, CancellationToken cancel = default)
    {
        var shop = ShopReader.Read(revision.Text, $"shop {revision.ShopKey}");
        var counted = await CountedScreens.OfShopAsync(store, revision.ShopKey, cancel);
        var gauged = await GaugedCoats.OfShopAsync(store, revision.ShopKey, shop, cancel);
        return shop with { RunReadings = [.. shop.RunReadings, .. counted], CoatReadings = [.. shop.CoatReadings, .. gauged], Experience = await store.CoatExperience.TogetherAsync(revision.ShopKey, cancel) };
    }
}
