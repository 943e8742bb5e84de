using Silkwright.Coating;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;
using Silkwright.Records.Screens;
using Silkwright.Records.Tests.Store;

namespace Silkwright.Records.Tests.Screens;

public sealed class FactsAsJson
{
    private static readonly ScreenFact[] OneOfEach =
    [
        new MeshTensioned(24.5, "M7"), new ScreenDegreased(), new ScreenCoated("Wren 47", "W-1", [new Stroke(StrokeSide.Print, Scrape: true)], "sharp"),
        new DryingBegun("rack"), new DryingEnded(), new ClimateRead(38, 30), new ScreenExposed(40, ExposureCount.Units, 7), new ScreenChecked(CheckResult.Good, 6, 7.5),
        new JobAssigned("walk", "Ember"), new ScreenPrinted(30), new ScreenEnded(EndReason.Broke, "torn"), new EntryWithdrawn(),
    ];

    [Fact]
    public void Every_kind_of_fact_is_written_under_its_own_name_and_read_back()
    {
        Assert.Equal(Enum.GetValues<ScreenEventKind>(), OneOfEach.Select(f => f.Kind));
        foreach (var fact in OneOfEach)
        {
            var text = FactJson.Write(fact);
            Assert.StartsWith($$"""{"kind":"{{FactText.Kind(fact.Kind)}}""", text, StringComparison.Ordinal);
            Assert.Equal(text, FactJson.Write(FactJson.Read(text)));
            Assert.Equal(fact.GetType(), FactJson.Read(text).GetType());
        }
    }

    [Fact]
    public void A_fact_is_written_as_the_documents_of_the_shop_write_it() => Assert.Equal(
        """{"kind":"coated","emulsionId":"Wren 47","lot":"W-1","strokes":"p","troughId":"sharp"}""", FactJson.Write(OneOfEach[2]));

    public static TheoryData<string> Impossible() =>
    [
        """{"kind":"tensioned","tensionNPerCm":0}""", """{"kind":"tensioned","tensionNPerCm":61}""", """{"kind":"coated","emulsionId":" "}""",
        """{"kind":"climate","humidityPercent":101}""", """{"kind":"climate","humidityPercent":40,"celsius":200}""",
        """{"kind":"exposed","amount":0,"counts":"seconds"}""", """{"kind":"exposed","amount":-3,"counts":"units"}""",
        """{"kind":"exposed","amount":9,"counts":"seconds","solidStep":22}""", """{"kind":"checked","result":"good","eomUm":-1}""",
        """{"kind":"jobAssigned","jobId":""}""", """{"kind":"printed","impressions":-5}""", """{"kind":"printed","impressions":0}""",
        """{"kind":"ended","reason":"broke"}""",
    ];

    [Theory]
    [MemberData(nameof(Impossible))]
    public async Task Values_that_no_screen_can_have_are_refused_and_not_written(string fact)
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var screens = temporary.Store.Screens;
        var screen = await screens.AddAsync(new ScreenDraft { Frame = "F-1", Mesh = new MeshFabric(61, 64), Person = "Ines" }, TemporaryStore.Cancel);
        var fault = await Assert.ThrowsAsync<InputProblemException>(
            () => screens.AppendAsync(screen.Id, new EntryDraft { Fact = FactJson.Read(fact), Person = "Ines" }, TemporaryStore.Cancel));
        Assert.NotEmpty(Assert.Single(fault.Problems).Remedy);
        Assert.Empty((await screens.ShowAsync(screen.Id, TemporaryStore.Cancel)).Events);
    }
}
