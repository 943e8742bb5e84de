using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Plans;
using Silkwright.Tests.Plans;

namespace Silkwright.Tests.Contracts;

/// <summary>Other programs rely on these fields; the list is the contract's, typed in by hand.</summary>
public class PlanDocumentTests
{
    private static readonly string[] ColourFields =
    [
        "name", "mesh", "emulsion", "coat", "drying", "exposure", "finish", "requiredFilmDensityUv", "detail", "ink", "life", "cost",
        "cautions", "because", "beaten",
    ];

    private static JsonObject Document(params StencilEmulsion[] emulsions) => PlanDocument.Of(Planner.Plan(
        new Job { Name = "job", Date = RandomShops.Today, Run = 500, Colours = [new JobColour { Name = "one", Ink = InkKind.WaterBased }] },
        new Shop { Emulsions = emulsions }));

    [Fact]
    public void A_plan_carries_every_field_of_the_contract()
    {
        var plan = Document();
        Assert.Equal("silkwright/plan/1", (string?)plan["schema"]);
        var colour = plan["colours"]![0]!.AsObject();
        Assert.All(ColourFields, field => Assert.True(colour.ContainsKey(field), field));
        Assert.All(new[] { "screens", "cost", "minutes" }, field => Assert.True(plan["job"]!.AsObject().ContainsKey(field), field));
        Assert.True(plan.ContainsKey("notes"));
        Assert.All(colour["beaten"]!.AsArray(), beaten => Assert.NotNull(beaten!["why"]));
    }

    [Fact]
    public void Every_quantity_carries_value_interval_cover_and_ground()
    {
        var coat = Document()["colours"]![0]!["coat"]!["eomUm"]!.AsObject();
        Assert.Equal(["value", "low", "high", "coverPercent", "ground"], coat.Select(field => field.Key));
        Assert.Contains((string)coat["ground"]!, new[] { "measuredHere", "measuredElsewhere", "datasheet", "model", "commonPractice" });
    }

    [Fact]
    public void Without_an_emulsion_the_field_is_null_and_the_way_out_is_named()
    {
        var colour = Document(new StencilEmulsion { Id = "Dunlin", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol] })["colours"]![0]!.AsObject();
        Assert.True(colour.ContainsKey("emulsion"));
        Assert.Null(colour["emulsion"]);
        Assert.NotNull(colour["nearestFix"]);
        Assert.False(colour.ContainsKey("coat"));
    }
}
