using Silkwright.Coating;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Plans;

namespace Silkwright.Tests.Contracts;

public class ShopReaderTests
{
    [Fact]
    public void A_shop_may_say_nothing_at_all() => Assert.Empty(ShopReader.Read("{}", "shop.json").Emulsions);

    [Fact]
    public void Strokes_are_read_in_order_with_scrapes_and_drying_between()
    {
        var problems = new ProblemList();
        var strokes = StrokeText.TryRead("P P S | P s", "here", problems)!;
        Assert.Equal(
            [
                new Stroke(StrokeSide.Print),
                new Stroke(StrokeSide.Print),
                new Stroke(StrokeSide.Squeegee),
                new Stroke(StrokeSide.Print, AfterDrying: true),
                new Stroke(StrokeSide.Squeegee, Scrape: true),
            ],
            strokes);
        Assert.Equal("P P S | P s", StrokeText.Write(strokes));
    }

    /// <summary>One size at two prices says nothing of what the shop pays: it is told where it stands, before anything is measured.</summary>
    [Fact]
    public void A_container_size_told_twice_is_a_fault_of_the_emulsion()
    {
        var fault = Assert.Throws<InputProblemException>(() => ShopReader.Read(
            """
            {"emulsions": [{"id": "A", "family": "diazo", "price": {"grams": 900, "cost": 20}},
             {"id": "B", "family": "diazo", "price": {"grams": 4500, "cost": 90}, "otherSizes": [{"grams": 900, "cost": 25}, {"grams": 4500, "cost": 80}]}]}
            """,
            "shop.json"));
        var problem = Assert.Single(fault.Problems);
        Assert.Equal(("B is sold by 4\u202f500 g at two prices.", "shop.json: emulsions[1].otherSizes"), (problem.What, problem.Where));
    }

    [Fact]
    public void A_frame_takes_the_colour_of_the_shops_own_mesh_of_that_name()
    {
        var shop = ShopReader.Read(
            """
            {"meshes": [{"countPerCm": 120, "threadUm": 34, "dyed": true}],
             "frames": [{"insideWidthMm": 500, "insideHeightMm": 700, "mesh": {"countPerCm": 120, "threadUm": 34}}]}
            """,
            "shop.json");
        Assert.True(Assert.Single(shop.Frames).Mesh!.Dyed);
    }

    [Fact]
    public void Units_of_a_machine_stay_units()
    {
        var shop = ShopReader.Read(
            """{"lamps": [{"kind": "ledArray", "counts": "units"}], "emulsions": [{"id": "Wren", "family": "diazo"}], "readings": {"exposure": [{"emulsion": "Wren", "units": 120, "solidStep": 6}]}}""",
            "shop.json");
        Assert.Equal(ExposureCount.Units, shop.Lamps[0].Counts);
        Assert.Equal(120, shop.ExposureReadings[0].Test.Amount);
    }

    [Fact]
    public void Counted_stencils_are_read_broken_and_sound()
    {
        var shop = ShopReader.Read(
            """
            {"emulsions": [{"id": "Wren", "family": "diazo"}], "remakeMinutes": 90, "spareMinutes": 12, "readings": {"runs": [
              {"emulsion": "Wren", "ink": "waterBased", "impressions": 4200, "broke": true, "finish": "hardened", "eomUm": 12, "on": "2026-10-02"},
              {"emulsion": "wren", "ink": "plastisol", "impressions": 1, "broke": false}]}}
            """,
            "shop.json");
        Assert.Equal((90, 12), (shop.RemakeMinutes, shop.SpareMinutes));
        Assert.Equal(
            [
                new RunReading { EmulsionId = "Wren", Ink = InkKind.WaterBased, Impressions = 4200, Broke = true, Finish = StencilFinish.Hardened, EomUm = 12, On = new(2026, 10, 2) },
                new RunReading { EmulsionId = "wren", Ink = InkKind.Plastisol, Impressions = 1, Broke = false },
            ],
            shop.RunReadings);
    }

    [Theory]
    [InlineData("""{"readings": {"runs": [{"emulsion": "a", "ink": "plastisol", "broke": true}]}}""", "readings.runs[0].impressions")]
    [InlineData("""{"readings": {"runs": [{"emulsion": "a", "ink": "plastisol", "impressions": 0, "broke": true}]}}""", "readings.runs[0].impressions")]
    [InlineData("""{"readings": {"runs": [{"emulsion": "a", "ink": "plastisol", "impressions": 90}]}}""", "readings.runs[0].broke")]
    [InlineData("""{"readings": {"runs": [{"emulsion": "a", "ink": "paint", "impressions": 90, "broke": false}]}}""", "readings.runs[0].ink")]
    [InlineData("""{"readings": {"runs": [{"emulsion": "a", "ink": "plastisol", "impressions": 90, "broke": false}]}}""", "readings.runs[0].emulsion")]
    [InlineData("""{"remakeMinutes": -1}""", "remakeMinutes")]
    [InlineData("""{"meshes": [{"countPerCm": 305, "threadUm": 40}]}""", "meshes[0].countPerCm")]
    [InlineData("""{"meshes": [{"countPerCm": 120, "threadUm": 90}]}""", "meshes[0]")]
    [InlineData("""{"emulsions": [{"id": "a", "family": "gelatin"}]}""", "emulsions[0].family")]
    [InlineData("""{"emulsions": [{"id": "a", "family": "diazo"}, {"id": "A", "family": "diazo"}]}""", "emulsions")]
    [InlineData("""{"film": {"dMaxUv": 0.1, "dMinUv": 3}}""", "film")]
    [InlineData("""{"room": {"light": "candle"}}""", "room.light")]
    [InlineData("""{"readings": {"coat": [{"emulsion": "a", "mesh": {"countPerCm": 43, "threadUm": 80}, "strokes": "P+S", "eomUm": 5}]}}""", "readings.coat[0].strokes")]
    [InlineData("""{"readings": {"exposure": [{"emulsion": "a"}]}}""", "readings.exposure[0].seconds")]
    public void A_fault_is_told_with_its_place(string json, string place)
    {
        var fault = Assert.Throws<InputProblemException>(() => ShopReader.Read(json, "shop.json"));
        Assert.Contains($"shop.json: {place}", fault.Problems.Select(problem => problem.Where));
    }
}
