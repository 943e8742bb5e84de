using Microsoft.EntityFrameworkCore;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Catalogues;

/// <summary>The catalogue of emulsions that the shops kept here share, and every revision of it.</summary>
public sealed class CatalogueRecords(SilkwrightStore store)
{
    // Every page asks for it, and a revision never changes.
    private volatile KeptCatalogue? last;

    /// <summary>Keeps a catalogue as the next revision, in place of the one before.</summary>
    /// <param name="catalogue">As <see cref="CatalogueReader"/> has checked it.</param>
    /// <param name="savedBy">The person.</param>
    /// <param name="basedOn">The revision the writer had before them, 0 for none; refused when another has come since. None: not asked.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The revision written, or the current one when it says the same.</returns>
    /// <exception cref="InputProblemException">Nobody is named, or somebody kept another in between.</exception>
    public async Task<CatalogueRevision> SaveAsync(EmulsionCatalogue catalogue, string savedBy, int? basedOn = null, CancellationToken cancel = default)
    {
        var problems = new ProblemList();
        DocumentFaults.Person(problems, "by", savedBy);
        problems.ThrowIfAny();
        var text = CatalogueWriter.Write(catalogue);
        return await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            var current = await Latest(context).FirstOrDefaultAsync(cancel);
            DocumentFaults.ThrowIfChangedSince(basedOn, current?.Revision, "the kept catalogue", current?.SavedBy);
            if (current?.Text == text)
                return current;
            var next = new CatalogueRevision
            {
                Revision = (current?.Revision ?? 0) + 1,
                Text = text,
                SavedAt = store.Time.KeptNow(),
                SavedBy = savedBy.Trim(),
            };
            _ = context.Add(next);
            _ = await context.SaveChangesAsync(cancel);
            return next;
        });
    }

    /// <summary>The catalogue as it stands now; none while nobody has kept one.</summary>
    public async Task<KeptCatalogue?> CurrentAsync(CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        if (await context.CatalogueRevisions.MaxAsync(r => (int?)r.Revision, cancel) is not { } current)
            return null;
        if (last is { } read && read.Revision.Revision == current)
            return read;
        var revision = await context.CatalogueRevisions.AsNoTracking().FirstAsync(r => r.Revision == current, cancel);
        return last = new KeptCatalogue(revision, CatalogueReader.Read(revision.Text, "the kept catalogue"));
    }

    /// <summary>The same where there must be one.</summary>
    /// <exception cref="InputProblemException">Nobody has kept one.</exception>
    public async Task<KeptCatalogue> RequireAsync(CancellationToken cancel = default) =>
        await CurrentAsync(cancel) ?? throw new InputProblemException(new Problem(
            "No catalogue is kept here yet.", store.Folder.Path, "Keep one: `silkwright catalogue keep FILE.csv --data FOLDER --by NAME`, or at /shop/catalogue."));

    /// <summary>Every revision, the newest first.</summary>
    public async Task<IReadOnlyList<CatalogueRevision>> HistoryAsync(CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await Latest(context).ToListAsync(cancel);
    }

    private static IQueryable<CatalogueRevision> Latest(RecordsContext context) =>
        context.CatalogueRevisions.AsNoTracking().OrderByDescending(r => r.Revision);
}
