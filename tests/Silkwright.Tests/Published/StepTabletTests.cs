using Silkwright.Exposure;

namespace Silkwright.Tests.Published;

/// <summary>
/// The 21-step transmission tablet (0.15 a step, first step 0.05, last 3.05, as stated on a user page of the tablet) and the
/// factors that a supplier's page of exposure arithmetic prints for the trade's rule, root two a step.
/// </summary>
public class StepTabletTests
{
    [Fact]
    public void One_step_is_a_factor_of_ten_to_the_0_15() => Assert.Equal(1.412538, StepWedge.FactorPerStep(), 1e-6);

    /// <summary>The printed page rounds and reckons with root two: 0.12 % a step away from the exact factor.</summary>
    [Theory]
    [InlineData(1, 1.414)]
    [InlineData(2, 1.9999)]
    [InlineData(3, 2.827)]
    [InlineData(4, 3.99758)]
    public void The_trades_rule_is_within_half_a_percent(int steps, double printed) =>
        Assert.Equal(1, StepWedge.CorrectedAmount(1, 7 - steps, 7) / printed, 0.005);

    [Theory]
    [InlineData(1, 1.412538)]
    [InlineData(2, 1.995262)]
    [InlineData(3, 2.818383)]
    [InlineData(4, 3.981072)]
    [InlineData(-1, 0.707946)]
    [InlineData(-2, 0.501187)]
    public void Exact_factors_follow_from_density(int steps, double factor) =>
        Assert.Equal(factor, StepWedge.CorrectedAmount(1, 7 - steps, 7), 1e-6);

    [Theory]
    [InlineData(7, 0.95, 0.112202)]
    [InlineData(14, 2.00, 0.01)]
    [InlineData(21, 3.05, 8.9125e-4)]
    public void Densities_and_light_of_the_steps(int step, double density, double transmission)
    {
        Assert.Equal(density, StepWedge.DensityOf(step), 1e-9);
        Assert.Equal(1, FilmTransmission.Of(StepWedge.DensityOf(step)) / transmission, 1e-5);
    }
}
