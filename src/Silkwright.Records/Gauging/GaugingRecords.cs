using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Gauging;
using Silkwright.Records.Store;

namespace Silkwright.Records.Gauging;

/// <summary>The gauge readings of each shop, append-only.</summary>
public sealed class GaugingRecords(SilkwrightStore store)
{
    /// <summary>Keeps what was taken of a gauge's file. The same file again is kept once; of one that has grown, rows that name screen, place and day are kept once too.</summary>
    /// <param name="file">The file as read.</param>
    /// <param name="source">Its name.</param>
    /// <param name="recordedBy">The person.</param>
    /// <param name="shopKey">None: the default shop.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The entries written, or those that the same readings made before.</returns>
    /// <exception cref="InputProblemException">Nobody is named, there is no such shop, or nothing was taken.</exception>
    public async Task<KeptBatch> KeepFileAsync(GaugeFile file, string source, string recordedBy, string? shopKey = null, CancellationToken cancel = default)
    {
        var key = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', file.Entries.Select(GaugingTables.Written)))));
        var flags = file.Flagged.ToLookup(flag => flag.Line, flag => flag.Problem.What);
        var history = await HistoryAsync(shopKey, cancel);
        var withdrawn = history.Select(entry => entry.Withdraws).OfType<int>().ToHashSet();
        var known = history.Where(entry => entry.Reading is { Screen: not null, Place: not null, On: not null } && !withdrawn.Contains(entry.Number))
            .GroupBy(entry => entry.Reading! with { Line = 0 }).ToDictionary(same => same.Key, same => new Queue<KeptReading>(same));
        var (before, fresh) = (new List<KeptReading>(), new List<GaugeEntry>());
        foreach (var entry in file.Entries)
        {
            if (known.TryGetValue(entry with { Line = 0 }, out var same) && same.TryDequeue(out var kept))
                before.Add(kept);
            else
                fresh.Add(entry);
        }

        if (fresh.Count == 0 && before.Count > 0)
            return new KeptBatch(before, New: 0);
        var batch = await KeepAsync(fresh, source, recordedBy, key, shopKey, entry => flags[entry.Line].Any() ? string.Join(' ', flags[entry.Line]) : null, cancel);
        return batch with { Readings = [.. before, .. batch.Readings] };
    }

    /// <summary>Keeps readings that were typed in.</summary>
    /// <param name="entries">What was read.</param>
    /// <param name="source">Where they come from, in a word.</param>
    /// <param name="recordedBy">The person.</param>
    /// <param name="batchKey">The same key again is the same readings.</param>
    /// <param name="shopKey">None: the default shop.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">Nobody is named, there is no such shop, or there are no readings.</exception>
    public Task<KeptBatch> KeepAsync(
        IReadOnlyList<GaugeEntry> entries, string source, string recordedBy, string batchKey, string? shopKey = null, CancellationToken cancel = default) =>
        KeepAsync(entries, source, recordedBy, batchKey, shopKey, _ => null, cancel);

    /// <summary>Takes a reading back; it stays on record and counts no more.</summary>
    /// <exception cref="InputProblemException">There is no such reading, it is withdrawn already, or nobody and no reason is named.</exception>
    public async Task WithdrawAsync(int number, string recordedBy, string why, string? shopKey = null, CancellationToken cancel = default)
    {
        var problems = new ProblemList();
        DocumentFaults.Person(problems, "by", recordedBy);
        DocumentFaults.Why(problems, "why", why);
        problems.ThrowIfAny();
        _ = await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            var shop = await store.Shops.RequireKeyAsync(shopKey, cancel);
            var known = await context.GaugeReadings.AsNoTracking().Where(r => r.ShopKey == shop && (r.Number == number || r.Withdraws == number)).ToListAsync(cancel);
            if (known is not [{ Withdraws: null }])
                throw new InputProblemException(new Problem(known.Count == 0 ? "There is no such reading." : "This reading is withdrawn already.", $"reading {number}", "Look at the readings that are kept."));
            _ = context.Add(new KeptReading
            {
                ShopKey = shop,
                Number = await NextAsync(context, shop, cancel),
                Source = "withdrawal",
                RecordedAt = store.Time.KeptNow(),
                RecordedBy = recordedBy.Trim(),
                BatchKey = Guid.NewGuid().ToString("N"),
                Withdraws = number,
                Why = why.Trim(),
            });
            return await context.SaveChangesAsync(cancel);
        });
    }

    /// <summary>Every entry of a shop in the order of writing, withdrawn ones and withdrawals included.</summary>
    public async Task<IReadOnlyList<KeptReading>> HistoryAsync(string? shopKey = null, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        var shop = await store.Shops.RequireKeyAsync(shopKey, cancel);
        return await context.GaugeReadings.AsNoTracking().Where(r => r.ShopKey == shop).OrderBy(r => r.Number).ToListAsync(cancel);
    }

    /// <summary>The readings that hold.</summary>
    public async Task<IReadOnlyList<GaugeEntry>> EntriesAsync(string? shopKey = null, CancellationToken cancel = default)
    {
        var history = await HistoryAsync(shopKey, cancel);
        var withdrawn = history.Select(entry => entry.Withdraws).OfType<int>().ToHashSet();
        return [.. history.Where(entry => !withdrawn.Contains(entry.Number)).Select(entry => entry.Reading).OfType<GaugeEntry>()];
    }

    private async Task<KeptBatch> KeepAsync(
        IReadOnlyList<GaugeEntry> entries, string source, string recordedBy, string batchKey, string? shopKey, Func<GaugeEntry, string?> flag, CancellationToken cancel)
    {
        DocumentFaults.ThrowIfNoIdempotencyKey(batchKey);
        var problems = new ProblemList();
        DocumentFaults.Person(problems, "by", recordedBy);
        if (entries.Count == 0)
            problems.Add("There are no readings to keep.", source, "Read a place first, or put right what was given back.");
        problems.ThrowIfAny();
        return await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            var shop = await store.Shops.RequireKeyAsync(shopKey, cancel);
            var before = await context.GaugeReadings.AsNoTracking().Where(r => r.ShopKey == shop && r.BatchKey == batchKey).OrderBy(r => r.Number).ToListAsync(cancel);
            if (before.Count > 0)
                return new KeptBatch(before, New: 0);
            var first = await NextAsync(context, shop, cancel);
            var now = store.Time.KeptNow();
            KeptReading[] kept = [.. entries.Select((entry, i) => new KeptReading
            {
                ShopKey = shop,
                Number = first + i,
                Reading = entry,
                Source = source,
                Flag = flag(entry),
                RecordedAt = now,
                RecordedBy = recordedBy.Trim(),
                BatchKey = batchKey,
            })];
            context.AddRange(kept);
            _ = await context.SaveChangesAsync(cancel);
            return new KeptBatch(kept, kept.Length);
        });
    }

    private static async Task<int> NextAsync(RecordsContext context, string shop, CancellationToken cancel) =>
        1 + (await context.GaugeReadings.Where(r => r.ShopKey == shop).MaxAsync(r => (int?)r.Number, cancel) ?? 0);
}
