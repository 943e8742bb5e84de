using System.Text.Json.Nodes;
using Silkwright.Coating;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;
using Silkwright.Records.Screens;
using Silkwright.Records.Store;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Screens;

public sealed class RecordOfAScreen
{
    private static readonly ScreenFact[] WholeLife =
    [
        new MeshTensioned(24, "M7"),
        new ScreenDegreased(),
        new ScreenCoated("Wren 47", "W-1", [new Stroke(StrokeSide.Print), new Stroke(StrokeSide.Squeegee), new Stroke(StrokeSide.Print, AfterDrying: true)], "sharp"),
        new DryingBegun("cabinet"),
        new ClimateRead(38, 30, "cabinet"),
        new DryingEnded(),
        new ScreenExposed(40.5, ExposureCount.Units, 7, "metal halide"),
        new ScreenChecked(CheckResult.TouchedUp, 7, 6.5),
        new JobAssigned("lantern-walk", "Ember"),
        new ScreenPrinted(300),
        new ScreenPrinted(250, "another-job"),
        new ScreenEnded(EndReason.Broke, "pinholes along the blade's end"),
    ];

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task A_screen_goes_through_its_whole_life_and_the_record_tells_it_in_order(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var (store, time) = (temporary.Store, temporary.Time);
        var begun = time.Now;
        var screen = await AddAsync(store);
        var written = new List<ScreenEvent>();
        foreach (var fact in WholeLife)
        {
            time.Pass(TimeSpan.FromMinutes(15));
            written.Add(await AppendAsync(store, screen.Id, fact));
        }

        var record = await store.Screens.ShowAsync(screen.Id, Cancel);

        Assert.Equal("S-0001", record.Screen.Id);
        Assert.Equal(new MeshFabric(120, 34, Dyed: true) { TensionNPerCm = 23 }, record.Screen.Mesh);
        Assert.Equal(WholeLife.Select(FactJson.Write), record.Events.Select(e => FactJson.Write(e.Fact)));
        Assert.Equal(written.Select(e => (e.Sequence, e.At, e.RecordedAt, e.Person)), record.Events.Select(e => (e.Sequence, e.At, e.RecordedAt, e.Person)));
        Assert.Equal(begun + TimeSpan.FromMinutes(15), record.Events[0].At);
        Assert.Equal(ScreenStage.Broken, record.Story.Stage);
        Assert.Equal(550, record.Story.Impressions);
        Assert.Equal(30, record.Story.DryMinutes);
        Assert.Equal(24, record.Story.TensionNPerCm);
        Assert.Equal("pinholes along the blade's end", record.Story.End?.How);
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task The_same_key_twice_is_one_entry_and_gives_it_again(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var screens = temporary.Store.Screens;
        var screen = await AddAsync(temporary.Store);
        var draft = new EntryDraft { Fact = new ScreenDegreased(), Person = "Bram", IdempotencyKey = "tablet-1-0001" };
        var first = await screens.AppendAsync(screen.Id, draft, Cancel);
        temporary.Time.Pass(TimeSpan.FromHours(2));
        var again = await screens.AppendAsync(screen.Id, draft, Cancel);
        Assert.Equal(first, again);
        _ = Assert.Single((await screens.ShowAsync(screen.Id, Cancel)).Events);
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task The_same_key_from_many_requests_at_once_is_one_entry(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var screens = temporary.Store.Screens;
        var screen = await AddAsync(temporary.Store);
        var draft = new EntryDraft { Fact = new ScreenDegreased(), Person = "Bram", IdempotencyKey = "tablet-1-0001" };
        var entries = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Task.Run(() => screens.AppendAsync(screen.Id, draft, Cancel), Cancel)));
        Assert.All(entries, e => Assert.Equal(1, e.Sequence));
        _ = Assert.Single((await screens.ShowAsync(screen.Id, Cancel)).Events);
    }

