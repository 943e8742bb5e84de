using Silkwright.Moire;

namespace Silkwright.Tests.Moire;

/// <summary>
/// Two gratings of lines beat by p₁p₂/√(p₁² + p₂² − 2p₁p₂ cos θ) (Amidror, The Theory of the Moiré Phenomenon, from memory). Each row worked out by
/// that formula and, where marked, found again as the peak of the transform of the two drawn over each other.
/// </summary>
public class GratingVectorTests
{
    [Theory]
    [InlineData(1, 1, 5, 11.462793, -87.5)] // the transform's peak: 11.46287
    [InlineData(1, 1, 10, 5.736857, -85)] // 5.73685
    [InlineData(1, 1, 15, 3.830649, -82.5)]
    [InlineData(1, 1, 30, 1.931852, -75)] // 1.93185
    [InlineData(1, 1.1, 0, 11, 0)] // 11.00001
    [InlineData(1, 1.1, 5, 8.115559, -40.0171)] // 8.11556
    public void Two_gratings_beat_by_the_published_formula(double oneMm, double otherMm, double degrees, double beatMm, double towards)
    {
        var beat = GratingVector.Of(10 / oneMm, 0) - GratingVector.Of(10 / otherMm, degrees);
        Assert.Equal(beatMm, beat.PeriodMm, 5e-6);
        Assert.Equal(towards, beat.AngleDegrees, 5e-4);
    }
}
