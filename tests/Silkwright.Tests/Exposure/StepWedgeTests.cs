using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class StepWedgeTests
{
    /// <summary>Trade table for a target of 7: read 3 → 4.0, 5 → 2.0, 9 → 0.5, 10 → 0.35 (root two a step, printed to two figures).</summary>
    [Theory]
    [InlineData(3, 4.0)]
    [InlineData(4, 2.8)]
    [InlineData(5, 2.0)]
    [InlineData(6, 1.41)]
    [InlineData(7, 1.0)]
    [InlineData(8, 0.71)]
    [InlineData(9, 0.5)]
    [InlineData(10, 0.35)]
    public void The_correction_is_the_trades_table(double read, double factor) =>
        Assert.Equal(1, StepWedge.CorrectedAmount(60, read, 7) / (60 * factor), 0.015);

    [Theory]
    [InlineData(0, 5, 0.15)]
    [InlineData(-60, 5, 0.15)]
    [InlineData(60, double.NaN, 0.15)]
    [InlineData(60, 5, 0)]
    public void What_makes_no_sense_is_refused(double amount, double read, double density) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StepWedge.CorrectedAmount(amount, read, 7, density));
}
