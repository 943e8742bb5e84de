using CsCheck;
using Silkwright.Mesh;
using Silkwright.Moire;

namespace Silkwright.Tests.Moire;

public class BeatsTests
{
    /// <summary>Worked out by hand: |k f₁ − m f₂| as vectors (Amidror).</summary>
    [Theory]
    [InlineData(120, 32, 0, 4, 1.25)]
    [InlineData(120, 30, 5, 4, 0.95523)]
    [InlineData(120, 30, 22.5, 4, 0.21358)]
    [InlineData(90, 25, 0, 4, 1.0)]
    [InlineData(90, 26, 0, 3, 0.83333)]
    public void An_overtone_of_the_ruling_beats_with_the_threads(double countPerCm, double rulingPerCm, double degrees, int order, double periodMm)
    {
        var patterns = Beats.Of(Case(countPerCm, rulingPerCm, degrees));
        var pattern = Assert.Single(patterns, p => p.Ruling == new OrderPair(order, 0) && p.Thread == new OrderPair(1, 0));
        Assert.Equal(periodMm, pattern.Vector.PeriodMm, 2e-5);
    }

    [Fact]
    public void Where_the_fourth_overtone_falls_on_the_threads_the_beat_is_longer_than_any_print()
    {
        var asked = Case(120, 30, 0);
        Assert.Contains(Beats.Standing(asked), p => p.Ruling == new OrderPair(4, 0) && p.Thread == new OrderPair(1, 0));
        Assert.All(Beats.Of(asked), pattern => Assert.True(pattern.Vector.PeriodMm <= Beats.LongestMm));
    }

    /// <summary>The trade's ratios put the main beat at the fourth or fifth of the ruling: mesh makers' guidance of 3.75 and 5 to one.</summary>
    [Theory]
    [InlineData(3.75, 4)]
    [InlineData(4.2, 4)]
    [InlineData(5.1, 5)]
    public void Along_the_threads_the_plainest_beat_is_that_of_the_nearest_overtone(double threadsPerLine, int order)
    {
        var plainest = Beats.Of(Case(90, 90 / threadsPerLine, 3))[0];
        Assert.Equal(order, Math.Max(Math.Abs(plainest.Ruling!.Value.First), Math.Abs(plainest.Ruling!.Value.Second)));
    }

    [Fact]
    public void Strongest_first_between_0_and_1_and_within_the_band() => Gen.Select(Gen.Double[30, 150], Gen.Double[10, 40], Gen.Double[-90, 90])
        .Sample((count, ruling, angle) =>
        {
            var patterns = Beats.Of(Case(count, ruling, angle));
            Assert.Equal(patterns.OrderByDescending(p => p.Visibility).Select(p => p.Visibility), patterns.Select(p => p.Visibility));
            Assert.All(patterns, p =>
            {
                Assert.InRange(p.Visibility, 0, 1);
                Assert.InRange(p.Vector.PeriodMm, 0.1, Beats.LongestMm);
                Assert.InRange(p.Vector.AngleDegrees, -90, 90);
            });
            Assert.Equal(patterns.Count > 0 ? patterns[0].TimesSeen : 0, Beats.Worst(Case(count, ruling, angle)), patterns.Count > 0 ? 1e-12 : 0.001);
        }, iter: 300);

    /// <summary>Two square lattices: a quarter turn of both, or a mirror, changes nothing that is seen. Symmetry.</summary>
    [Fact]
    public void A_quarter_turn_or_a_mirror_of_the_film_changes_nothing() => Gen.Select(Gen.Double[30, 150], Gen.Double[10, 40], Gen.Double[0, 90])
        .Sample((count, ruling, angle) =>
        {
            var worst = Beats.Worst(Case(count, ruling, angle));
            Assert.Equal(worst, Beats.Worst(Case(count, ruling, angle + 90)), 1e-9);
            Assert.Equal(worst, Beats.Worst(Case(count, ruling, -angle)), 1e-9);
            Assert.Equal(worst, Beats.Worst(Case(count, ruling, angle + 17) with { MeshAngleDegrees = 17 }), 1e-9);
        }, iter: 200);

    [Fact]
    public void A_knit_beats_with_the_ruling_that_is_near_it()
    {
        // 17.717/cm against 17/cm: 10/0.717 = 13.95 mm, by the same formula
        var patterns = Beats.Of(Case(61, 45 / 2.54, 0) with { KnitWalesPerCm = 17, KnitCoursesPerCm = 21 });
        var pattern = Assert.Single(patterns, p => p.Ruling == new OrderPair(1, 0) && p.Knit == new OrderPair(1, 0));
        Assert.Equal(10 / ((45 / 2.54) - 17), pattern.Vector.PeriodMm, 1e-9);
    }

    [Theory]
    [InlineData(61, 200, 18, 22.5)]
    [InlineData(61, 64, 0, 22.5)]
    public void What_cannot_be_is_refused(double count, double thread, double ruling, double angle) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Beats.Of(new MoireCase { Mesh = new MeshFabric(count, thread), RulingPerCm = ruling, AngleDegrees = angle }));

    private static MoireCase Case(double countPerCm, double rulingPerCm, double degrees) =>
        new() { Mesh = new MeshFabric(countPerCm, 4000 / countPerCm), RulingPerCm = rulingPerCm, AngleDegrees = degrees };
}
