using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>A reading that names what the shop does not have is told: it would teach nothing and nobody would notice.</summary>
public class ShopReferencesTests
{
    [Theory]
    [InlineData("coat", "\"emulsion\": \"Wren 48\"", "emulsion", "Is 'Wren 47' meant?")]
    [InlineData("coat", "\"emulsion\": \"Albatross\"", "emulsion", "Known are Wren 47, Plover 33")]
    [InlineData("coat", "\"emulsion\": \"Wren 47\", \"trough\": \"rouund\"", "trough", "Is 'round' meant?")]
    [InlineData("exposure", "\"emulsion\": \"wern 47\", \"lamp\": \"array\", \"seconds\": 9", "emulsion", "Known are")]
    [InlineData("exposure", "\"emulsion\": \"Wren 47\", \"lamp\": \"aray\", \"seconds\": 9", "lamp", "Is 'array' meant?")]
    [InlineData("exposure", "\"emulsion\": \"Wren 47\", \"seconds\": 9", "lamp", "array, halide")]
    [InlineData("exposure", "\"emulsion\": \"Wren 47\", \"lamp\": \"array\", \"units\": 9", "units", "seconds")]
    [InlineData("exposure", "\"emulsion\": \"Wren 47\", \"lamp\": \"halide\", \"seconds\": 9", "seconds", "units")]
    [InlineData("exposure", "\"emulsion\": \"Wren 47\", \"lamp\": \"array\", \"seconds\": 9, \"mesh\": {\"countPerCm\": 90, \"threadUm\": 48}", "mesh", "61/64 undyed")]
    public void With_the_nearest_name_as_remedy(string list, string reading, string field, string remedy)
    {
        var fault = Assert.Throws<InputProblemException>(() => ShopReader.Read(Shop(list, reading), "shop.json"));
        var problem = Assert.Single(fault.Problems);
        Assert.Equal($"shop.json: readings.{list}[0].{field}", problem.Where);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("coat", "\"emulsion\": \"WREN 47\", \"trough\": \"Round\"")]
    [InlineData("exposure", "\"emulsion\": \"plover 33\", \"lamp\": \"Array\", \"seconds\": 9, \"mesh\": {\"countPerCm\": 61, \"threadUm\": 64}")]
    [InlineData("exposure", "\"emulsion\": \"plover 33\", \"lamp\": \"halide\", \"units\": 90")]
    public void Small_and_large_letters_do_not_matter(string list, string reading)
    {
        var shop = ShopReader.Read(Shop(list, reading), "shop.json");
        Assert.Equal(1, shop.CoatReadings.Count + shop.ExposureReadings.Count);
    }

    [Fact]
    public void A_coat_on_a_mesh_of_other_days_still_teaches_about_its_emulsion()
    {
        var shop = ShopReader.Read(
            """{"emulsions": [{"id": "a", "family": "diazo"}], "readings": {"coat": [{"emulsion": "a", "mesh": {"countPerCm": 34, "threadUm": 100}, "strokes": "P S", "eomUm": 20}]}}""",
            "shop.json");
        Assert.Single(shop.CoatReadings);
    }

    private static string Shop(string list, string reading)
    {
        var rest = list == "coat" ? ", \"mesh\": {\"countPerCm\": 61, \"threadUm\": 64}, \"strokes\": \"P S\", \"eomUm\": 12" : "";
        return $$$"""
            {"meshes": [{"countPerCm": 61, "threadUm": 64}],
             "troughs": [{"id": "sharp", "edgeRadiusMm": 0.5}, {"id": "round", "edgeRadiusMm": 1.5}],
             "emulsions": [{"id": "Wren 47", "family": "photopolymer"}, {"id": "Plover 33", "family": "dualCure"}],
             "lamps": [{"id": "array", "kind": "ledArray"}, {"id": "halide", "kind": "metalHalide", "counts": "units"}],
             "readings": {"{{{list}}}": [{ {{{reading}}}{{{rest}}} }]}}
            """;
    }
}
