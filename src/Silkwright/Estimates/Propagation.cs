namespace Silkwright.Estimates;

/// <summary>Carries intervals through a function of several inputs.</summary>
/// <remarks>
/// Each input goes to its low and its high end with the others at their value; the moves up and the moves down are added
/// as squares (root sum of squares, one at a time), so the interval may be lopsided. Assumes inputs that vary apart and a
/// function without strong interplay between them: docs/engines/estimates.md, equation 1. Method: ISO/IEC Guide 98-3
/// (GUM), clause 5, with finite moves in place of derivatives (recalled from memory).
/// </remarks>
public static class Propagation
{
    /// <summary>The function's value with the interval that follows from its inputs' intervals.</summary>
    /// <param name="function">Takes the inputs' values in the order given; must stay finite over their intervals.</param>
    /// <param name="inputs">The uncertain inputs.</param>
    /// <param name="floor">The least value the answer can physically have.</param>
    /// <param name="ceiling">The greatest value the answer can physically have.</param>
    public static Propagated Through(
        Func<IReadOnlyList<double>, double> function,
        IReadOnlyList<Uncertain> inputs,
        double floor = double.NegativeInfinity,
        double ceiling = double.PositiveInfinity)
    {
        var best = inputs.Select(input => input.Estimate.Value).ToArray();
        var value = Math.Clamp(function(best), floor, ceiling);
        double up = 0, down = 0;
        var widths = new double[inputs.Count];
        for (var i = 0; i < inputs.Count; i++)
        {
            var atLow = MovedTo(inputs[i].Estimate.Low, i);
            var atHigh = MovedTo(inputs[i].Estimate.High, i);
            var rise = Math.Max(0, Math.Max(atLow, atHigh) - value);
            var fall = Math.Max(0, value - Math.Min(atLow, atHigh));
            up += rise * rise;
            down += fall * fall;
            widths[i] = (rise * rise) + (fall * fall);
        }

        var total = widths.Sum();
        var drivers = inputs
            .Select((input, i) => new Driver(input.Name, total > 0 ? 100 * widths[i] / total : 0))
            .OrderByDescending(driver => driver.EffectPercent)
            .ToArray();
        var low = Math.Max(floor, value - Math.Sqrt(down));
        var high = Math.Min(ceiling, value + Math.Sqrt(up));
        return new Propagated(new Estimate(value, Math.Min(low, value), Math.Max(high, value), GroundOf(inputs, widths)), drivers);

        double MovedTo(double end, int i)
        {
            var moved = (double[])best.Clone();
            moved[i] = end;
            return Math.Clamp(function(moved), floor, ceiling);
        }
    }

    /// <summary>
    /// An answer rests on common practice when inputs that do make up more than half of its squared width; else it is a model.
    /// </summary>
    private static Ground GroundOf(IReadOnlyList<Uncertain> inputs, double[] widths)
    {
        var total = widths.Sum();
        var fromPractice = inputs
            .Select((input, i) => input.Estimate.Ground == Ground.CommonPractice ? widths[i] : 0)
            .Sum();
        return total > 0 && fromPractice > total / 2 ? Ground.CommonPractice : Ground.Model;
    }
}
