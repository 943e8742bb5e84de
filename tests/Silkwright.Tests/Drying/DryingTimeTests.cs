using CsCheck;
using Silkwright.Drying;
using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Tests.Drying;

public class DryingTimeTests
{
    /// <summary>A thin coat, one stroke a side: about 100 µm wet at 40 % solids. Common practice, no source.</summary>
    private static readonly DryingCase ThinCoat = new()
    {
        AirCelsius = 21,
        HumidityPercent = 50,
        WetUm = Estimate.Within(100, 0.1, Ground.Model),
        SolidsPercent = Estimate.Within(40, 0.05, Ground.Datasheet),
        Family = EmulsionFamily.DualCure,
    };

    private static readonly Gen<DryingCase> AnyCase = Gen.Select(
        Gen.Double[5, 40],
        Gen.Double[5, 90],
        Gen.Double[0, 3],
        Gen.Double[20, 300],
        Gen.Double[25, 50],
        Gen.Enum<EmulsionFamily>(),
        (celsius, humidity, speed, wet, solids, family) => new DryingCase
        {
            AirCelsius = celsius,
            HumidityPercent = humidity,
            AirSpeedMPerS = speed,
            WetUm = Estimate.Within(wet, 0.2, Ground.Model),
            SolidsPercent = Estimate.Within(solids, 0.1, Ground.CommonPractice),
            Family = family,
        });

    /// <summary>Touch-dry about 60 min at 21 °C and 50 % (trade article, Orr 2002); held to a third either way.</summary>
    [Fact]
    public void A_thin_coat_is_touch_dry_in_about_an_hour_in_an_ordinary_room()
    {
        var minutes = DryingTime.Of(ThinCoat).MinutesToTouchDry;
        Assert.InRange(minutes.Value, 40, 80);
        Assert.True(minutes.Low < 60 && 60 < minutes.High);
    }

    /// <summary>Fully dry in 15 to 20 min at 38 °C and 20 % in moving air (trade article, Orr 2002).</summary>
    [Fact]
    public void A_thin_coat_is_dry_in_a_quarter_of_an_hour_in_a_hot_dry_cabinet()
    {
        var cabinet = ThinCoat with { AirCelsius = 38, HumidityPercent = 20, AirSpeedMPerS = 1.5 };
        Assert.InRange(DryingTime.Of(cabinet).MinutesToSafe!.Value, 12, 24);
    }

    /// <summary>Between those two stands a ratio of 3 to 4 (same article); held to 2.5 to 4.5.</summary>
    [Fact]
    public void The_cabinet_is_three_to_four_times_as_fast_as_the_room()
    {
        var cabinet = ThinCoat with { AirCelsius = 38, HumidityPercent = 20, AirSpeedMPerS = 1.5 };
        var ratio = DryingTime.Of(ThinCoat).MinutesToTouchDry.Value / DryingTime.Of(cabinet).MinutesToSafe!.Value;
        Assert.InRange(ratio, 2.5, 4.5);
    }

    /// <summary>A film in saturated air loses nothing: definition.</summary>
    [Fact]
    public void Nothing_evaporates_into_saturated_air()
    {
        Assert.Equal(0, Evaporation.KgPerM2S(MoistAir.At(25, 100), 0.5, 0.5), 1e-9);
        Assert.Equal(DryingTime.LongestMinutes, DryingTime.Of(ThinCoat with { HumidityPercent = 100 }).MinutesToTouchDry.Value);
    }

    /// <summary>Rate follows the root of the air speed while the layer is laminar: boundary-layer theory.</summary>
    [Fact]
    public void Four_times_the_air_speed_doubles_the_rate()
    {
        var air = MoistAir.At(25, 40);
        Assert.Equal(2, Evaporation.KgPerM2S(air, 2, 0.5) / Evaporation.KgPerM2S(air, 0.5, 0.5), 1e-9);
    }

    /// <summary>
    /// At the wet bulb evaporation takes the heat that the air brings: h(t − tw) = rate × latent heat, with h from mass transfer
    /// by Chilton and Colburn. The thermodynamic wet bulb stands for a Lewis number of 1 where moist air has 0.86, hence 15 %.
    /// </summary>
    [Theory]
    [InlineData(21, 50)]
    [InlineData(38, 20)]
    [InlineData(30, 70)]
    public void Heat_brought_by_the_air_pays_for_the_evaporation(double celsius, double humidity)
    {
        var air = MoistAir.At(celsius, humidity);
        var rate = Evaporation.KgPerM2S(air, 1, 0.5);
        var massTransfer = FlatPlate.MassTransferMPerS(1, 0.5, 1.55e-5, 2.5e-5 * 1.03);
        var heat = FlatPlate.HeatOverMass(air.DensityKgPerM3, 1012, 0.86) * massTransfer * (celsius - air.WetBulbCelsius);
        var latent = 2501e3 - (2380 * air.WetBulbCelsius);
        Assert.Equal(1, heat / (rate * latent), 0.15);
    }

