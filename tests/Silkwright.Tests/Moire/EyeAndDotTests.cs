using Silkwright.Moire;

namespace Silkwright.Tests.Moire;

public class EyeAndDotTests
{
    /// <summary>Mannos and Sakrison 1974: the best lies near 8 cycles a degree, where the curve is close to 1 (from memory).</summary>
    [Fact]
    public void The_eye_is_at_its_best_near_8_cycles_a_degree()
    {
        Assert.Equal(8, EyeSensitivity.BestPerDegree, 0.2);
        Assert.InRange(EyeSensitivity.At(EyeSensitivity.BestPerDegree), 0.97, 1);
        for (var f = 0.1; f < 60; f += 0.1)
            Assert.True(EyeSensitivity.At(f) <= EyeSensitivity.At(EyeSensitivity.BestPerDegree) + 1e-9);
    }

    /// <summary>Campbell and Robson 1968: at full contrast waves up to some 60 cycles a degree are seen, and a best threshold is near 0.005 (from memory).</summary>
    [Fact]
    public void At_the_finest_full_contrast_is_about_just_seen() =>
        Assert.InRange(EyeSensitivity.At(EyeSensitivity.FinestPerDegree) / 0.005, 0.5, 2);

    /// <summary>One degree at 573 mm is 10 mm wide. Trigonometry.</summary>
    [Fact]
    public void A_millimetre_at_arms_length_is_a_tenth_of_a_degree() =>
        Assert.Equal(10, EyeSensitivity.CyclesPerDegree(10, 572.96), 1e-3);

    /// <summary>Parseval: the squares of all coefficients add up to the tone itself, for a print that is all or nothing. Orders to 400 leave about a part in a thousand.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    [InlineData(50)]
    public void The_dots_coefficients_hold_all_of_the_tone(double tone)
    {
        var share = tone / 100;
        var sum = share * share;
        for (var first = -400; first <= 400; first++)
        {
            for (var second = -400; second <= 400; second++)
            {
                if (first != 0 || second != 0)
                    sum += Math.Pow(Lattice.DotStrength(double.Hypot(first, second), tone), 2);
            }
        }

        Assert.Equal(share, sum, 0.002);
    }

    [Fact]
    public void A_hole_of_a_tone_is_as_strong_as_a_dot_of_the_rest() =>
        Assert.Equal(Lattice.DotStrength(4, 20), Lattice.DotStrength(4, 80), 1e-12);
}
