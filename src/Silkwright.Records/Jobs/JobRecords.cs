using Microsoft.EntityFrameworkCore;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Films;
using Silkwright.Records.Store;

namespace Silkwright.Records.Jobs;

/// <summary>The jobs, every revision of each, and the films they mean.</summary>
public sealed class JobRecords(SilkwrightStore store)
{
    /// <summary>Saves a job's document as its next revision.</summary>
    /// <param name="jobId">Lower-case letters, digits and hyphens.</param>
    /// <param name="text">JOB.json; read it with <see cref="Contracts.JobReader"/> first. Name and due date are taken from it.</param>
    /// <param name="savedBy">The person.</param>
    /// <param name="why">What changed and for what reason.</param>
    /// <param name="shopKey">None: the shop it had, else the default one.</param>
    /// <param name="state">None: the state it had, else open.</param>
    /// <param name="basedOn">The revision the writer had before them; saving is refused when another has come since. None: not asked.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The revision written, or the current one when nothing differs.</returns>
    /// <exception cref="InputProblemException">The document or the names are wrong, or somebody saved in between.</exception>
    public async Task<JobRevision> SaveAsync(
        string jobId,
        string text,
        string savedBy,
        string why,
        string? shopKey = null,
        JobState? state = null,
        int? basedOn = null,
        CancellationToken cancel = default)
    {
        var problems = new ProblemList();
        DocumentFaults.Key(problems, "job id", jobId);
        DocumentFaults.JsonObject(problems, "job", text);
        DocumentFaults.Person(problems, "savedBy", savedBy);
        DocumentFaults.Why(problems, "why", why);
        problems.ThrowIfAny();
        var (name, dueDate) = JobHeading.Read(text);
        return await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            var current = await Revisions(context, jobId).FirstOrDefaultAsync(cancel);
            DocumentFaults.ThrowIfChangedSince(basedOn, current?.Revision, $"job {jobId}", current?.SavedBy);
            var next = new JobRevision
            {
                JobId = jobId,
                Revision = (current?.Revision ?? 0) + 1,
                ShopKey = await KnownShopAsync(context, shopKey ?? current?.ShopKey, cancel),
                Name = name,
                Text = text,
                DueDate = dueDate,
                State = state ?? current?.State ?? JobState.Open,
                SavedAt = store.Time.KeptNow(),
                SavedBy = savedBy.Trim(),
                Why = why.Trim(),
            };
            if (current is not null && current.Text == text && current.State == next.State && current.ShopKey == next.ShopKey)
                return current;
            _ = context.Add(next);
            _ = await context.SaveChangesAsync(cancel);
            return next;
        });
    }

    /// <summary>Opens or closes a job: a revision with the same document.</summary>
    /// <exception cref="InputProblemException">The job is not known, or nobody is named.</exception>
    public async Task<JobRevision> SetStateAsync(string jobId, JobState state, string by, string why, CancellationToken cancel = default)
    {
        var current = await CurrentAsync(jobId, cancel)
            ?? throw new InputProblemException(new Problem("No job has this id.", $"job {jobId}", "Choose one of the list, or save the job first."));
        return await SaveAsync(jobId, current.Text, by, why, state: state, basedOn: current.Revision, cancel: cancel);
    }

    /// <summary>The job as it stands now; none when it is not known.</summary>
    public async Task<JobRevision?> CurrentAsync(string jobId, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await Revisions(context, jobId).FirstOrDefaultAsync(cancel);
    }

    /// <summary>Every revision, the newest first.</summary>
    public async Task<IReadOnlyList<JobRevision>> HistoryAsync(string jobId, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await Revisions(context, jobId).ToListAsync(cancel);
    }

    /// <summary>The jobs as they stand now, the earliest due first, those without a date last.</summary>
    /// <param name="state">Only these; none: all.</param>
    /// <param name="shopKey">Only this shop's; none: all shops'.</param>
    /// <param name="cancel">Stops the work.</param>
    public async Task<IReadOnlyList<JobRevision>> ListAsync(
        JobState? state = null, string? shopKey = null, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await context.JobRevisions.AsNoTracking()
            .Where(r => !context.JobRevisions.Any(later => later.JobId == r.JobId && later.Revision > r.Revision))
            .Where(r => state == null || r.State == state)
            .Where(r => shopKey == null || r.ShopKey == shopKey)
            .OrderBy(r => r.DueDate == null).ThenBy(r => r.DueDate).ThenBy(r => r.JobId)
            .ToListAsync(cancel);
    }

    /// <summary>The jobs as they stand now with the day each counts for, in the order of <see cref="ListAsync"/>.</summary>
    /// <param name="shopKey">Only this shop's; none: the default shop's.</param>
    /// <param name="cancel">Stops the work.</param>
    public async Task<IReadOnlyList<DatedJob>> DatedAsync(string? shopKey = null, CancellationToken cancel = default)
    {
        if ((shopKey ?? await store.Shops.DefaultKeyAsync(cancel)) is not { } key)
            return [];
        await using var context = store.CreateDbContext();
        var first = await context.JobRevisions.AsNoTracking().Where(r => r.Revision == 1).Select(r => new { r.JobId, r.SavedAt }).ToDictionaryAsync(r => r.JobId, r => r.SavedAt, cancel);
        return [.. (await ListAsync(shopKey: key, cancel: cancel)).Select(Dated)];

        DatedJob Dated(JobRevision revision)
        {
            var document = JobReader.Read(revision.Text, revision.Name);
            var kept = TimeZoneInfo.ConvertTime(first[revision.JobId], store.Time.LocalTimeZone);
            return new DatedJob(revision, document, document.Date ?? document.DueDate ?? DateOnly.FromDateTime(kept.DateTime));
        }
    }

    /// <summary>Says which stored film a job means by a name in its document.</summary>
    /// <exception cref="InputProblemException">The film is not stored, or nobody is named.</exception>
    public Task AttachFilmAsync(string jobId, string nameInJob, string filmHash, string by, CancellationToken cancel = default) =>
        AttachFilmAsync(jobId, nameInJob, new FilmKey(filmHash), by, cancel);

    /// <summary>The same of a page of a PDF.</summary>
    /// <exception cref="InputProblemException">The film is not stored, or nobody is named.</exception>
    public async Task AttachFilmAsync(string jobId, string nameInJob, FilmKey film, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(film);
        var problems = new ProblemList();
        DocumentFaults.Person(problems, "by", by);
        problems.ThrowIfAny();
        _ = await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            if (!await context.Films.AnyAsync(f => f.Hash == film.Hash, cancel))
                throw new InputProblemException(new Problem("No film with this hash is stored.", $"job {jobId}, {nameInJob}", "Store the film first."));
            var current = await context.JobFilms.AsNoTracking()
                .Where(f => f.JobId == jobId && f.NameInJob == nameInJob)
                .OrderByDescending(f => f.Version)
                .FirstOrDefaultAsync(cancel);
            if (current?.Key == film)
                return current;
            var next = new JobFilm
            {
                JobId = jobId,
                NameInJob = nameInJob,
                Version = (current?.Version ?? 0) + 1,
                FilmHash = film.Hash,
                Page = film.Page,
                Dpi = film.Dpi,
                AttachedAt = store.Time.KeptNow(),
                AttachedBy = by.Trim(),
            };
            _ = context.Add(next);
            _ = await context.SaveChangesAsync(cancel);
            return next;
        });
    }

    /// <summary>The stored film behind each name in the job's document; names never attached are absent.</summary>
    public async Task<IReadOnlyDictionary<string, string>> FilmHashesAsync(string jobId, CancellationToken cancel = default) =>
        (await FilmsAsync(jobId, cancel)).ToDictionary(f => f.Key, f => f.Value.Hash);

    /// <summary>The same with the page and the resolution at which the job looks at a PDF.</summary>
    public async Task<IReadOnlyDictionary<string, FilmKey>> FilmsAsync(string jobId, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        var films = await context.JobFilms.AsNoTracking().Where(f => f.JobId == jobId).OrderBy(f => f.Version).ToListAsync(cancel);
        return films.GroupBy(f => f.NameInJob).ToDictionary(g => g.Key, g => g.Last().Key);
    }

    private static async Task<string> KnownShopAsync(RecordsContext context, string? shopKey, CancellationToken cancel)
    {
        var key = shopKey
            ?? await context.Set<Shops.DefaultShop>().OrderByDescending(d => d.Choice).Select(d => d.ShopKey).FirstOrDefaultAsync(cancel);
        return key is not null && await context.Shops.AnyAsync(s => s.Key == key, cancel) ? key : throw new InputProblemException(Shops.ShopRecords.NoShop(key));
    }

    private static IQueryable<JobRevision> Revisions(RecordsContext context, string jobId) =>
        context.JobRevisions.AsNoTracking().Where(r => r.JobId == jobId).OrderByDescending(r => r.Revision);
}
