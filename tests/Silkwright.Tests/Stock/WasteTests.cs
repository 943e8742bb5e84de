using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Stock;

namespace Silkwright.Tests.Stock;

public sealed class WasteTests
{
    private const double DaysPerMonth = 30.4;

    /// <summary>
    /// A shop that uses less than a container a month throws a large part of a two-part one away, and almost none of a
    /// ready-to-use one. Common practice, no source.
    /// </summary>
    [Theory]
    [InlineData(0.25, 55, 85)]
    [InlineData(0.5, 30, 60)]
    public void Slow_use_throws_a_large_part_of_a_two_part_container_away(double containersPerMonth, double leastPercent, double mostPercent)
    {
        Assert.InRange(Share(EmulsionFamily.Diazo, containersPerMonth), leastPercent, mostPercent);
        Assert.InRange(Share(EmulsionFamily.Photopolymer, containersPerMonth), 0, 1);
    }

    [Fact]
    public void Fast_use_throws_almost_nothing_away() => Assert.InRange(Share(EmulsionFamily.Diazo, 3), 0, 2);

    /// <summary>
    /// The closed form against a plain simulation of the same lognormal use: 200 000 draws from a fixed seed, four standard errors.
    /// </summary>
    [Theory]
    [InlineData(0.4)]
    [InlineData(1.0)]
    [InlineData(1.6)]
    public void Expected_waste_is_the_mean_over_many_containers(double usedPerLife)
    {
        const int draws = 200_000;
        var life = new Estimate(35, 28, 43.75, Ground.Model);
        var use = new Estimate(usedPerLife * 1000 / 35, usedPerLife * 1000 / 35 / 1.5, usedPerLife * 1000 / 35 * 1.5, Ground.Model);
        var spread = Math.Sqrt(Math.Pow(Math.Log(1.25), 2) + Math.Pow(Math.Log(1.5), 2)) / 1.6449;
        var random = new Random(1903);
        double sum = 0, squares = 0;
        for (var i = 0; i < draws; i++)
        {
            var normal = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            var wasted = 100 * Math.Max(0, 1 - (usedPerLife * Math.Exp(spread * normal)));
            sum += wasted;
            squares += wasted * wasted;
        }

        var mean = sum / draws;
        var standardError = Math.Sqrt(((squares / draws) - (mean * mean)) / draws);
        Assert.Equal(mean, Waste.SharePercent(new WasteCase(EmulsionFamily.Diazo, 1000, life, use)).Value, 4 * standardError);
    }

    [Fact]
    public void Known_exactly_it_is_what_is_left_over() => Assert.Equal(
        30,
        Waste.SharePercent(new WasteCase(
            EmulsionFamily.Diazo, 1000, Estimate.Exact(35, Ground.MeasuredHere), Estimate.Exact(20, Ground.MeasuredHere))).Value,
        1e-9);

    /// <summary>Over all ways it may fall out (midpoints of 20 000 equal slices) the mean is the closed form's.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(25)]
    [InlineData(60)]
    public void One_way_it_falls_out_averages_to_what_is_expected(double gramsPerDay)
    {
        const int slices = 20_000;
        var waste = new WasteCase(EmulsionFamily.Diazo, 1000, new Estimate(35, 28, 42, Ground.CommonPractice), Estimate.Within(gramsPerDay, 0.3, Ground.Model));
        var mean = Enumerable.Range(0, slices).Average(i => Waste.PercentAt(waste, (i + 0.5) / slices));
        Assert.Equal(Waste.SharePercent(waste).Value, mean, 0.02);
    }

    /// <summary>By hand: of 1000 g bought a quarter is thrown away beside 750 g used.</summary>
    [Fact]
    public void What_is_thrown_away_stands_beside_what_is_used() => Assert.Equal(250, Waste.Beside(750, 25), 1e-9);

    [Fact]
    public void Using_more_or_keeping_longer_never_wastes_more() =>
        Gen.Select(Gen.Double[0.5, 500], Gen.Double[5, 800], Gen.Double[200, 20_000], Gen.Double[1, 3], Gen.Bool)
            .Sample((grams, days, container, factor, faster) =>
            {
                var before = Case(grams, days, container);
                var after = faster ? Case(grams * factor, days, container) : Case(grams, days * factor, container);
                return Waste.SharePercent(after).Value <= Waste.SharePercent(before).Value + 1e-9;
            });

    [Fact]
    public void A_share_lies_between_none_and_all() =>
        Gen.Select(Gen.Double[0.001, 500], Gen.Double[1, 800], Gen.Double[200, 20_000]).Sample((grams, days, container) =>
        {
            var share = Waste.SharePercent(Case(grams, days, container));
            return share.Low >= 0 && share.High < 100;
        });

    [Fact]
    public void Nothing_to_waste_from_or_no_use_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Waste.SharePercent(Case(0, 35, 1000)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Waste.SharePercent(Case(10, 35, 0)));
    }

    private static double Share(EmulsionFamily family, double containersPerMonth)
    {
        const double container = 4500;
        var life = PotLife.LifeDays(new StencilEmulsion { Id = "any", Family = family, StoredCelsius = 21 });
        var use = Estimate.Within(containersPerMonth * container / DaysPerMonth, 0.3, Ground.MeasuredHere);
        return Waste.SharePercent(new WasteCase(family, container, life, use)).Value;
    }

    private static WasteCase Case(double grams, double days, double container) => new(
        EmulsionFamily.DualCure, container, Estimate.Within(days, 0.25, Ground.Model), Estimate.Within(grams, 0.4, Ground.Model));
}
