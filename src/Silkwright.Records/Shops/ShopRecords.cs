using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Shops;

/// <summary>The shops and every revision of what each has said about itself.</summary>
public sealed class ShopRecords(SilkwrightStore store)
{
    /// <summary>Saves a shop's document as its next revision. The first shop saved becomes the default.</summary>
    /// <param name="shopKey">Lower-case letters, digits and hyphens.</param>
    /// <param name="text">SHOP.json; read it with <see cref="Contracts.ShopReader"/> first, the store keeps any JSON object.</param>
    /// <param name="savedBy">The person.</param>
    /// <param name="why">What changed and for what reason.</param>
    /// <param name="basedOn">The revision the writer had before them; saving is refused when another has come since. None: not asked.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The revision written, or the current one when the text is the same.</returns>
    /// <exception cref="InputProblemException">The key, text or names are missing or wrong, or somebody saved in between.</exception>
    public async Task<ShopRevision> SaveAsync(
        string shopKey, string text, string savedBy, string why, int? basedOn = null, CancellationToken cancel = default)
    {
        var problems = new ProblemList();
        DocumentFaults.Key(problems, "shop key", shopKey);
        DocumentFaults.JsonObject(problems, "shop", text);
        DocumentFaults.Person(problems, "savedBy", savedBy);
        DocumentFaults.Why(problems, "why", why);
        problems.ThrowIfAny();
        return await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            var current = await Latest(context, shopKey).FirstOrDefaultAsync(cancel);
            DocumentFaults.ThrowIfChangedSince(basedOn, current?.Revision, $"shop {shopKey}", current?.SavedBy);
            if (current is not null && current.Text == text)
                return current;
            var now = store.Time.KeptNow();
            if (current is null)
                await AddShopAsync(context, shopKey, savedBy, now, cancel);
            var next = new ShopRevision
            {
                ShopKey = shopKey,
                Revision = (current?.Revision ?? 0) + 1,
                Text = text,
                SavedAt = now,
                SavedBy = savedBy.Trim(),
                Why = why.Trim(),
            };
            _ = context.Add(next);
            _ = await context.SaveChangesAsync(cancel);
            return next;
        });
    }

    /// <summary>The shop as it stands now; none when it is not known.</summary>
    /// <param name="shopKey">None: the default shop.</param>
    /// <param name="cancel">Stops the work.</param>
    public async Task<ShopRevision?> CurrentAsync(string? shopKey = null, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        var key = shopKey ?? await DefaultKeyAsync(context, cancel);
        return key is null ? null : await Latest(context, key).FirstOrDefaultAsync(cancel);
    }

    /// <summary>The key of a shop that there must be.</summary>
    /// <param name="shopKey">None: the default shop.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">There is none.</exception>
    internal async Task<string> RequireKeyAsync(string? shopKey, CancellationToken cancel) =>
        (await CurrentAsync(shopKey, cancel))?.ShopKey
        ?? throw new InputProblemException(NoShop(shopKey));

    /// <summary>That there is no such shop.</summary>
    /// <param name="shopKey">None: no shop at all.</param>
    public static Problem NoShop(string? shopKey) => shopKey is null
        ? new("There is no shop yet.", "shop", "Describe it first, at /shop of `silkwright serve`; a name is enough. `silkwright demo --data FOLDER` puts an invented one there.")
        : new("No shop has this key.", $"shop {shopKey}", "Check the key, or leave it out: then the one shop is taken.");

    /// <summary>Every revision, the newest first.</summary>
    public async Task<IReadOnlyList<ShopRevision>> HistoryAsync(string shopKey, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await Latest(context, shopKey).ToListAsync(cancel);
    }

    /// <summary>The keys of all shops, in order.</summary>
    public async Task<IReadOnlyList<string>> KeysAsync(CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await context.Shops.Select(s => s.Key).OrderBy(k => k).ToListAsync(cancel);
    }

    /// <summary>The key of the default shop; none while there is no shop.</summary>
    public async Task<string?> DefaultKeyAsync(CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await DefaultKeyAsync(context, cancel);
    }

    /// <summary>Makes a known shop the one that is meant where none is named.</summary>
    /// <exception cref="InputProblemException">The shop is not known, or nobody is named.</exception>
    public async Task MakeDefaultAsync(string shopKey, string chosenBy, CancellationToken cancel = default)
    {
        var problems = new ProblemList();
        DocumentFaults.Person(problems, "chosenBy", chosenBy);
        problems.ThrowIfAny();
        _ = await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            if (!await context.Shops.AnyAsync(s => s.Key == shopKey, cancel))
                throw new InputProblemException(new Problem("No shop has this key.", $"shop {shopKey}", "Save the shop first, or choose one of the list."));
            _ = context.Add(await NextChoiceAsync(context, shopKey, chosenBy, store.Time.KeptNow(), cancel));
            return await context.SaveChangesAsync(cancel);
        });
    }

    private static async Task AddShopAsync(RecordsContext context, string shopKey, string savedBy, DateTimeOffset now, CancellationToken cancel)
    {
        _ = context.Add(new ShopEntry { Key = shopKey, AddedAt = now });
        if (!await context.Shops.AnyAsync(cancel))
            _ = context.Add(await NextChoiceAsync(context, shopKey, savedBy, now, cancel));
    }

    private static async Task<DefaultShop> NextChoiceAsync(
        RecordsContext context, string shopKey, string chosenBy, DateTimeOffset now, CancellationToken cancel) => new()
        {
            Choice = 1 + (await context.Set<DefaultShop>().MaxAsync(d => (int?)d.Choice, cancel) ?? 0),
            ShopKey = shopKey,
            ChosenAt = now,
            ChosenBy = chosenBy.Trim(),
        };

    private static Task<string?> DefaultKeyAsync(RecordsContext context, CancellationToken cancel) =>
        context.Set<DefaultShop>().OrderByDescending(d => d.Choice).Select(d => (string?)d.ShopKey).FirstOrDefaultAsync(cancel);

    private static IQueryable<ShopRevision> Latest(RecordsContext context, string shopKey) =>
        context.ShopRevisions.AsNoTracking().Where(r => r.ShopKey == shopKey).OrderByDescending(r => r.Revision);
}
