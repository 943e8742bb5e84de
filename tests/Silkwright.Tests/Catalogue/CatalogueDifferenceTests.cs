using Silkwright.Catalogue;
using Silkwright.Contracts;

namespace Silkwright.Tests.Catalogue;

public sealed class CatalogueDifferenceTests
{
    private const string Before =
        """
        Wagtail,family,diazo,datasheet,sheet,2026-01-05
        Wagtail,solidsPercent,33,datasheet,sheet,2026-01-05
        Wagtail,price at 900g,20,datasheet,list,2026-01-05
        Dipper,family,photopolymer,datasheet,sheet,
        """;

    [Fact]
    public void New_gone_and_changed_emulsions_are_told_apart()
    {
        var difference = Between(
            Before,
            """
            WAGTAIL,family,diazo,datasheet,sheet,2026-01-05
            WAGTAIL,solidsPercent,33,datasheet,sheet,2026-01-05
            WAGTAIL,solidsPercent,29,measuredHere,oven,2026-11-02
            WAGTAIL,price at 4500g,80,datasheet,list,2026-01-05
            Ouzel,family,dualCure,datasheet,sheet,
            """);
        Assert.Equal(["Ouzel"], difference.New);
        Assert.Equal(["Dipper"], difference.Gone);
        // Solids: another source is used now. The 900 g container is told no more, the 4500 g one is told now.
        Assert.Equal(
            [("solidsPercent", null, 33.0, 29.0), ("price", 900, 20.0, (double?)null), ("price", (double?)4500, (double?)null, 80.0)],
            difference.Changed.Select(change => (change.Line.Property.Name, change.Line.At, change.Before?.Used.Value.Number, change.After?.Used.Value.Number)));
        Assert.All(difference.Changed, change => Assert.Equal(("WAGTAIL", false), (change.Emulsion, change.OnlyOthers)));
    }

    [Fact]
    public void A_source_more_beside_the_one_used_is_told_as_that_alone()
    {
        var change = Assert.Single(Between(Before, $"{Before}\nWagtail,solidsPercent,40,commonPractice,word of mouth,\n").Changed);
        Assert.True(change.OnlyOthers);
        Assert.True(change.Line.Conflicts);
    }

    [Fact]
    public void The_same_values_in_another_order_are_no_difference()
    {
        var other = string.Join('\n', Before.ReplaceLineEndings("\n").Split('\n').Reverse());
        Assert.True(Between(Before, other).IsNone);
    }

    [Fact]
    public void Against_nothing_kept_everything_is_new()
    {
        var difference = CatalogueDifference.Between(null, Read(Before));
        Assert.Equal(["Wagtail", "Dipper"], difference.New);
        Assert.False(difference.IsNone);
    }

    private static CatalogueDifference Between(string before, string after) => CatalogueDifference.Between(Read(before), Read(after));

    private static EmulsionCatalogue Read(string lines) =>
        CatalogueReader.Read($"emulsion,property,value,ground,source,date\n{lines}\n", "c.csv");
}
