using Silkwright.Coating.Learning;
using Silkwright.Contracts;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

public sealed class LearntShopCoatsTests
{
    [Fact]
    public void Who_coats_is_one_by_any_spelling()
    {
        var (once, twice) = (Learnt("Ada", "Ada"), Learnt("Ada", "ada "));
        Assert.Equal(["Ada", "Ben"], twice.People);
        Assert.Equal(once.Effects, twice.Effects);
        Assert.Equal(["Ada", "Ida", "Ben"], Learnt("Ada", "Ida").People);
    }

    [Fact]
    public void A_person_and_a_trough_are_asked_for_by_any_spelling()
    {
        var (plain, other) = (Aim("Ada", "round"), Aim("ADA", "Round"));
        Assert.Equal((plain.Best.MeanUm, "Ada"), (other.Best.MeanUm, other.Best.Coat.Operator));

        static CoatAim Aim(string person, string trough) => CoatAimQuestion.Of(
            new GivenTexts(new Dictionary<string, string> { ["wanted"] = "14um", ["emulsion"] = "Wren", ["count"] = "61/cm", ["thread"] = "64um", ["operator"] = person, ["trough"] = trough }), Shop("Ada", "Ada")).Aim;
    }

    private static LearntShopCoats Learnt(string one, string other) => LearntShopCoats.Of(Shop(one, other));

    private static Shop Shop(string one, string other)
    {
        var readings = Enumerable.Range(0, 12).Select(i => FormattableString.Invariant(
            $$"""{"emulsion": "Wren", "mesh": {"countPerCm": 61, "threadUm": 64}, "strokes": "P S", "trough": "round", "operator": "{{(i % 3) switch { 0 => one, 1 => other, _ => "Ben" }}}", "eomUm": {{12 + (i % 3) + (0.2 * i)}} }"""));
        return ShopReader.Read(
            $$"""{"meshes": [{"countPerCm": 61, "threadUm": 64}], "troughs": [{"id": "round", "edgeRadiusMm": 1.5}, {"id": "sharp", "edgeRadiusMm": 0.5}], "emulsions": [{"id": "Wren", "family": "dualCure"}], "readings": {"coat": [{{string.Join(", ", readings)}}] } }""",
            "shop.json");
    }
}
