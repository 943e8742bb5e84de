using MathNet.Numerics.Distributions;

namespace Silkwright.Statistics;

/// <summary>Whether and where a level has jumped once.</summary>
/// <param name="Chance">That it has. [1]</param>
/// <param name="At">The likeliest first value after the jump.</param>
/// <param name="Shift">Size of the jump, given that there is one.</param>
/// <param name="ShiftDeviation">Standard deviation of that.</param>
/// <param name="UpChance">That it has jumped upwards. [1]</param>
public sealed record LevelChange(double Chance, int At, double Shift, double ShiftDeviation, double UpChance)
{
    /// <summary>Bayes' rule over every place of the jump; normal errors of known deviation.</summary>
    /// <param name="values">In order; at least two.</param>
    /// <param name="deviations">Standard deviation of each.</param>
    /// <param name="levelDeviation">What is thought of the level before: normal about the first value.</param>
    /// <param name="shiftDeviation">What is thought of a jump before: normal about 0.</param>
    /// <param name="priorChance">That there is one. [1]</param>
    /// <remarks>One jump at most, evenly likely at each place. Source: any text on Bayesian change points; checked by brute force in the tests.</remarks>
    public static LevelChange Of(
        IReadOnlyList<double> values, IReadOnlyList<double> deviations, double levelDeviation, double shiftDeviation, double priorChance = 0.5)
    {
        if (values.Count < 2 || values.Count != deviations.Count)
            throw new ArgumentException("A change needs two values or more, each with its deviation.", nameof(values));
        var steady = LogEvidence(values.Count).Log;
        var places = Enumerable.Range(1, values.Count - 1).Select(at => (At: at, Found: LogEvidence(at))).ToArray();
        var greatest = Math.Max(steady, places.Max(place => place.Found.Log));
        var none = (1 - priorChance) * Math.Exp(steady - greatest);
        double[] weights = [.. places.Select(place => priorChance / places.Length * Math.Exp(place.Found.Log - greatest))];
        var jumped = weights.Sum();
        var chance = jumped / (jumped + none);
        var mean = weights.Select((weight, i) => weight * places[i].Found.Shift).Sum() / jumped;
        var square = weights.Select((weight, i) => weight * (places[i].Found.Variance + (places[i].Found.Shift * places[i].Found.Shift))).Sum() / jumped;
        var up = weights.Select((weight, i) => weight * Normal.CDF(0, 1, places[i].Found.Shift / Math.Sqrt(places[i].Found.Variance))).Sum() / jumped;
        return new LevelChange(chance, places[Array.IndexOf(weights, weights.Max())].At, mean, Math.Sqrt(Math.Max(0, square - (mean * mean))), chance * up);

        // Level and shift are summed out; what all places have in common is left away.
        (double Log, double Shift, double Variance) LogEvidence(int at)
        {
            double ll = 1 / (levelDeviation * levelDeviation), ss = 1 / (shiftDeviation * shiftDeviation), ls = 0, yl = 0, ys = 0;
            for (var i = 0; i < values.Count; i++)
            {
                var (y, precision) = (values[i] - values[0], 1 / (deviations[i] * deviations[i]));
                ll += precision;
                yl += precision * y;
                if (i < at)
                    continue;
                ss += precision;
                ls += precision;
                ys += precision * y;
            }

            var determinant = (ll * ss) - (ls * ls);
            var shift = ((ll * ys) - (ls * yl)) / determinant;
            var level = ((ss * yl) - (ls * ys)) / determinant;
            return ((((yl * level) + (ys * shift)) / 2) - (Math.Log(determinant * shiftDeviation * shiftDeviation) / 2), shift, ll / determinant);
        }
    }
}
