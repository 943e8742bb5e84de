using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Tests.Emulsion;

/// <summary>Family figures against the ranges the trade gives. Common practice, no source, where no article is named.</summary>
public sealed class FamilyValuesTests
{
    [Theory]
    [InlineData(EmulsionFamily.Diazo, 20, 32)]
    [InlineData(EmulsionFamily.DualCure, 32, 42)]
    [InlineData(EmulsionFamily.Photopolymer, 35, 50)]
    public void Solids_cover_the_familys_range(EmulsionFamily family, double low, double high)
    {
        var solids = FamilyValues.SolidsPercent(Plain(family));

        Assert.Equal(low, solids.Low);
        Assert.Equal(high, solids.High);
        Assert.Equal(Ground.CommonPractice, solids.Ground);
    }

    /// <summary>Four to six weeks once sensitised, trade articles; ready-to-use about two years, one closed year for two-part.</summary>
    [Theory]
    [InlineData(EmulsionFamily.Diazo, 28, 42, 12)]
    [InlineData(EmulsionFamily.DualCure, 28, 42, 12)]
    [InlineData(EmulsionFamily.Photopolymer, 18 * 30.4, 24 * 30.5, 24)]
    public void Two_part_keeps_weeks_and_ready_to_use_keeps_years(EmulsionFamily family, double leastDays, double mostDays, double shelfMonths)
    {
        var pot = FamilyValues.PotLifeDaysAt21(Plain(family));
        var shelf = FamilyValues.ShelfLifeMonths(Plain(family));

        Assert.InRange(pot.Low, leastDays, mostDays);
        Assert.InRange(pot.High, leastDays, mostDays);
        Assert.InRange(shelfMonths, shelf.Low, shelf.High);
    }

    [Fact]
    public void Given_values_stand_on_the_datasheet_and_are_kept()
    {
        var emulsion = Plain(EmulsionFamily.Diazo) with
        {
            SolidsPercent = 31, PotLifeDays = 50, ShelfLifeMonths = 9, RelativeExposure = 0.8, Price = new ContainerPrice(5000, 110),
        };

        Assert.Equal((31, Ground.Datasheet), Told(FamilyValues.SolidsPercent(emulsion)));
        Assert.Equal((50, Ground.Datasheet), Told(FamilyValues.PotLifeDaysAt21(emulsion)));
        Assert.Equal((9, Ground.Datasheet), Told(FamilyValues.ShelfLifeMonths(emulsion)));
        Assert.Equal((0.8, Ground.Datasheet), Told(FamilyValues.RelativeExposure(emulsion)));
        Assert.Equal((22, Ground.MeasuredHere), Told(FamilyValues.PricePerKg(emulsion)));

        static (double, Ground) Told(Estimate estimate) => (estimate.Value, estimate.Ground);
    }

    /// <summary>A trade text puts a dual-cure at about twice a photopolymer's exposure; a diazo is slowest.</summary>
    [Fact]
    public void Diazo_is_slowest_and_photopolymer_fastest()
    {
        var diazo = FamilyValues.RelativeExposure(Plain(EmulsionFamily.Diazo)).Value;
        var dual = FamilyValues.RelativeExposure(Plain(EmulsionFamily.DualCure)).Value;
        var photopolymer = FamilyValues.RelativeExposure(Plain(EmulsionFamily.Photopolymer));

        Assert.True(diazo > dual && dual > photopolymer.Value);
        Assert.InRange(dual / 2, photopolymer.Low, photopolymer.High);
    }

    /// <summary>A capillary film costs 15 to 35 a square metre, whatever its weight. Common practice, no source.</summary>
    [Theory]
    [InlineData(20)]
    [InlineData(80)]
    public void A_capillary_film_is_priced_by_area(double thicknessUm)
    {
        var film = Plain(EmulsionFamily.CapillaryFilm) with { FilmThicknessUm = thicknessUm };
        var kgPerM2 = thicknessUm * FamilyValues.DensityGPerCm3(film).Value / 1000;

        Assert.InRange(FamilyValues.PricePerKg(film).Value * kgPerM2, 15, 35);
    }

    /// <summary>Volume solids as the contract defines them, from weight solids and two densities.</summary>
    [Fact]
    public void Volume_solids_lie_below_weight_solids_for_solids_heavier_than_water()
    {
        // 50 g of solids at 1.25 take 40 cm³, 50 g of water 50.1 cm³: worked by hand.
        Assert.Equal(40 / 90.1, VolumeSolids.Share(50, 1.25), 1e-4);
        Assert.Equal(100 / 90.1, VolumeSolids.LiquidDensityGPerCm3(50, 1.25), 1e-3);
        Assert.Throws<ArgumentOutOfRangeException>(() => VolumeSolids.Share(0, 1.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => VolumeSolids.Share(101, 1.2));
    }

    private static StencilEmulsion Plain(EmulsionFamily family) => new() { Id = "invented", Family = family };
}
