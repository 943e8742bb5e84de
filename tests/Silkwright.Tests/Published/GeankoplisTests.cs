using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>
/// Geankoplis, Transport Processes and Unit Operations, 3rd edition, example 9.7-2, with its inputs recalled from memory and
/// the arithmetic redone: Ls/A 21.5 kg/m², Rc 1.51 kg/(m²·h), Xc 0.195, no moisture at rest.
/// </summary>
public class GeankoplisTests
{
    private static readonly DryingPeriods Example = new(SolidKgPerM2: 21.5, RateKgPerM2S: 1.51 / 3600, Critical: 0.195, Rest: 0);

    [Fact]
    public void Example_9_7_2_falling_rate_time() => Assert.Equal(4.39, Example.Seconds(0.195, 0.040) / 3600, 0.01);

    [Fact]
    public void Example_9_7_2_constant_rate_time() => Assert.Equal(2.63, Example.Seconds(0.38, 0.195) / 3600, 0.01);

    [Fact]
    public void Both_periods_add_up() => Assert.Equal(7.02, Example.Seconds(0.38, 0.040) / 3600, 0.02);
}
