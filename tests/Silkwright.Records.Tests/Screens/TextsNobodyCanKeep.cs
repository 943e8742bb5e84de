using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Records.Screens;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Screens;

/// <summary>
/// PostgreSQL takes no null character in a text (its manual, "Character Types"), and neither database takes half of a surrogate pair:
/// both are told to the person, never a failure of the store.
/// </summary>
public sealed class TextsNobodyCanKeep
{
    public static TheoryData<Database, string> Texts()
    {
        var data = new TheoryData<Database, string>();
        foreach (var database in Enum.GetValues<Database>())
        {
            data.Add(database, "nul");
            data.Add(database, "half");
            data.Add(database, "long");
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public async Task Are_refused_in_a_name_a_note_and_a_key(Database database, string kind)
    {
        // Half a character would not survive as a test's own name.
        var text = kind switch { "nul" => "Ines\0", "half" => "Ines\ud83d", _ => new string('x', 10_000) };
        await using var temporary = await TemporaryStore.OpenWithShopAsync(database);
        var screens = temporary.Store.Screens;
        var draft = new ScreenDraft { Frame = "Q-07", Mesh = new MeshFabric(61, 64, Dyed: false), Person = "Ines" };
        var screen = await screens.AddAsync(draft, Cancel);
        var entry = new EntryDraft { Fact = new DryingBegun("box"), Person = "Ines" };

        Func<Task>[] writings =
        [
            () => screens.AddAsync(draft with { Frame = text }, Cancel),
            () => screens.AddAsync(draft with { IdempotencyKey = text }, Cancel),
            () => screens.AppendAsync(screen.Id, entry with { Person = text }, Cancel),
            () => screens.AppendAsync(screen.Id, entry with { Note = text }, Cancel),
            () => screens.AppendAsync(screen.Id, entry with { IdempotencyKey = text }, Cancel),
        ];
        foreach (var writing in writings)
            _ = await Assert.ThrowsAsync<InputProblemException>(writing);
        Assert.Empty((await screens.ShowAsync(screen.Id, Cancel)).Events);
        _ = Assert.Single(await screens.ListAsync(cancel: Cancel));
    }

    [Fact]
    public async Task A_line_end_is_no_part_of_an_id()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var draft = new ScreenDraft { Id = "S-7\n", Frame = "Q-07", Mesh = new MeshFabric(61, 64, Dyed: false), Person = "Ines" };
        _ = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.Screens.AddAsync(draft, Cancel));
        _ = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.Shops.SaveAsync("quay\n", "{}", "Ines", "slip", cancel: Cancel));
    }
}
