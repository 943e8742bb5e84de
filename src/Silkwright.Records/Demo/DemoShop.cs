using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Demo;

/// <summary>Puts the invented shop, its catalogue, gauge readings, jobs, films and some screens' history into a store, once.</summary>
public static class DemoShop
{
    /// <summary>The shop's key.</summary>
    public const string ShopKey = "marlowe-quay";

    /// <summary>Who the entries say has loaded it.</summary>
    public const string Loader = "Demonstration";

    private const string Why = "The demonstration, as it comes";

    /// <summary>Loads what is not there yet; what somebody has changed since stays as they left it.</summary>
    /// <param name="store">The store, open.</param>
    /// <param name="demoFolder">The folder with shop.json, catalogue.csv, jobs/ and screens.json; films/ may still be empty.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The folder is not a demonstration's, or a file in it is damaged.</exception>
    public static async Task<DemoLoaded> LoadAsync(SilkwrightStore store, string demoFolder, CancellationToken cancel = default)
    {
        var shopFile = Path.Combine(demoFolder, "shop.json");
        if (!File.Exists(shopFile))
            throw new InputProblemException(new Problem("This folder holds no demonstration.", shopFile, "Name the folder demo/ of the program."));
        if (await store.Shops.CurrentAsync(ShopKey, cancel) is null)
            _ = await store.Shops.SaveAsync(ShopKey, await File.ReadAllTextAsync(shopFile, cancel), Loader, Why, cancel: cancel);

        var catalogueFile = Path.Combine(demoFolder, "catalogue.csv");
        if (File.Exists(catalogueFile) && await store.Catalogues.CurrentAsync(cancel) is null)
            _ = await store.Catalogues.SaveAsync(Contracts.CatalogueReader.Read(await File.ReadAllTextAsync(catalogueFile, cancel), catalogueFile), Loader, 0, cancel);

        var gaugeFile = Path.Combine(demoFolder, "gauge-history.csv");
        if (File.Exists(gaugeFile))
            _ = await store.Gauging.KeepFileAsync(Contracts.GaugeReader.Read(await File.ReadAllTextAsync(gaugeFile, cancel), gaugeFile), Path.GetFileName(gaugeFile), Loader, ShopKey, cancel);

        var filmsMissing = new List<string>();
        var jobs = Directory.GetFiles(Path.Combine(demoFolder, "jobs"), "*.json").Order(StringComparer.Ordinal).ToList();
        foreach (var jobFile in jobs)
            filmsMissing.AddRange(await LoadJobAsync(store, jobFile, cancel));

        var screens = await DemoScreens.LoadAsync(store, Path.Combine(demoFolder, "screens.json"), cancel);
        return new DemoLoaded(jobs.Count, screens, filmsMissing);
    }

    private static async Task<IReadOnlyList<string>> LoadJobAsync(SilkwrightStore store, string jobFile, CancellationToken cancel)
    {
        var id = Path.GetFileNameWithoutExtension(jobFile);
        var job = await store.Jobs.CurrentAsync(id, cancel)
            ?? await store.Jobs.SaveAsync(id, await File.ReadAllTextAsync(jobFile, cancel), Loader, Why, ShopKey, cancel: cancel);
        var attached = await store.Jobs.FilmHashesAsync(id, cancel);
        var missing = new List<string>();
        foreach (var film in Contracts.JobReader.Read(job.Text, jobFile).Films.Where(f => !attached.ContainsKey(f)))
        {
            var path = Path.GetFullPath(film, Path.GetDirectoryName(Path.GetFullPath(jobFile))!);
            if (!File.Exists(path))
            {
                missing.Add(path);
                continue;
            }

            var stored = await store.Films.AddFileAsync(path, Loader, cancel);
            await store.Jobs.AttachFilmAsync(id, film, stored.Hash, Loader, cancel);
        }

        return missing;
    }
}
