using Silkwright.Estimates;
using Silkwright.Web.Look;

namespace Silkwright.Web.Tests.Look;

public sealed class LookTests
{
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
