using Silkwright.Estimates;
using Silkwright.Web.Look;

namespace Silkwright.Web.Tests.Look;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(6.2, 4.6, 7.9, "6.2", "4.6 to 7.9")]
    [InlineData(31.4, 26.2, 38.1, "31", "26 to 38")]
    [InlineData(8_731, 3_020, 27_400, "9 000", "3 000 to 27 000")]
    [InlineData(0.241, 0.181, 0.311, "0.24", "0.18 to 0.31")]
    public void A_number_has_no_more_digits_than_its_interval_carries(double value, double low, double high, string said, string interval)
    {
        var estimate = new Estimate(value, low, high, Ground.Model);

        Assert.Equal(said, Figures.Value(estimate).Replace('\u202f', ' '));
        Assert.Equal(interval, Figures.Interval(estimate).Replace('\u202f', ' '));
    }

    [Theory]
    [InlineData(45, "45 min")]
    [InlineData(110, "1 h 50")]
    [InlineData(60 * 72, "3 days")]
    public void Minutes_are_said_as_people_say_them(double minutes, string said) => Assert.Equal(said, Figures.Minutes(minutes));

    [Fact]
    public void Both_unit_systems_mean_the_same_length()
    {
        // 1 inch = 25.4 mm exactly (international yard and pound agreement, 1959): 1 mil = 25.4 µm.
        Assert.Equal("2.52 mil", Units.Length(64, UnitSystem.Us));
        Assert.Equal("64 µm", Units.Length(64, UnitSystem.Metric));
        // A mesh of 120/cm is sold as 305 an inch: trade-wide naming, common practice, no source.
        Assert.Equal("305", Units.Count(120, UnitSystem.Us));
    }

    [Fact]
    public void Fahrenheit_freezes_at_32_and_boils_at_212()
    {
        Assert.Equal("32 °F", Units.Temperature(0, UnitSystem.Us));
        Assert.Equal("212 °F", Units.Temperature(100, UnitSystem.Us));
    }

    [Fact]
    public void Every_caution_stands_before_a_station()
    {
        Assert.Equal(Silkwright.Web.Pages.Jobs.Sheet.Station.Expose, Silkwright.Web.Pages.Jobs.Sheet.CautionPlace.Of(new Caution("Before exposing", "", CautionLevel.Warning)));
        Assert.Equal(Silkwright.Web.Pages.Jobs.Sheet.Station.Dry, Silkwright.Web.Pages.Jobs.Sheet.CautionPlace.Of(new Caution("Before drying", "", CautionLevel.Warning)));
        Assert.Equal(Silkwright.Web.Pages.Jobs.Sheet.Station.Print, Silkwright.Web.Pages.Jobs.Sheet.CautionPlace.Of(new Caution("Before reclaiming", "", CautionLevel.Warning)));
        Assert.Equal(Silkwright.Web.Pages.Jobs.Sheet.Station.Coat, Silkwright.Web.Pages.Jobs.Sheet.CautionPlace.Of(new Caution("Before mixing", "", CautionLevel.Caution)));
    }
}
