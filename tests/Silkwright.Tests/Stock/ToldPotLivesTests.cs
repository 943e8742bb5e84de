using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Stock;

namespace Silkwright.Tests.Stock;

/// <summary>Pot lives told at several temperatures.</summary>
public sealed class ToldPotLivesTests
{
    /// <summary>About six weeks at 21 °C and about three days at 37 °C (a trade article): both are met, and the way between falls.</summary>
    [Fact]
    public void What_is_told_at_a_temperature_holds_there()
    {
        Assert.Equal(42, Days(21), 1e-9);
        Assert.Equal(3, Days(37), 1e-9);
        Assert.InRange(Days(30), 3, 42);

        static double Days(double celsius) => PotLife.LifeDays(Told(celsius, (21, 42), (37, 3))).Value;
    }

    [Fact]
    public void A_hotter_store_never_lengthens_the_life() =>
        Gen.Select(Gen.Double[-10, 45].Array[1, 4], Gen.Double[1, 200].Array[4], Gen.Double[-20, 55], Gen.Double[0, 20]).Sample((temperatures, days, at, hotter) =>
        {
            (double, double)[] told = [.. temperatures.Distinct().Select((celsius, i) => (celsius, days[i]))];
            var (cool, warm) = (PotLife.LifeDays(Told(at, told)).Value, PotLife.LifeDays(Told(Math.Min(60, at + hotter), told)).Value);
            Assert.True(warm <= cool * (1 + 1e-9), $"{warm} d in the warm, {cool} d in the cool");
        });

    /// <summary>The trade's rule halves the life for each 5.6 °C above 21 °C (a trade article): it stands where one temperature is told.</summary>
    [Fact]
    public void Told_once_the_trades_rule_goes_on_from_there()
    {
        Assert.Equal(21, PotLife.LifeDays(Told(26.6, (21, 42))).Value, 1e-9);
        Assert.Equal(10, PotLife.LifeDays(Told(35.6, (30, 20))).Value, 1e-9);
        Assert.Equal(40, PotLife.LifeDays(Told(24.4, (30, 20))).Value, 1e-9);
    }

    [Fact]
    public void Deep_cold_at_most_doubles_it() => Assert.Equal(84, PotLife.LifeDays(Told(4, (21, 42))).Value, 1e-9);

    private static StencilEmulsion Told(double storedCelsius, params (double Celsius, double Days)[] told) => new()
    {
        Id = "invented",
        Family = EmulsionFamily.Diazo,
        StoredCelsius = storedCelsius,
        ShelfLifeMonths = 60,
        PotLives = [.. told.Select(life => new ToldPotLife(life.Celsius, life.Days, Ground.Datasheet))],
    };
}
