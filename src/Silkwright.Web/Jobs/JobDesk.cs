using Silkwright.Answers;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Records.Catalogues;
using Silkwright.Records.Films;
using Silkwright.Records.Jobs;
using Silkwright.Records.Shops;
using Silkwright.Records.Store;
using Silkwright.Scheduling.Shelf;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Jobs;

/// <summary>Lays a job's document, its films and its shop together, and plans it once its films are measured.</summary>
public sealed class JobDesk(SilkwrightStore store, JobRecords jobs, CatalogueRecords catalogues, FilmRecords films, FilmBench bench, TimeProvider time)
{
    /// <summary>Today in the shop's time zone.</summary>
    public DateOnly Today => DateOnly.FromDateTime(time.GetLocalNow().DateTime);

    /// <summary>The shop as it stands, described or not, its emulsions completed by the kept catalogue.</summary>
    public async Task<Shop> ShopAsync(string? key, CancellationToken cancel) => (await KnownShopAsync(key, cancel)).Shop;

    /// <summary>The same with notes on what the kept catalogue has told.</summary>
    public async Task<(Shop Shop, IReadOnlyList<Note> Notes)> KnownShopAsync(string? key, CancellationToken cancel)
    {
        var shop = await ToldShopAsync(key, cancel);
        return await CompletedAsync(shop, cancel);
    }

    /// <summary>A shop, with a catalogue where one is asked for: it completes the shop's emulsions, and its others stand after them.</summary>
    /// <param name="given">None: the default shop kept here, completed by the kept catalogue even where none is asked for.</param>
    /// <param name="catalogue">The catalogue asked for.</param>
    /// <param name="keptCatalogue">The kept one is asked for.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">No catalogue is kept, or it tells no emulsion's family.</exception>
    public async Task<(Shop Shop, IReadOnlyList<Note> Notes)> KnownShopAsync(Shop? given, EmulsionCatalogue? catalogue, bool keptCatalogue, CancellationToken cancel)
    {
        var asked = keptCatalogue ? (await catalogues.RequireAsync(cancel)).Catalogue : catalogue;
        if (asked is not null)
            return CatalogueShelf.Add(given ?? await ToldShopAsync(null, cancel), asked);
        return given is null ? await KnownShopAsync(null, cancel) : (given, []);
    }

    /// <summary>A job; none when no job has this id. Films not yet measured are put on the bench.</summary>
    public async Task<JobSight?> SeeAsync(string jobId, CancellationToken cancel)
    {
        if (await jobs.CurrentAsync(jobId, cancel) is not { } revision)
            return null;
        var document = JobReader.Read(revision.Text, revision.Name);
        var sights = await FilmsAsync(revision.JobId, document, cancel);
        var problems = sights
            .Where(f => f.Key is null)
            .Select(f => new Problem($"The film {f.ShortName} is named by the job but was never given here.", revision.Name, "Edit the job and upload it, or describe that colour without a film."))
            .Concat(sights.SelectMany(f => f.Work?.Problems ?? []))
            .ToList();
        StencilPlan? plan = null;
        if (sights.All(f => f.Measurement is not null))
        {
            try
            {
                var (shop, told) = await KnownShopAsync(revision.ShopKey, cancel);
                plan = Planner.Plan(document.ToJob(Today, sights.ToDictionary(f => f.Name, f => f.Measurement!)), shop);
                plan = plan with { Notes = [.. told, .. plan.Notes] };
            }
            catch (InputProblemException fault)
            {
                problems.AddRange(fault.Problems);
            }
        }

        return new JobSight(revision, document, sights, plan, problems);
    }

    /// <summary>The few emulsions the default shop should keep, for the jobs it has kept here month by month.</summary>
    /// <returns>The case, its answer with every note, and the names of the jobs left out, whose films are not measured yet.</returns>
    /// <exception cref="InputProblemException">The shop has no emulsions, there is no job, or no shelf serves every one.</exception>
    public async Task<(ShelfCase Case, ShelfAnswer Answer, IReadOnlyList<string> LeftOut)> ShelfAsync(bool keptCatalogue, CancellationToken cancel)
    {
        var own = await ToldShopAsync(null, cancel);
        var (shop, told) = keptCatalogue ? await KnownShopAsync(own, null, keptCatalogue, cancel) : await CompletedAsync(own, cancel);
        if (shop.Emulsions.Count == 0)
            throw new InputProblemException(new Problem("The shop has no emulsions to choose from.", "shop", "Name them in the shop's document, each with its family and its price."));
        var work = new List<DatedWork>();
        var leftOut = new List<string>();
        foreach (var job in await jobs.DatedAsync(cancel: cancel))
        {
            var sights = await FilmsAsync(job.Revision.JobId, job.Document, cancel);
            if (sights.Any(f => f.Measurement is null))
                leftOut.Add(job.Revision.Name);
            else
                work.Add(new DatedWork(job.Document.ToJob(Today, sights.ToDictionary(f => f.Name, f => f.Measurement!)), job.Day, job.Document.TimesPerMonth));
        }

        if (work.Count == 0 && leftOut.Count > 0)
            throw new InputProblemException(new Problem("No job's films are measured yet.", "the jobs", "Open a job: that measures its films."));
        var (shelf, answer) = await Task.Run(() => ShelfHistory.Of(work, Today).Choose(shop, null, time, own.Emulsions.Select(emulsion => emulsion.Id).ToHashSet(), cancel), cancel);
        return (shelf, answer with { Notes = [.. answer.Notes, .. told] }, leftOut);
    }

    private async Task<(Shop Shop, IReadOnlyList<Note> Notes)> CompletedAsync(Shop shop, CancellationToken cancel) =>
        await catalogues.CurrentAsync(cancel) is { } kept ? CatalogueShelf.Complete(shop, kept.Catalogue) : (shop, []);

    private async Task<Shop> ToldShopAsync(string? key, CancellationToken cancel) =>
        await store.Shops.CurrentAsync(key, cancel) is { } revision ? await KeptShop.OfAsync(store, revision, cancel) : new Shop();

    private async Task<IReadOnlyList<FilmSight>> FilmsAsync(string jobId, JobDocument document, CancellationToken cancel)
    {
        var kept = await jobs.FilmsAsync(jobId, cancel);
        var sights = new List<FilmSight>();
        foreach (var name in document.Films)
        {
            var key = kept.GetValueOrDefault(name);
            var measured = key is null ? null : await films.FindMeasurementAsync(FilmBench.KeyOf(key), cancel);

            // The same film under two names is kept once, under its first; a job calls it by its own.
            var sight = new FilmSight(name, key, measured, key is null || measured is not null ? null : bench.Ask(key));
            sights.Add(measured is null ? sight : sight with { Measurement = measured with { File = sight.ShortName } });
        }

        return sights;
    }
}
