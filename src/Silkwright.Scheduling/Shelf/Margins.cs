using System.Numerics;
using System.Runtime.InteropServices;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The sums over all points that the bound is made of, several points at a time.</summary>
internal static class Margins
{
    /// <summary>What the points pay an emulsion beyond what they cost it: the sum of min(0, cost - price). 0 or less.</summary>
    public static double Of(double[] costs, double[] prices)
    {
        var sum = Vector<double>.Zero;
        var c = MemoryMarshal.Cast<double, Vector<double>>(costs.AsSpan());
        var u = MemoryMarshal.Cast<double, Vector<double>>(prices.AsSpan());
        for (var at = 0; at < c.Length; at++)
            sum += Vector.Min(Vector<double>.Zero, c[at] - u[at]);
        var rest = 0.0;
        for (var j = c.Length * Vector<double>.Count; j < costs.Length; j++)
            rest += Math.Min(0, costs[j] - prices[j]);
        return Vector.Sum(sum) + rest;
    }

    /// <summary>Takes an amount from every point that an emulsion serves at these prices.</summary>
    public static void TakeServed(double[] costs, double[] prices, double[] from, double amount)
    {
        var c = MemoryMarshal.Cast<double, Vector<double>>(costs.AsSpan());
        var u = MemoryMarshal.Cast<double, Vector<double>>(prices.AsSpan());
        var f = MemoryMarshal.Cast<double, Vector<double>>(from.AsSpan());
        var take = new Vector<double>(amount);
        for (var at = 0; at < c.Length; at++)
            f[at] -= Vector.ConditionalSelect(Vector.LessThan(c[at], u[at]), take, Vector<double>.Zero);
        for (var j = c.Length * Vector<double>.Count; j < costs.Length; j++)
            from[j] -= costs[j] < prices[j] ? amount : 0;
    }
}