    [Fact]
    public async Task A_key_used_for_something_else_is_refused()
    {
        await using var temporary = await OpenWithShopAsync();
        var screen = await AddAsync(temporary.Store);
        var draft = new EntryDraft { Fact = new ScreenDegreased(), Person = "Bram", IdempotencyKey = "k" };
        _ = await temporary.Store.Screens.AppendAsync(screen.Id, draft, Cancel);
        await RefusedAsync(() => temporary.Store.Screens.AppendAsync(screen.Id, draft with { Fact = new ScreenCoated("Wren 47") }, Cancel), "key");
        await RefusedAsync(() => temporary.Store.Screens.AppendAsync(screen.Id, draft with { Person = "Ruth" }, Cancel), "key");
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task Two_tablets_that_write_at_once_lose_nothing(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var screens = temporary.Store.Screens;
        var screen = await AddAsync(temporary.Store);
        _ = await AppendAsync(temporary.Store, screen.Id, new ScreenCoated("Wren 47"));
        _ = await AppendAsync(temporary.Store, screen.Id, new ScreenExposed(9, ExposureCount.Seconds));
        async Task TabletAsync(string person)
        {
            for (var n = 0; n < 15; n++)
                _ = await screens.AppendAsync(screen.Id, new EntryDraft { Fact = new ScreenPrinted(10), Person = person }, Cancel);
        }

        await Task.WhenAll(Task.Run(() => TabletAsync("Bram"), Cancel), Task.Run(() => TabletAsync("Ruth"), Cancel));

        var record = await screens.ShowAsync(screen.Id, Cancel);
        Assert.Equal(300, record.Story.Impressions);
        Assert.Equal(Enumerable.Range(1, 32), record.Events.Select(e => e.Sequence));
    }

    [Fact]
    public async Task Two_tablets_cannot_both_end_a_screen()
    {
        await using var temporary = await OpenWithShopAsync();
        var screen = await AddAsync(temporary.Store);
        var ends = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(async () =>
        {
            try
            {
                return (await AppendAsync(temporary.Store, screen.Id, new ScreenEnded(EndReason.Reclaimed))).Sequence;
            }
            catch (InputProblemException)
            {
                return 0;
            }
        })));
        Assert.Equal(1, Assert.Single(ends, e => e != 0));
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task A_correction_is_a_new_entry_and_the_old_one_stays_readable(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var (store, time) = (temporary.Store, temporary.Time);
        var screen = await AddAsync(store);
        _ = await AppendAsync(store, screen.Id, new ScreenCoated("Wren 47"));
        var exposed = await AppendAsync(store, screen.Id, new ScreenExposed(12, ExposureCount.Seconds));
        time.Pass(TimeSpan.FromDays(1));
        var correction = await store.Screens.AppendAsync(
            screen.Id,
            new EntryDraft { Fact = new ScreenExposed(14, ExposureCount.Seconds), Person = "Ruth", Corrects = exposed.Sequence, Why = "Dial misread" },
            Cancel);

        var record = await store.Screens.ShowAsync(screen.Id, Cancel);
        Assert.Equal(14, record.Story.Exposure?.Amount);
        Assert.Equal(12, ((ScreenExposed)record.Events[1].Fact).Amount);
        Assert.Equal((exposed.At, "Ruth", "Dial misread"), (correction.At, correction.Person, correction.Why));
        Assert.Equal(exposed.At + TimeSpan.FromDays(1), correction.RecordedAt);
    }

