using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>A sum of sixteen weights at a time, in double precision.</summary>
internal struct LaneSum
{
    private Vector512<double> low;
    private Vector512<double> high;

    public void Add(Vector512<float> weights)
    {
        var (first, second) = Vector512.Widen(weights);
        low += first;
        high += second;
    }

    /// <summary>What sixteen weights have lost; exact, as the difference of two floats is in double precision.</summary>
    public void AddLoss(Vector512<float> before, Vector512<float> after)
    {
        var (beforeLow, beforeHigh) = Vector512.Widen(before);
        var (afterLow, afterHigh) = Vector512.Widen(after);
        low += beforeLow - afterLow;
        high += beforeHigh - afterHigh;
    }

    public readonly double Total() => Vector512.Sum(low + high);
}
