using Silkwright.Statistics;

namespace Silkwright.Tests.Statistics;

public class LevelChangeTests
{
    private static readonly double[] Values = [0.02, -0.11, 0.08, 0.31, 0.22];
    private static readonly double[] Deviations = [0.1, 0.15, 0.1, 0.12, 0.2];

    /// <summary>Brute force: level and jump over a fine grid, each place in turn.</summary>
    [Fact]
    public void Chance_and_size_of_a_jump_agree_with_brute_force()
    {
        const double Level = 1, Jump = 0.3, Step = 0.01;
        double none = 0, some = 0, size = 0;
        for (var level = -4.0; level <= 4; level += Step)
        {
            none += Prior(level - Values[0], Level) * Step * Chance(level, 0, Values.Length);
            for (var jump = -2.0; jump <= 2; jump += Step)
            {
                for (var at = 1; at < Values.Length; at++)
                {
                    var weight = Prior(level - Values[0], Level) * Prior(jump, Jump) * Step * Step * Chance(level, jump, at) / (Values.Length - 1);
                    some += weight;
                    size += weight * jump;
                }
            }
        }

        var change = LevelChange.Of(Values, Deviations, Level, Jump);
        Assert.Equal(some / (some + none), change.Chance, 1e-4);
        Assert.Equal(size / some, change.Shift, 1e-4);
        Assert.Equal(3, change.At);

        static double Prior(double x, double deviation) => Math.Exp(-x * x / (2 * deviation * deviation)) / (deviation * Math.Sqrt(2 * Math.PI));

        static double Chance(double level, double jump, int at)
        {
            var chance = 1.0;
            for (var i = 0; i < Values.Length; i++)
                chance *= Prior(Values[i] - level - (i >= at ? jump : 0), Deviations[i]);
            return chance;
        }
    }

    [Fact]
    public void A_plain_jump_is_certain_and_upwards()
    {
        var change = LevelChange.Of([0, 0.01, -0.01, 0.5, 0.51], [0.05, 0.05, 0.05, 0.05, 0.05], 2, 0.3);
        Assert.True(change.Chance > 0.99);
        Assert.True(change.UpChance > 0.99);
        Assert.Equal(0.5, change.Shift, 0.02);
    }

    /// <summary>Brute force: deviation, level and jump over a grid, each place in turn; the level's and the jump's beliefs scale with the deviation.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData(3)]
    public void Where_the_deviation_is_not_known_it_is_summed_over(int? only)
    {
        const double LevelRatio = 3, JumpRatio = 2, Variance = 0.04, Freedom = 3;
        double none = 0, some = 0, size = 0;
        int[] places = only is { } place ? [place] : [1, 2, 3, 4];
        for (var logDeviation = -4.5; logDeviation < 1.5; logDeviation += 0.1)
        {
            // of the deviation's logarithm: σ⁻ᶠ exp(−f v / 2σ²), from the scaled inverse chi-square of σ²
            var s = Math.Exp(logDeviation);
            var belief = Math.Pow(s, -Freedom) * Math.Exp(-Freedom * Variance / (2 * s * s));
            for (var level = -4.0; level <= 4; level += 0.08)
            {
                var ofLevel = belief * Bell(level, LevelRatio) * Math.Pow(s, -Values.Length);
                none += ofLevel * Chance(level, 0, Values.Length);
                for (var jump = -8.0; jump <= 8; jump += 0.08)
                {
                    foreach (var at in places)
                    {
                        var weight = ofLevel * Bell(jump, JumpRatio) * 0.08 * Chance(level, jump, at) / places.Length;
                        some += weight;
                        size += weight * jump * s;
                    }
                }
            }

            // level and jump are counted in deviations here
            double Chance(double level, double jump, int from)
            {
                var square = 0.0;
                for (var i = 0; i < Values.Length; i++)
                    square += Math.Pow(((Values[i] - Values[0]) / s) - level - (i >= from ? jump : 0), 2);
                return Math.Exp(-square / 2);
            }
        }

        var change = LevelChange.OfUnknownDeviation(Values, LevelRatio, JumpRatio, Variance, Freedom, only);
        Assert.Equal(some / (some + none), change.Chance, 2e-3);
        Assert.Equal(size / some, change.Shift, 2e-3);

        static double Bell(double x, double deviation) => Math.Exp(-x * x / (2 * deviation * deviation)) / (deviation * Math.Sqrt(2 * Math.PI));
    }
}
