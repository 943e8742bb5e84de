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
        double ceiling = double.PositiveInfinity) =>
        ThroughAll(x => [function(x)], inputs, floor, ceiling)[0];

    /// <summary>The same for a function with several answers of one kind, such as the parts of a cost.</summary>
    /// <inheritdoc cref="Through"/>
    public static IReadOnlyList<Propagated> ThroughAll(
        Func<IReadOnlyList<double>, double[]> function,
        IReadOnlyList<Uncertain> inputs,
        double floor = double.NegativeInfinity,
        double ceiling = double.PositiveInfinity)
    {
        var moved = inputs.Select(input => input.Estimate.Value).ToArray();
        var values = function(moved);
        var moves = new (double[] Low, double[] High)?[inputs.Count];
        for (var i = 0; i < inputs.Count; i++)
        {
            var estimate = inputs[i].Estimate;
            if (estimate.Low >= estimate.High)
                continue;
            moved[i] = estimate.Low;
            var low = function(moved);
            moved[i] = estimate.High;
            moves[i] = (low, function(moved));
            moved[i] = estimate.Value;
        }

        return [.. values.Select((_, part) => Gather(part))];

        Propagated Gather(int part)
        {
            var value = Math.Clamp(values[part], floor, ceiling);
            double up = 0, down = 0;
            var widths = new double[inputs.Count];
            for (var i = 0; i < inputs.Count; i++)
            {
                if (moves[i] is not { } move)
                    continue;
                var (atLow, atHigh) = (Math.Clamp(move.Low[part], floor, ceiling), Math.Clamp(move.High[part], floor, ceiling));
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
