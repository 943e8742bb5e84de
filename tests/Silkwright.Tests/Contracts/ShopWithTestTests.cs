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
        const string Before = """{ "name": "Harbour", /* a note */ "meshes": [{ "countPerCm": 120, "threadUm": 34, "dyed": true }], "lamps": [{ "id": "halide", "kind": "metalHalide" }], "emulsions": [{ "id": "Wren", "family": "diazo" }], "readings": { "exposure": [{ "emulsion": "Wren", "seconds": 50, "solidStep": 7 }] } }""";
        var shop = ShopReader.Read(ShopWithTest.Add(Before, Case, "Wren", "halide", Case.Mesh, "L-9", "120.5"), "shop");
        Assert.Equal("Harbour", shop.Name);
        Assert.Equal([50, 42, 60], shop.ExposureReadings.Select(reading => reading.Test.Amount));
        var kept = shop.ExposureReadings[1];
        Assert.Equal(("Wren", "halide", "120/34"), (kept.EmulsionId, kept.LampId, kept.Mesh!.Name));
        Assert.Equal((6, true, new DateOnly(2026, 5, 4), 120.5, "L-9"), (kept.Test.SolidStep, kept.Test.SqueegeeSideSoft, kept.Test.On, kept.Test.LampHours, kept.Test.Batch));
        Assert.True(shop.ExposureReadings[2].Test.Damp);
    }

    /// <summary>What the shop does not have is told as its document's reader tells it, and nothing comes back to be saved.</summary>
    [Fact]
    public void An_emulsion_or_a_lamp_that_the_shop_does_not_have_is_told()
    {
        var fault = Assert.Throws<InputProblemException>(() => ShopWithTest.Add("{}", Case, "Wren", "halide", null, "", ""));
        Assert.Contains(fault.Problems, problem => problem.What.Contains("Wren", StringComparison.Ordinal));
        Assert.Contains(fault.Problems, problem => problem.What.Contains("halide", StringComparison.Ordinal));
    }

    [Fact]
    public void Hours_that_are_no_number_are_told() =>
        Assert.Throws<InputProblemException>(() => ShopWithTest.Add("{}", Case, "Wren", "halide", null, "", "many"));
}
