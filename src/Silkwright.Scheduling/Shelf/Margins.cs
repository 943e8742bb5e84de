using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// The sums over all points that the bound is made of, sixteen points at a time in the same lanes on every machine, so that a sum is the same to the
/// last digit whatever instructions it has.
/// </summary>
internal static class Margins
{
    private static int Lanes => Vector512<double>.Count;

    /// <summary>What the points pay an emulsion beyond what they cost it: the sum of min(0, cost - price). 0 or less.</summary>
    public static double Of(double[] costs, double[] prices)
    {
        var (one, two) = (Vector512<double>.Zero, Vector512<double>.Zero);
        var c = MemoryMarshal.Cast<double, Vector512<double>>(costs.AsSpan());
        var u = MemoryMarshal.Cast<double, Vector512<double>>(prices.AsSpan())[..c.Length];
        var at = 0;
        for (; at + 1 < c.Length; at += 2)
        {
            one += Vector512.Min(Vector512<double>.Zero, c[at] - u[at]);
            two += Vector512.Min(Vector512<double>.Zero, c[at + 1] - u[at + 1]);
        }

        if (at < c.Length)
            one += Vector512.Min(Vector512<double>.Zero, c[at] - u[at]);
        var rest = 0.0;
        for (var j = c.Length * Lanes; j < costs.Length; j++)
            rest += Math.Min(0, costs[j] - prices[j]);
        return Vector512.Sum(one + two) + rest;
    }

    /// <summary>Takes an amount from every point that an emulsion serves at these prices.</summary>
    public static void TakeServed(double[] costs, double[] prices, double[] from, double amount)
    {
        var c = MemoryMarshal.Cast<double, Vector512<double>>(costs.AsSpan());
        var u = MemoryMarshal.Cast<double, Vector512<double>>(prices.AsSpan())[..c.Length];
        var f = MemoryMarshal.Cast<double, Vector512<double>>(from.AsSpan())[..c.Length];
        var take = Vector512.Create(amount);
        for (var at = 0; at < c.Length; at++)
            f[at] -= Vector512.ConditionalSelect(Vector512.LessThan(c[at], u[at]), take, Vector512<double>.Zero);
        for (var j = c.Length * Lanes; j < costs.Length; j++)
            from[j] -= costs[j] < prices[j] ? amount : 0;
    }
}
