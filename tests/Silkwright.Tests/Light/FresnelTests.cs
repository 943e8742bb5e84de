using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>Source: Fresnel's equations worked out by hand for glass of index 1.5; any handbook of optics has the table.</summary>
public class FresnelTests
{
    [Theory]
    [InlineData(0, 0.040000)]
    [InlineData(30, 0.041523)]
    [InlineData(45, 0.050240)]
    [InlineData(56.30993, 0.073964)]
    [InlineData(60, 0.089187)]
    [InlineData(80, 0.387704)]
    public void Glass_throws_back_what_the_handbooks_say(double degrees, double reflectance) =>
        Assert.Equal(reflectance, Fresnel.Of(1, 1.5, Math.Cos(double.DegreesToRadians(degrees))).Reflectance, 1e-6);

    /// <summary>Critical angle from 1.5 to 1: 41.810315 degrees.</summary>
    [Theory]
    [InlineData(41.80, false)]
    [InlineData(41.82, true)]
    public void Beyond_the_critical_angle_all_is_thrown_back(double degrees, bool all) =>
        Assert.Equal(all, Fresnel.Of(1.5, 1, Math.Cos(double.DegreesToRadians(degrees))).Reflectance == 1);

    [Fact]
    public void Between_like_media_nothing_is()
    {
        var (reflectance, behind) = Fresnel.Of(1.4, 1.4, 0.3);
        Assert.Equal(0, reflectance, 1e-12);
        Assert.Equal(0.3, behind, 1e-12);
    }
}