    [Fact]
    public void More_humid_air_never_dries_faster() => AnyCase.Select(Gen.Double[0, 10]).Sample((drying, more) =>
        NoFaster(drying with { HumidityPercent = drying.HumidityPercent + more }, drying));

    [Fact]
    public void Hotter_air_never_dries_slower() => AnyCase.Select(Gen.Double[0, 5]).Sample((drying, more) =>
        NoFaster(drying, drying with { AirCelsius = drying.AirCelsius + more }));

    [Fact]
    public void A_thicker_coat_never_dries_faster() => AnyCase.Select(Gen.Double[1, 2]).Sample((drying, more) =>
        NoFaster(drying with { WetUm = drying.WetUm.Times(more) }, drying));

    [Fact]
    public void Two_faces_never_dry_slower_than_one() => AnyCase.Sample(drying => NoFaster(drying with { Faces = 1 }, drying));

    [Fact]
    public void A_film_never_sticks_less_in_damper_air() => AnyCase.Select(Gen.Double[0, 10]).Sample((drying, more) =>
        DryingTime.Of(drying with { HumidityPercent = drying.HumidityPercent + more }).StickRiskPercent.Value
            >= DryingTime.Of(drying).StickRiskPercent.Value);

    /// <summary>Dry at 35 to 40 % and below; above 50 % risky; wet weeks glue. Common practice, no source.</summary>
    [Fact]
    public void Films_stick_in_wet_weeks_and_not_in_dry_rooms()
    {
        foreach (var family in Enum.GetValues<EmulsionFamily>())
        {
            Assert.InRange(Risk(family, 35), 0, 5);
            Assert.InRange(Risk(family, 80), 85, 100);
        }

        double Risk(EmulsionFamily family, double humidity) =>
            DryingTime.Of(ThinCoat with { Family = family, HumidityPercent = humidity }).StickRiskPercent.Value;
    }

    /// <summary>Some coats resist sticking even above 90 % humidity. Common practice, no source.</summary>
    [Fact]
    public void A_resistant_coat_mostly_stays_dry_to_the_touch_above_90_percent() =>
        Assert.InRange(
            DryingTime.Of(ThinCoat with { HumidityPercent = 92, HumidityResistant = true }).StickRiskPercent.Value, 0, 30);

    [Fact]
    public void Where_the_coat_keeps_too_much_water_there_is_no_safe_time_but_a_note()
    {
        var result = DryingTime.Of(ThinCoat with { HumidityPercent = 75 });
        Assert.Null(result.MinutesToSafe);
        Assert.True(result.EquilibriumMoisturePercent > 5);
        Assert.Contains(result.Notes, note => note.Text.Contains("dry the air", StringComparison.Ordinal));
    }

    [Fact]
    public void The_curve_starts_wet_and_falls_towards_rest()
    {
        var result = DryingTime.Of(ThinCoat);
        Assert.Equal(150, result.Curve[0].MoisturePercent, 1e-9); // 60 g of water on 40 g of solids
        Assert.All(result.Curve.Zip(result.Curve.Skip(1)), pair => Assert.True(pair.Second.MoisturePercent <= pair.First.MoisturePercent));
        Assert.All(result.Curve, point => Assert.True(point.MoisturePercent >= result.EquilibriumMoisturePercent - 1e-9));
    }

    [Fact]
    public void The_safe_moisture_of_a_shop_moves_the_safe_time()
    {
        var strict = DryingTime.Of(ThinCoat with { HumidityPercent = 35, SafeMoisturePercent = 4 }).MinutesToSafe!;
        var usual = DryingTime.Of(ThinCoat with { HumidityPercent = 35 }).MinutesToSafe!;
        Assert.True(strict.Value > usual.Value);
    }

    [Fact]
    public void Above_40_degrees_it_warns()
    {
        var result = DryingTime.Of(ThinCoat with { AirCelsius = 42 });
        Assert.Contains(result.Notes, note => note.Text.Contains("40 °C", StringComparison.Ordinal));
        Assert.DoesNotContain(DryingTime.Of(ThinCoat).Notes, note => note.Text.Contains("40 °C", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(45.1, 50, 40, 2)]
    [InlineData(-1, 50, 40, 2)]
    [InlineData(25, 101, 40, 2)]
    [InlineData(25, 50, 0, 2)]
    [InlineData(25, 50, 40, 3)]
    public void Above_45_degrees_or_outside_any_range_it_refuses(double celsius, double humidity, double solids, int faces) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DryingTime.Of(ThinCoat with
        {
            AirCelsius = celsius,
            HumidityPercent = humidity,
            SolidsPercent = Estimate.Exact(solids, Ground.Datasheet),
            Faces = faces,
        }));

    private static bool NoFaster(DryingCase slower, DryingCase faster)
    {
        DryingResult slow = DryingTime.Of(slower), fast = DryingTime.Of(faster);
        return slow.MinutesToTouchDry.Value >= fast.MinutesToTouchDry.Value - 1e-6
            && Minutes(slow) >= Minutes(fast) - 1e-6;

        static double Minutes(DryingResult result) => result.MinutesToSafe?.Value ?? double.PositiveInfinity;
    }
}
