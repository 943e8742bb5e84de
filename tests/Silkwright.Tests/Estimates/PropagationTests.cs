using CsCheck;
using Silkwright.Estimates;

namespace Silkwright.Tests.Estimates;

/// <summary>Held against the law of propagation of uncertainty, ISO/IEC Guide 98-3 (GUM), clause 5, which is exact for sums.</summary>
public class PropagationTests
{
    private static Uncertain Input(string name, double value, double half, Ground ground = Ground.Model) =>
        new(name, new Estimate(value, value - half, value + half, ground));

    [Fact]
    public void Halves_of_independent_summands_add_as_squares()
    {
        // 3-4-5: halves 3 and 4 make 5.
        var sum = Propagation.Through(x => x[0] + x[1], [Input("a", 10, 3), Input("b", 20, 4)]).Estimate;
        Assert.Equal(30, sum.Value, 1e-12);
        Assert.Equal(25, sum.Low, 1e-12);
        Assert.Equal(35, sum.High, 1e-12);
    }

    /// <summary>GUM clause 5.1.2: a linear combination weighs each input's spread by its coefficient.</summary>
    [Fact]
    public void A_linear_combination_is_exact() => Gen.Select(Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Double[0, 3], Gen.Double[0, 3])
        .Sample((a, b, u, v) =>
        {
            var sum = Propagation.Through(x => (a * x[0]) + (b * x[1]), [Input("x", 1, u), Input("y", -2, v)]).Estimate;
            var half = Math.Sqrt((a * a * u * u) + (b * b * v * v));
            return Math.Abs(sum.High - sum.Value - half) < 1e-9 && Math.Abs(sum.Value - sum.Low - half) < 1e-9;
        });

    /// <summary>GUM clause 5.1.6: relative spreads of a product add as squares: 3 % and 4 % make 5 %. Exact here too, moved one at a time.</summary>
    [Fact]
    public void Relative_halves_of_factors_add_as_squares()
    {
        var product = Propagation.Through(x => x[0] * x[1], [Input("a", 100, 3), Input("b", 50, 2)]).Estimate;
        Assert.Equal(5000 * 1.05, product.High, 1e-9);
        Assert.Equal(5000 * 0.95, product.Low, 1e-9);
    }

    [Fact]
    public void A_lopsided_input_makes_a_lopsided_answer()
    {
        var times = Propagation.Through(x => 2 * x[0], [new("a", new Estimate(10, 9, 14, Ground.Model))]).Estimate;
        Assert.Equal(18, times.Low, 1e-12);
        Assert.Equal(28, times.High, 1e-12);
    }

    [Fact]
    public void A_falling_function_turns_the_ends_around()
    {
        var inverse = Propagation.Through(x => 1 / x[0], [new("a", new Estimate(2, 1, 4, Ground.Model))]).Estimate;
        Assert.Equal(0.25, inverse.Low, 1e-12);
        Assert.Equal(1, inverse.High, 1e-12);
    }

    [Fact]
    public void Drivers_share_the_squared_width_and_come_largest_first()
    {
        var drivers = Propagation.Through(x => x[0] + x[1] + x[2], [Input("a", 1, 3), Input("b", 1, 4), Input("c", 1, 0)]).Drivers;
        Assert.Equal(["b", "a", "c"], drivers.Select(driver => driver.Name));
        Assert.Equal(64, drivers[0].EffectPercent, 1e-9);
        Assert.Equal(36, drivers[1].EffectPercent, 1e-9);
        Assert.Equal(0, drivers[2].EffectPercent, 1e-9);
    }

    [Fact]
    public void Without_any_spread_there_is_no_driver_and_no_width()
    {
        var exact = Propagation.Through(x => x[0], [new("a", Estimate.Exact(7, Ground.Datasheet))]);
        Assert.Equal(exact.Estimate.Low, exact.Estimate.High);
        Assert.All(exact.Drivers, driver => Assert.Equal(0, driver.EffectPercent));
    }

    [Fact]
    public void The_answer_stays_between_floor_and_ceiling()
    {
        var share = Propagation.Through(x => x[0], [Input("a", 0.9, 0.5)], floor: 0.6, ceiling: 1).Estimate;
        Assert.Equal(0.6, share.Low, 1e-12);
        Assert.Equal(1, share.High, 1e-12);
    }

    [Fact]
    public void An_answer_rests_on_common_practice_when_most_of_its_width_does()
    {
        Assert.Equal(Ground.CommonPractice, GroundOf(practice: 4, measured: 3));
        Assert.Equal(Ground.Model, GroundOf(practice: 3, measured: 4));

        static Ground GroundOf(double practice, double measured) => Propagation.Through(
            x => x[0] + x[1],
            [Input("a", 1, practice, Ground.CommonPractice), Input("b", 1, measured, Ground.MeasuredHere)]).Estimate.Ground;
    }

    /// <summary>
    /// GUM Supplement 1 puts distributions through the function by drawing; a seeded draw of 200 000 normal pairs gives the 90 %
    /// interval of a product of inputs known to about 10 % within a few percent of its width.
    /// </summary>
    [Fact]
    public void A_product_agrees_with_drawing_from_its_inputs()
    {
        const double Reach = 1.6448536;
        var draw = new Random(20_260_101);
        var products = Enumerable.Range(0, 200_000).Select(_ => (10 + Normal()) * (20 + (2 * Normal()))).Order().ToArray();
        var product = Propagation.Through(x => x[0] * x[1], [Input("a", 10, Reach), Input("b", 20, 2 * Reach)]).Estimate;
        Assert.Equal(products[10_000], product.Low, 0.05 * (product.High - product.Low));
        Assert.Equal(products[190_000], product.High, 0.05 * (product.High - product.Low));

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - draw.NextDouble())) * Math.Cos(2 * Math.PI * draw.NextDouble());
    }
}
