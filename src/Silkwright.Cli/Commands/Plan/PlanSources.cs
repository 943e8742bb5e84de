using Silkwright.Answers;
using Silkwright.Artwork;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Plans;
using Silkwright.Records.Films;
using Silkwright.Records.Shops;
using Silkwright.Records.Store;
using Silkwright.Scheduling.Shelf;
using Silkwright.Web.Measuring;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>Where a plan takes its shop from, and where measured films are remembered.</summary>
internal sealed class PlanSources
{
    private readonly SilkwrightStore? store;

    private PlanSources(SilkwrightStore? store, Shop shop, Shop? told, IReadOnlyList<Note> notes) =>
        (this.store, Shop, ShopIsKnown, OnShelf, Notes) = (store, shop, told is not null, (told?.Emulsions ?? []).Select(emulsion => emulsion.Id).ToHashSet(), notes);

    public Shop Shop { get; }

    /// <summary>Somebody has described the shop.</summary>
    public bool ShopIsKnown { get; }

    /// <summary>Emulsions on the shop's own shelf; a catalogue's others stand beside them in <see cref="Shop"/>.</summary>
    public IReadOnlySet<string> OnShelf { get; }

    /// <summary>What a catalogue has told of the shop's emulsions, and which it has added.</summary>
    public IReadOnlyList<Note> Notes { get; }

    /// <summary>The shop of a file or of a data folder. A kept shop's emulsions are completed by the catalogue kept beside it.</summary>
    /// <param name="shopPath">SHOP.json; none: the current shop of the data folder.</param>
    /// <param name="dataPath">A data folder; none: nothing is remembered.</param>
    /// <param name="surroundings">The clock.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <param name="asked">Finds the catalogue to weigh besides, in the records or elsewhere; none: not asked.</param>
    /// <exception cref="InputProblemException">The shop or the catalogue can't be read or the folder can't be used.</exception>
    public static async Task<PlanSources> OpenAsync(
        string? shopPath, string? dataPath, Surroundings surroundings, CancellationToken cancel, Func<SilkwrightStore?, Task<EmulsionCatalogue?>>? asked = null)
    {
        var store = dataPath is null ? null : await RecordsFolder.OpenAsync(dataPath, surroundings, cancel);
        var told = shopPath is null
            ? await KeptShopAsync(store, cancel)
            : ShopReader.Read(await InputFile.ReadTextAsync(shopPath, "a shop", cancel), Path.GetFileName(shopPath));
        var shop = told ?? new Shop();
        var beside = shopPath is null && store is not null ? await store.Catalogues.CurrentAsync(cancel) : null;
        var (known, notes) = asked is not null && await asked(store) is { } catalogue ? CatalogueShelf.Add(shop, catalogue)
            : beside is not null ? CatalogueShelf.Complete(shop, beside.Catalogue)
            : (shop, []);
        return new PlanSources(store, known, told, notes);
    }

    private static async Task<Shop?> KeptShopAsync(SilkwrightStore? store, CancellationToken cancel) =>
        store is not null && await store.Shops.CurrentAsync(cancel: cancel) is { } kept ? await KeptShop.OfAsync(store, kept, cancel) : null;

    /// <summary>A job with its films measured.</summary>
    /// <param name="path">JOB.json; films it names are found from its own folder.</param>
    /// <param name="surroundings">The clock, and where progress is told.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The faults of the job, or of every film that can't be measured.</exception>
    public async Task<Job> JobAsync(string path, Surroundings surroundings, CancellationToken cancel) =>
        (await WorkAsync(path, surroundings, cancel)).Job;

    /// <summary>The same with how often it comes.</summary>
    /// <inheritdoc cref="JobAsync"/>
    public async Task<ShelfWork> WorkAsync(string path, Surroundings surroundings, CancellationToken cancel)
    {
        var job = JobReader.Read(await InputFile.ReadTextAsync(path, "a job", cancel), Path.GetFileName(path));
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var films = await MeasureAsync(job.Films.ToDictionary(film => film, film => (Path.GetFullPath(film, folder), new FilmOptions())), surroundings, cancel);
        return new ShelfWork(job.ToJob(surroundings.Today, films), job.TimesPerMonth ?? 1);
    }

    /// <summary>The jobs kept in the data folder, each with the day it counts for; films not measured yet are measured.</summary>
    /// <returns>The jobs, and the names of those left out, some film of which was never given.</returns>
    /// <exception cref="InputProblemException">A film can't be measured.</exception>
    public async Task<(IReadOnlyList<DatedWork> Work, IReadOnlyList<string> LeftOut)> HistoryAsync(Surroundings surroundings, CancellationToken cancel)
    {
        if (store is null)
            return ([], []);
        var work = new List<DatedWork>();
        var leftOut = new List<string>();
        foreach (var job in await store.Jobs.DatedAsync(cancel: cancel))
        {
            var kept = await store.Jobs.FilmsAsync(job.Revision.JobId, cancel);
            var films = new Dictionary<string, (string Path, FilmOptions Options)>();
            foreach (var name in job.Document.Films)
            {
                if (kept.GetValueOrDefault(name) is { } key && await store.Films.FindAsync(key.Hash, cancel) is { } film)
                    films[name] = (store.Films.PathOf(film), FilmBench.OptionsOf(key));
            }

            if (films.Count < job.Document.Films.Count)
                leftOut.Add(job.Revision.Name);
            else
                work.Add(new DatedWork(job.Document.ToJob(surroundings.Today, await MeasureAsync(films, surroundings, cancel)), job.Day, job.Document.TimesPerMonth));
        }

        return (work, leftOut);
    }

    /// <summary>The measurement of each film by its name in the job.</summary>
    private async Task<IReadOnlyDictionary<string, FilmMeasurement>> MeasureAsync(
        IReadOnlyDictionary<string, (string Path, FilmOptions Options)> films, Surroundings surroundings, CancellationToken cancel)
    {
        if (films.Count == 0)
            return new Dictionary<string, FilmMeasurement>();
        var ways = films.Values.ToArray();
        var measured = await FilmWork.MeasureAllAsync(
            [.. ways.Select(way => way.Path)], (i, progress, stop) => MeasureAsync(ways[i].Path, ways[i].Options, progress, surroundings, stop), surroundings, cancel);
        return films.Keys.Zip(measured).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    private async Task<FilmMeasurement> MeasureAsync(string path, FilmOptions options, IProgress<double> progress, Surroundings surroundings, CancellationToken cancel)
    {
        async Task<FilmMeasurement> Measure(string from, CancellationToken stop) =>
            (await FilmWork.MeasureAsync(from, options, progress, surroundings, stop)).Measurement;

        if (store is null)
            return await Measure(path, cancel);

        // What is no film has no place among the films kept.
        FilmFile.Open(path, options).Dispose();
        var kept = await store.Films.AddFileAsync(path, Environment.UserName, cancel);
        return await store.Films.MeasureOnceAsync(FilmBench.KeyOf(new FilmKey(kept.Hash, options.Page, options.Dpi)), Measure, cancel);
    }
}
