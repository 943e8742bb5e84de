using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Tests.Exposure;

namespace Silkwright.Tests.Contracts;

public class ShopWithTestTests
{
    private static readonly ExposureCase Case = ExposureCases.Usual() with
    {
        Tests = [new StepTest(42, 6, true) { On = new DateOnly(2026, 5, 4) }, new StepTest(60, 7, false, Damp: true) { On = new DateOnly(2026, 5, 4) }],
    };

    [Fact]
    public void A_kept_test_reads_back_and_leaves_the_rest_alone()
    {
        const string Before = """{ "name": "Harbour", /* a note */ "lamps": [{ "id": "halide", "kind": "metalHalide" }], "emulsions": [{ "id": "Wren", "family": "diazo" }], "readings": { "exposure": [{ "emulsion": "Wren", "seconds": 50, "solidStep": 7 }] } }""";
        var shop = ShopReader.Read(ShopWithTest.Add(Before, Case, "Wren", "halide", "L-9", "120.5"), "shop");
        Assert.Equal("Harbour", shop.Name);
        Assert.Equal([50, 42, 60], shop.ExposureReadings.Select(reading => reading.Test.Amount));
        var kept = shop.ExposureReadings[1];
        Assert.Equal(("Wren", "halide", "120/34"), (kept.EmulsionId, kept.LampId, kept.Mesh!.Name));
        Assert.Equal((6, true, new DateOnly(2026, 5, 4), 120.5, "L-9"), (kept.Test.SolidStep, kept.Test.SqueegeeSideSoft, kept.Test.On, kept.Test.LampHours, kept.Test.Batch));
        Assert.True(shop.ExposureReadings[2].Test.Damp);
    }

    [Fact]
    public void A_shop_that_said_nothing_yet_may_keep_one() =>
        Assert.Equal(2, ShopReader.Read(ShopWithTest.Add("{}", Case, "Wren", "halide", "", ""), "shop").ExposureReadings.Count);

    [Fact]
    public void Hours_that_are_no_number_are_told() =>
        Assert.Throws<InputProblemException>(() => ShopWithTest.Add("{}", Case, "Wren", "halide", "", "many"));
}
