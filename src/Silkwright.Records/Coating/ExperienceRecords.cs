using Microsoft.EntityFrameworkCore;
using Silkwright.Coating.Learning;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Records.Shops;
using Silkwright.Records.Store;

namespace Silkwright.Records.Coating;

/// <summary>What other shops' readings taught, taken in by each shop; append-only.</summary>
public sealed class ExperienceRecords(SilkwrightStore store)
{
    /// <summary>Takes in a file; the same again is kept once.</summary>
    /// <param name="json">silkwright/coat-experience/1.</param>
    /// <param name="source">The file's name.</param>
    /// <param name="recordedBy">The person.</param>
    /// <param name="shopKey">None: the default shop.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The entry, and whether it is new.</returns>
    /// <exception cref="InputProblemException">It can't be read, nobody is named, there is no such shop, or some of it is kept already.</exception>
    public async Task<(KeptExperience Kept, bool IsNew)> KeepAsync(string json, string source, string recordedBy, string? shopKey = null, CancellationToken cancel = default)
    {
        var problems = new ProblemList();
        DocumentFaults.Person(problems, "by", recordedBy);
        problems.ThrowIfAny();
        var experience = CoatExperienceReader.Read(json, source);
        var text = CoatExperienceDocument.Of(experience).ToJsonString();
        await RefuseOwnAsync(experience, source, shopKey, cancel);
        return await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            var shop = await store.Shops.RequireKeyAsync(shopKey, cancel);
            var held = await HeldAsync(context, shop, cancel);
            if (held.FirstOrDefault(one => one.Experience.Parts.SequenceEqual(experience.Parts)) is { } same)
                return (same.Kept, false);
            _ = CoatExperienceQuestion.Together([.. held.Select(one => ($"entry {one.Kept.Number} ({one.Kept.Source})", one.Experience)), (source, experience)]);
            var kept = new KeptExperience
            {
                ShopKey = shop,
                Number = await NextAsync(context, shop, cancel),
                Text = text,
                Source = source,
                RecordedAt = store.Time.KeptNow(),
                RecordedBy = recordedBy.Trim(),
            };
            _ = context.Add(kept);
            _ = await context.SaveChangesAsync(cancel);
            return (kept, true);
        });
    }

    /// <summary>A file that the shop's own readings, as they are now, were added up into.</summary>
    private async Task RefuseOwnAsync(CoatExperience experience, string source, string? shopKey, CancellationToken cancel)
    {
        if (await store.Shops.CurrentAsync(shopKey, cancel) is not { } revision)
            return;
        var reads = LearntShopCoats.ReadsOf(await KeptShop.OfAsync(store, revision, cancel));
        if (experience.Parts.Intersect(CoatMarks.Of(reads)).Any())
            throw new InputProblemException(new Problem("This holds what this shop's own readings taught.", source, "They would count twice: ask for a file that the others alone were added up into."));
    }

    /// <summary>Withdraws an entry; it stays on record and counts no more.</summary>
    /// <exception cref="InputProblemException">There is no such entry, it is withdrawn already, or nobody and no reason is named.</exception>
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
            var known = await context.CoatExperience.AsNoTracking().Where(e => e.ShopKey == shop && (e.Number == number || e.Withdraws == number)).ToListAsync(cancel);
            if (known is not [{ Withdraws: null }])
                throw new InputProblemException(new Problem(known.Count == 0 ? "There is no such experience." : "This experience is withdrawn already.", $"entry {number}", "Look at what is kept."));
            _ = context.Add(new KeptExperience
            {
                ShopKey = shop,
                Number = await NextAsync(context, shop, cancel),
                Source = "withdrawal",
                RecordedAt = store.Time.KeptNow(),
                RecordedBy = recordedBy.Trim(),
                Withdraws = number,
                Why = why.Trim(),
            });
            return await context.SaveChangesAsync(cancel);
        });
    }

    /// <summary>What holds, each with its experience.</summary>
    public async Task<IReadOnlyList<HeldExperience>> HeldAsync(string? shopKey = null, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await HeldAsync(context, await store.Shops.RequireKeyAsync(shopKey, cancel), cancel);
    }

    /// <summary>Every entry of a shop in the order of writing.</summary>
    public async Task<IReadOnlyList<KeptExperience>> HistoryAsync(string? shopKey = null, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await EntriesAsync(context, await store.Shops.RequireKeyAsync(shopKey, cancel), cancel);
    }

    /// <summary>All that holds added up; none where nothing was taken in.</summary>
    internal async Task<CoatExperience?> TogetherAsync(string shop, CancellationToken cancel)
    {
        await using var context = store.CreateDbContext();
        var held = await HeldAsync(context, shop, cancel);
        return held.Count == 0 ? null : CoatExperience.Sum([.. held.Select(one => one.Experience)]);
    }

    private static async Task<IReadOnlyList<HeldExperience>> HeldAsync(RecordsContext context, string shop, CancellationToken cancel)
    {
        var history = await EntriesAsync(context, shop, cancel);
        var withdrawn = history.Select(entry => entry.Withdraws).OfType<int>().ToHashSet();
        return [.. history.Where(entry => entry.Text is not null && !withdrawn.Contains(entry.Number)).Select(entry => new HeldExperience(entry, CoatExperienceReader.Read(entry.Text!, entry.Source)))];
    }

    private static async Task<IReadOnlyList<KeptExperience>> EntriesAsync(RecordsContext context, string shop, CancellationToken cancel) =>
        await context.CoatExperience.AsNoTracking().Where(e => e.ShopKey == shop).OrderBy(e => e.Number).ToListAsync(cancel);

    private static async Task<int> NextAsync(RecordsContext context, string shop, CancellationToken cancel) =>
        1 + (await context.CoatExperience.Where(e => e.ShopKey == shop).MaxAsync(e => (int?)e.Number, cancel) ?? 0);
}
