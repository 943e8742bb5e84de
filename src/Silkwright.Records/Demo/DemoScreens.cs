using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json;
using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Records.Screens;
using Silkwright.Records.Store;

namespace Silkwright.Records.Demo;

/// <summary>The history of the demonstration's screens, told back from the day it is loaded.</summary>
internal static class DemoScreens
{
    /// <returns>How many screens the file holds.</returns>
    public static async Task<int> LoadAsync(SilkwrightStore store, string file, CancellationToken cancel)
    {
        var history = await ReadAsync(file, cancel);
        foreach (var screen in history.Screens)
            await LoadAsync(store, screen, cancel);

        return history.Screens.Count;
    }

    private static async Task LoadAsync(SilkwrightStore store, DemoScreen screen, CancellationToken cancel)
    {
        if (await store.Screens.FindAsync(screen.Id, cancel) is { } there && there.Events.Count >= screen.Entries.Count)
            return;
        // A load that was cut short goes on where it stopped: the same keys give the same screen and entries.
        var begun = await store.Screens.AddAsync(
            new ScreenDraft
            {
                Id = screen.Id,
                ShopKey = DemoShop.ShopKey,
                Frame = screen.Frame,
                Mesh = screen.Mesh,
                MeshLot = screen.MeshLot,
                Person = screen.Person,
                IdempotencyKey = $"demo-{screen.Id}",
            },
            cancel);
        var day = new DateTimeOffset(begun.AddedAt.UtcDateTime.Date, TimeSpan.Zero);
        foreach (var (entry, index) in screen.Entries.Select((entry, index) => (entry, index)))
        {
            _ = await store.Screens.AppendAsync(
                screen.Id,
                new EntryDraft
                {
                    Fact = entry.Fact,
                    // A correction keeps the time of what it corrects.
                    At = entry.Corrects is null ? day.AddDays(-entry.DaysAgo) + entry.Time.ToTimeSpan() : null,
                    Person = entry.Person,
                    Note = entry.Note,
                    IdempotencyKey = string.Create(CultureInfo.InvariantCulture, $"demo-{screen.Id}-{index + 1}"),
                    Corrects = entry.Corrects,
                    Why = entry.Why,
                },
                cancel);
        }
    }

    private static async Task<DemoHistory> ReadAsync(string file, CancellationToken cancel)
    {
        try
        {
            return JsonSerializer.Deserialize<DemoHistory>(await File.ReadAllTextAsync(file, cancel), FactJson.Options)
                ?? throw new JsonException("The file says null.");
        }
        catch (Exception fault) when (fault is JsonException or IOException)
        {
            throw new InputProblemException(new Problem($"The screens' history cannot be read: {fault.Message}", file, "Take the file as it comes with the program."));
        }
    }

    [SuppressMessage("Performance", "CA1812", Justification = "The JSON reader makes it.")]
    private sealed record DemoHistory(IReadOnlyList<DemoScreen> Screens);

    [SuppressMessage("Performance", "CA1812", Justification = "The JSON reader makes it.")]
    private sealed record DemoScreen(
        string Id, string Frame, MeshFabric Mesh, string? MeshLot, string Person, IReadOnlyList<DemoEntry> Entries);

    [SuppressMessage("Performance", "CA1812", Justification = "The JSON reader makes it.")]
    private sealed record DemoEntry(
        int DaysAgo, TimeOnly Time, string Person, ScreenFact Fact, string? Note = null, int? Corrects = null, string? Why = null);
}
