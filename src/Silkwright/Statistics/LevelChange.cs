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
        var evidence = new LevelEvidence(values, deviations, levelDeviation, shiftDeviation);
        return Of(Found, values.Count, Enumerable.Range(1, values.Count - 1), priorChance);

        (double Log, double Shift, double Variance) Found(int at)
        {
            var (left, halfLog, shift, variance) = evidence.At(at);
            return (-(left / 2) - halfLog, shift, variance);
        }
    }

    /// <summary>The same where all values share one deviation that is not known: it is summed out as well, so that few values are not believed too much.</summary>
    /// <param name="values">In order; at least two.</param>
    /// <param name="levelRatio">What is thought of the level before: normal about the first value. [deviations of a value]</param>
    /// <param name="shiftRatio">What is thought of a jump before: normal about 0. [deviations of a value]</param>
    /// <param name="variance">What is thought of a value's variance before.</param>
    /// <param name="freedom">Values' worth of that belief; above 0.</param>
    /// <param name="only">The one place where a jump may be; none: any.</param>
    /// <param name="priorChance">That there is one. [1]</param>
    /// <remarks>A scaled inverse chi-square of the variance beforehand; the evidence is then Student's t. Source: any text on Bayesian linear models; checked by brute force in the tests.</remarks>
    public static LevelChange OfUnknownDeviation(
        IReadOnlyList<double> values, double levelRatio, double shiftRatio, double variance, double freedom, int? only = null, double priorChance = 0.5)
    {
        if (values.Count < 2)
            throw new ArgumentException("A change needs two values or more.", nameof(values));
        var evidence = new LevelEvidence(values, [.. Enumerable.Repeat(1.0, values.Count)], levelRatio, shiftRatio);
        return Of(Found, values.Count, only is { } place ? [place] : Enumerable.Range(1, values.Count - 1), priorChance);

        (double Log, double Shift, double Variance) Found(int at)
        {
            var (left, halfLog, shift, ratio) = evidence.At(at);
            var scale = (freedom * variance) + left;
            return (-((freedom + values.Count) / 2 * Math.Log(scale)) - halfLog, shift, ratio * scale / (freedom + values.Count));
        }
    }

    /// <param name="found">Logarithm of the evidence for a jump at a place, its size and variance; where there is none at the values' count.</param>
    /// <param name="values">How many.</param>
    /// <param name="candidates">Places where a jump may be.</param>
    /// <param name="priorChance">That there is one. [1]</param>
    private static LevelChange Of(Func<int, (double Log, double Shift, double Variance)> found, int values, IEnumerable<int> candidates, double priorChance)
    {
        var steady = found(values).Log;
        var places = candidates.Select(at => (At: at, Found: found(at))).ToArray();
        var greatest = Math.Max(steady, places.Max(place => place.Found.Log));
        var none = (1 - priorChance) * Math.Exp(steady - greatest);
        double[] weights = [.. places.Select(place => priorChance / places.Length * Math.Exp(place.Found.Log - greatest))];
        var jumped = weights.Sum();
        var chance = jumped / (jumped + none);
        var mean = weights.Select((weight, i) => weight * places[i].Found.Shift).Sum() / jumped;
        var square = weights.Select((weight, i) => weight * (places[i].Found.Variance + (places[i].Found.Shift * places[i].Found.Shift))).Sum() / jumped;
        var up = weights.Select((weight, i) => weight * Normal.CDF(0, 1, places[i].Found.Shift / Math.Sqrt(places[i].Found.Variance))).Sum() / jumped;
        return new LevelChange(chance, places[Array.IndexOf(weights, weights.Max())].At, mean, Math.Sqrt(Math.Max(0, square - (mean * mean))), chance * up);
    }
}
