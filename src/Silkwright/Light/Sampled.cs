namespace Silkwright.Light;

/// <summary>A figure out of photons followed, and how far chance may have moved it.</summary>
/// <param name="Value">The figure.</param>
/// <param name="StandardError">Its standard error, in the figure's unit.</param>
public readonly record struct Sampled(double Value, double StandardError)
{
    /// <summary>Mean of batches and the standard error of it.</summary>
    internal static Sampled Of(ReadOnlySpan<double> batches)
    {
        var (sum, squares) = (0.0, 0.0);
        foreach (var batch in batches)
            sum += batch;
        var mean = sum / batches.Length;
        foreach (var batch in batches)
            squares += (batch - mean) * (batch - mean);
        return new(mean, Math.Sqrt(squares / (batches.Length - 1) / batches.Length));
    }

    public Sampled Times(double factor) => new(Value * factor, StandardError * Math.Abs(factor));
}
