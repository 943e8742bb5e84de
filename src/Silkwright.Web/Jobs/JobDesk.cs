using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Records.Films;
using Silkwright.Records.Jobs;
using Silkwright.Records.Shops;
using Silkwright.Scheduling.Shelf;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Jobs;

/// <summary>Lays a job's document, its films and its shop together, and plans it once its films are measured.</summary>
public sealed class JobDesk(JobRecords jobs, ShopRecords shops, FilmRecords films, FilmBench bench, TimeProvider time)
{
    /// <summary>Today in the shop's time zone.</summary>
    public DateOnly Today => DateOnly.FromDateTime(time.GetLocalNow().DateTime);

    /// <summary>The shop as it stands, described or not.</summary>
    public async Task<Shop> ShopAsync(string? key, CancellationToken cancel) =>
        await shops.CurrentAsync(key, cancel) is { } revision ? ShopReader.Read(revision.Text, "shop") : new Shop();

    /// <summary>A job; none when no job has this id. Films not yet measured are put on the bench.</summary>
    public async Task<JobSight?> SeeAsync(string jobId, CancellationToken cancel)
    {
        if (await jobs.CurrentAsync(jobId, cancel) is not { } revision)
            return null;
        var document = JobReader.Read(revision.Text, revision.Name);
        var sights = await FilmsAsync(revision.JobId, document, cancel);
        var problems = sights
            .Where(f => f.Hash is null)
            .Select(f => new Problem($"The film {f.ShortName} is named by the job but was never given here.", revision.Name, "Edit the job and upload it, or describe that colour without a film."))
            .Concat(sights.SelectMany(f => f.Work?.Problems ?? []))
            .ToList();
        StencilPlan? plan = null;
        if (sights.All(f => f.Measurement is not null))
        {
            try
            {
                plan = Planner.Plan(
                    document.ToJob(Today, sights.ToDictionary(f => f.Name, f => f.Measurement!)),
                    await ShopAsync(revision.ShopKey, cancel));
            }
            catch (InputProblemException fault)
            {
                problems.AddRange(fault.Problems);
            }
        }

        return new JobSight(revision, document, sights, plan, problems);
    }

    /// <summary>Every job kept, as often as it comes in a month; and the names of those whose films are not measured yet.</summary>
    public async Task<(IReadOnlyList<ShelfWork> Work, IReadOnlyList<string> LeftOut)> MonthAsync(CancellationToken cancel)
    {
        var work = new List<ShelfWork>();
        var leftOut = new List<string>();
        foreach (var revision in await jobs.ListAsync(cancel: cancel))
        {
            var document = JobReader.Read(revision.Text, revision.Name);
            var sights = await FilmsAsync(revision.JobId, document, cancel);
            if (sights.Any(f => f.Measurement is null))
                leftOut.Add(revision.Name);
            else
                work.Add(new ShelfWork(document.ToJob(Today, sights.ToDictionary(f => f.Name, f => f.Measurement!)), document.TimesPerMonth ?? 1));
        }

        return (work, leftOut);
    }

    private async Task<IReadOnlyList<FilmSight>> FilmsAsync(string jobId, JobDocument document, CancellationToken cancel)
    {
        var hashes = await jobs.FilmHashesAsync(jobId, cancel);
        var sights = new List<FilmSight>();
        foreach (var name in document.Films)
        {
            var hash = hashes.GetValueOrDefault(name);
            var measured = hash is null ? null : await films.FindMeasurementAsync(FilmBench.KeyOf(hash), cancel);
            sights.Add(new FilmSight(name, hash, measured, hash is null || measured is not null ? null : bench.Ask(hash)));
        }

        return sights;
    }
}