    [Fact]
    public async Task A_correction_needs_a_reason_an_entry_and_the_same_kind()
    {
        await using var temporary = await OpenWithShopAsync();
        var screen = await AddAsync(temporary.Store);
        _ = await AppendAsync(temporary.Store, screen.Id, new ScreenDegreased());
        var draft = new EntryDraft { Fact = new ScreenCoated("Wren 47"), Person = "Ruth", Corrects = 7 };
        var fault = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.Screens.AppendAsync(screen.Id, draft, Cancel));
        Assert.Equal(2, fault.Problems.Count);
        await RefusedAsync(() => temporary.Store.Screens.AppendAsync(screen.Id, draft with { Corrects = 1, Why = "Slip" }, Cancel), "same kind");
        await RefusedAsync(() => temporary.Store.Screens.AppendAsync(screen.Id, new EntryDraft { Fact = new EntryWithdrawn(), Person = "Ruth" }, Cancel), "taken back");
    }

    [Fact]
    public async Task What_later_entries_stand_on_cannot_be_withdrawn()
    {
        await using var temporary = await OpenWithShopAsync();
        var screen = await AddAsync(temporary.Store);
        _ = await AppendAsync(temporary.Store, screen.Id, new ScreenCoated("Wren 47"));
        _ = await AppendAsync(temporary.Store, screen.Id, new ScreenExposed(9, ExposureCount.Seconds));
        await RefusedAsync(
            () => temporary.Store.Screens.AppendAsync(screen.Id, new EntryDraft { Fact = new EntryWithdrawn(), Person = "Ruth", Corrects = 1, Why = "Slip" }, Cancel),
            "never coated");
    }

    [Fact]
    public async Task Ids_are_short_and_in_order_and_a_taken_one_is_refused()
    {
        await using var temporary = await OpenWithShopAsync();
        var screens = temporary.Store.Screens;
        var draft = new ScreenDraft { Frame = "F-1", Mesh = new MeshFabric(61, 64), Person = "Ines" };
        _ = await screens.AddAsync(draft with { Id = "S-0002" }, Cancel);
        Assert.Equal("S-0003", (await screens.AddAsync(draft, Cancel)).Id);
        Assert.Equal("S-0004", (await screens.AddAsync(draft, Cancel)).Id);
        await RefusedAsync(() => screens.AddAsync(draft with { Id = "S-0002" }, Cancel), "this id");
        var fault = await Assert.ThrowsAsync<InputProblemException>(
            () => screens.AddAsync(new ScreenDraft { Id = "no id!", Frame = " ", Mesh = new MeshFabric(200, 64), Person = "" }, Cancel));
        Assert.Equal(4, fault.Problems.Count);
    }

    [Fact]
    public async Task The_same_key_gives_the_same_screen()
    {
        await using var temporary = await OpenWithShopAsync();
        var screens = temporary.Store.Screens;
        var draft = new ScreenDraft { Frame = "F-1", Mesh = new MeshFabric(61, 64), Person = "Ines", IdempotencyKey = "k" };
        Assert.Equal(await screens.AddAsync(draft, Cancel), await screens.AddAsync(draft, Cancel));
        _ = Assert.Single(await screens.ListAsync(cancel: Cancel));
        await RefusedAsync(() => screens.AddAsync(draft with { Frame = "F-2" }, Cancel), "key");
    }

    [Fact]
    public async Task An_unknown_screen_is_a_problem_with_a_remedy()
    {
        await using var temporary = await OpenWithShopAsync();
        Assert.Null(await temporary.Store.Screens.FindAsync("S-9999", Cancel));
        await RefusedAsync(() => temporary.Store.Screens.ShowAsync("S-9999", Cancel), "No screen");
        await RefusedAsync(() => AppendAsync(temporary.Store, "S-9999", new ScreenDegreased()), "No screen");
    }

    [Fact]
    public async Task The_document_holds_what_the_contract_names()
    {
        await using var temporary = await OpenWithShopAsync();
        var screen = await AddAsync(temporary.Store);
        foreach (var fact in WholeLife)
            _ = await AppendAsync(temporary.Store, screen.Id, fact);
        var document = ScreenDocument.Of(await temporary.Store.Screens.ShowAsync(screen.Id, Cancel));
        Assert.Equal("silkwright/screen/1", (string?)document["schema"]);
        Assert.Equal("M7", (string?)document["mesh"]?["lot"]);
        Assert.Equal("broken", (string?)document["stage"]);
        Assert.Equal("P S | P", (string?)document["coat"]?["strokes"]);
        Assert.Equal("units", (string?)document["exposure"]?["counts"]);
        Assert.Equal(7, (int?)document["exposure"]?["solidStep"]);
        Assert.Equal("broke", (string?)document["end"]?["reason"]);
        Assert.Equal(12, document["entries"]!.AsArray().Count);
        Assert.All(document["entries"]!.AsArray(), e => Assert.Equal("Tom", (string?)e!["person"]));
        Assert.DoesNotContain("null", document.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_document_holds_nothing_that_its_schema_does_not_describe()
    {
        await using var temporary = await OpenWithShopAsync();
        var screen = await AddAsync(temporary.Store);
        foreach (var fact in WholeLife)
            _ = await AppendAsync(temporary.Store, screen.Id, fact);
        _ = await temporary.Store.Screens.AppendAsync(
            screen.Id,
            new EntryDraft { Fact = new ScreenPrinted(260), Person = "Tom", Corrects = 10, Why = "Counter read again", Note = "By the press" }, Cancel);
        var document = ScreenDocument.Of(await temporary.Store.Screens.ShowAsync(screen.Id, Cancel));
        var schema = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "schema", "screen.json"), Cancel))!;
        var properties = schema["properties"]!.AsObject();
        var facts = schema["$defs"]!["fact"]!["properties"]!.AsObject();
        var entry = properties["entries"]!["items"]!["allOf"]![1]!["properties"]!.AsObject();

        Assert.All(document, field => Assert.True(properties.ContainsKey(field.Key), field.Key));
        Assert.All(schema["required"]!.AsArray(), name => Assert.True(document.ContainsKey((string)name!), (string)name!));
        Assert.All(
            document["entries"]!.AsArray().SelectMany(e => e!.AsObject()),
            field => Assert.True(entry.ContainsKey(field.Key) || facts.ContainsKey(field.Key), field.Key));
        Assert.Equal([false, true], new[] { 9, 12 }.Select(i => (bool)document["entries"]![i]!["holds"]!));
        Assert.Contains((string)document["stage"]!, properties["stage"]!["enum"]!.AsArray().Select(s => (string)s!));
        Assert.Equal(Enum.GetValues<ScreenStage>().Length, properties["stage"]!["enum"]!.AsArray().Count);
        Assert.Equal(Enum.GetValues<ScreenEventKind>().Select(FactText.Kind), schema["$defs"]!["kind"]!["enum"]!.AsArray().Select(k => (string)k!));
    }

    private static Task<Screen> AddAsync(SilkwrightStore store) => store.Screens.AddAsync(
        new ScreenDraft { Frame = "F-14", Mesh = new MeshFabric(120, 34, Dyed: true) { TensionNPerCm = 23 }, MeshLot = "M7", Person = "Ines" }, Cancel);

    private static Task<ScreenEvent> AppendAsync(SilkwrightStore store, string id, ScreenFact fact) =>
        store.Screens.AppendAsync(id, new EntryDraft { Fact = fact, Person = "Tom" }, Cancel);

    private static async Task RefusedAsync(Func<Task> write, string what)
    {
        var problem = Assert.Single((await Assert.ThrowsAsync<InputProblemException>(write)).Problems);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
    }
}
