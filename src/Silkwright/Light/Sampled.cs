namespace Silkwright.Light;

/// <summary>A figure out of photons followed, and how far chance may have moved it.</summary>
/// <param name="Value">The figure.</param>
/// <param name="StandardError">Its standard error, in the figure's unit.</param>
public readonly record struct Sampled(double Value, double StandardError)
{
    /// <summary>Mean of batches and the standard error of it.</summary>
    internal static Sampled Of(IReadOnlyList<double> batches)
    {
        var mean = batches.Average();
        var squares = batches.Sum(batch => (batch - mean) * (batch - mean));
        return new(mean, Math.Sqrt(squares / (batches.Count - 1) / batches.Count));
    }

    public Sampled Times(double factor) => new(Value * factor, StandardError * Math.Abs(factor));
}
