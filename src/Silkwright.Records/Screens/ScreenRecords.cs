using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Screens;

/// <summary>The append-only record of every screen.</summary>
public sealed class ScreenRecords(SilkwrightStore store)
{
    /// <summary>Puts a screen on record.</summary>
    /// <returns>The screen, or the one that the same key made before.</returns>
    /// <exception cref="InputProblemException">Something is missing or impossible, or the id is taken.</exception>
    public async Task<Screen> AddAsync(ScreenDraft draft, CancellationToken cancel = default)
    {
        DocumentFaults.ThrowIfNoIdempotencyKey(draft.IdempotencyKey);
        ScreenDraftFaults.ThrowIfAny(draft);
        var key = draft.IdempotencyKey ?? NewKey();
        return await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            if (await context.Screens.AsNoTracking().FirstOrDefaultAsync(s => s.IdempotencyKey == key, cancel) is { } before)
                return Same(before, draft) ? before : throw KeyUsed($"screen {before.Id}");
            var id = draft.Id ?? await NextIdAsync(context, cancel);
            if (draft.Id is not null && await context.Screens.AnyAsync(s => s.Id == id, cancel))
                throw new InputProblemException(new Problem("Another screen has this id.", $"screen {id}", "Choose another id, or leave it out."));
            var screen = new Screen
            {
                Id = id,
                ShopKey = await ShopKeyAsync(context, draft.ShopKey, cancel),
                Frame = draft.Frame.Trim(),
                MeshCountPerCm = draft.Mesh.CountPerCm,
                MeshThreadUm = draft.Mesh.ThreadUm,
                MeshDyed = draft.Mesh.Dyed,
                MeshLot = draft.MeshLot,
                TensionNPerCm = draft.Mesh.TensionNPerCm,
                AddedAt = store.Time.KeptNow(),
                AddedBy = draft.Person.Trim(),
                IdempotencyKey = key,
            };
            _ = context.Add(screen);
            _ = await context.SaveChangesAsync(cancel);
            return screen;
        });
    }

    /// <summary>Writes an entry: a happening, or the correction of one.</summary>
    /// <returns>The entry, or the one that the same key made before.</returns>
    /// <exception cref="InputProblemException">The screen is not known, a value is impossible, or the order is.</exception>
    public async Task<ScreenEvent> AppendAsync(string screenId, EntryDraft draft, CancellationToken cancel = default)
    {
        DocumentFaults.ThrowIfNoIdempotencyKey(draft.IdempotencyKey);
        var key = draft.IdempotencyKey ?? NewKey();
        return await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            if (await context.ScreenEvents.AsNoTracking().FirstOrDefaultAsync(e => e.IdempotencyKey == key, cancel) is { } before)
                return Same(before, screenId, draft) ? before : throw KeyUsed($"screen {before.ScreenId}, entry {before.Sequence}");
            if (!await context.Screens.AnyAsync(s => s.Id == screenId, cancel))
                throw Unknown(screenId);
            var events = await EventsAsync(context, screenId, cancel);
            EntryDraftFaults.ThrowIfAny(screenId, draft, events);

            var now = store.Time.KeptNow();
            var entry = new ScreenEvent
            {
                ScreenId = screenId,
                // The number is the guard: two writers who saw the same record cannot both take it.
                Sequence = events.Count + 1,
                Kind = draft.Fact.Kind,
                Fact = draft.Fact,
                At = Instant.Kept(draft.At ?? events.FirstOrDefault(e => e.Sequence == draft.Corrects)?.At ?? now),
                RecordedAt = now,
                Person = draft.Person.Trim(),
                Note = draft.Note,
                IdempotencyKey = key,
                Corrects = draft.Corrects,
                Why = draft.Why?.Trim(),
            };
            var faults = ScreenOrder.Faults([.. events, entry], now);
            if (faults.Count > 0)
                throw new InputProblemException(faults);
            _ = context.Add(entry);
            _ = await context.SaveChangesAsync(cancel);
            return entry;
        });
    }

    /// <summary>A screen's record and its story; none when it is not known.</summary>
    public async Task<ScreenRecord?> FindAsync(string screenId, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        var screen = await context.Screens.AsNoTracking().FirstOrDefaultAsync(s => s.Id == screenId, cancel);
        return screen is null ? null : Record(screen, await EventsAsync(context, screenId, cancel));
    }

    /// <summary>A screen's record and its story.</summary>
    /// <exception cref="InputProblemException">No screen has this id.</exception>
    public async Task<ScreenRecord> ShowAsync(string screenId, CancellationToken cancel = default) =>
        await FindAsync(screenId, cancel) ?? throw Unknown(screenId);

    /// <summary>Every screen with its story, by id.</summary>
    /// <param name="shopKey">Only this shop's; none: all shops'.</param>
    /// <param name="cancel">Stops the work.</param>
    public async Task<IReadOnlyList<ScreenRecord>> ListAsync(string? shopKey = null, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        var screens = await context.Screens.AsNoTracking()
            .Where(s => shopKey == null || s.ShopKey == shopKey).OrderBy(s => s.Id).ToListAsync(cancel);
        var events = (await context.ScreenEvents.AsNoTracking().OrderBy(e => e.Sequence).ToListAsync(cancel)).ToLookup(e => e.ScreenId);
        return [.. screens.Select(s => Record(s, [.. events[s.Id]]))];
    }

    private ScreenRecord Record(Screen screen, IReadOnlyList<ScreenEvent> events) =>
        new(screen, events, ScreenStory.Of(events, store.Time.KeptNow()));

    private static Task<List<ScreenEvent>> EventsAsync(RecordsContext context, string screenId, CancellationToken cancel) =>
        context.ScreenEvents.AsNoTracking().Where(e => e.ScreenId == screenId).OrderBy(e => e.Sequence).ToListAsync(cancel);

    private static async Task<string> NextIdAsync(RecordsContext context, CancellationToken cancel)
    {
        for (var number = await context.Screens.CountAsync(cancel) + 1; ; number++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"S-{number:0000}");
            if (!await context.Screens.AnyAsync(s => s.Id == id, cancel))
                return id;
        }
    }

    private static async Task<string> ShopKeyAsync(RecordsContext context, string? shopKey, CancellationToken cancel)
    {
        var key = shopKey
            ?? await context.Set<Shops.DefaultShop>().OrderByDescending(d => d.Choice).Select(d => d.ShopKey).FirstOrDefaultAsync(cancel);
        return key is not null && await context.Shops.AnyAsync(s => s.Key == key, cancel)
            ? key
            : throw new InputProblemException(Shops.ShopRecords.NoShop(key));
    }

    private static string NewKey() => Guid.NewGuid().ToString("N");

    private static bool Same(Screen before, ScreenDraft draft) =>
        (draft.Id is null || before.Id == draft.Id)
        && before.Frame == draft.Frame.Trim()
        && before.AddedBy == draft.Person.Trim()
        && before.Mesh == draft.Mesh with { FabricThicknessUm = null };

    private static bool Same(ScreenEvent before, string screenId, EntryDraft draft) =>
        before.ScreenId == screenId
        && FactJson.Write(before.Fact) == FactJson.Write(draft.Fact)
        && before.Person == draft.Person.Trim()
        && before.Corrects == draft.Corrects
        && (draft.At is not { } at || before.At == Instant.Kept(at));

    private static InputProblemException KeyUsed(string where) =>
        new(new Problem("This idempotency key was used for something else.", where, "Make a new key for each entry."));

    private static InputProblemException Unknown(string screenId) =>
        new(new Problem("No screen has this id.", $"screen {screenId}", "Look at the list of screens, or add it with screen add."));
}
