using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class LampGeometryTests
{
    /// <summary>Inverse square law: 60 s at 1.0 m are 135 s at 1.5 m.</summary>
    [Fact]
    public void A_point_lamp_follows_the_inverse_square() =>
        Assert.Equal(135, 60 * LampGeometry.AtDistance(LampKind.MetalHalide, 1000, 1500).Factor!.Value, 1e-9);

    [Theory]
    [InlineData(LampKind.LedArray)]
    [InlineData(LampKind.TubeBank)]
    public void An_array_or_a_tube_bank_is_refused_with_the_way_out(LampKind kind)
    {
        var refusal = LampGeometry.AtDistance(kind, 100, 200);
        Assert.Null(refusal.Factor);
        Assert.Contains("step test", refusal.WhyNot, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 100)]
    [InlineData(100, -1)]
    [InlineData(double.NaN, 100)]
    public void A_distance_must_be_above_nothing(double from, double to) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LampGeometry.AtDistance(LampKind.MetalHalide, from, to));

    /// <summary>Definition of the cosine-fourth law, worked by hand.</summary>
    [Theory]
    [InlineData(10, 0.940602)]
    [InlineData(20, 0.779728)]
    [InlineData(30, 0.562500)]
    [InlineData(45, 0.250000)]
    public void Light_falls_off_with_the_fourth_power_of_the_cosine(double degrees, double share) =>
        Assert.Equal(share, LampGeometry.CosineFourth(degrees), 1e-6);

    /// <summary>Trade table of light through film, worked from the definition: 1.5 → 3.2 %, 2.0 → 1.0 %, 3.0 → 0.10 %.</summary>
    [Theory]
    [InlineData(1.5, 3.2)]
    [InlineData(2.0, 1.0)]
    [InlineData(2.5, 0.32)]
    [InlineData(3.0, 0.10)]
    public void Film_passes_what_its_density_says(double density, double percent) =>
        Assert.Equal(1, 100 * FilmTransmission.Of(density) / percent, 0.02);

    [Fact]
    public void The_clear_of_a_film_takes_from_its_contrast() =>
        Assert.Equal(0.001, FilmTransmission.Leak(new FilmDensity(3.1, 0.1)), 1e-9);
}
