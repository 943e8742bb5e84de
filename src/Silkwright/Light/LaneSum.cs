using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>A sum of sixteen weights at a time, in double precision.</summary>
/// <remarks>Many sums lie in memory of their own, each within its lines of the cache: beside a photon's own figures there are no registers for them.</remarks>
internal struct LaneSum
{
    private Vector512<double> low;
    private Vector512<double> high;

    /// <summary>Bytes that hold so many sums, wherever they begin.</summary>
    public static int Room(int sums) => (sums * Unsafe.SizeOf<LaneSum>()) + StackPlace.Line;

    /// <summary>Sums at 0, in memory that is at hand.</summary>
    /// <param name="memory">As many bytes as <see cref="Room"/> says; it does not move.</param>
    public static Span<LaneSum> Within(Span<byte> memory)
    {
        var sums = MemoryMarshal.Cast<byte, LaneSum>(StackPlace.FromLine(memory));
        sums.Clear();
        return sums;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(Vector512<float> weights)
    {
        var (first, second) = Vector512.Widen(weights);
        low += first;
        high += second;
    }

    /// <summary>What sixteen weights have lost; exact, as the difference of two floats is in double precision.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void AddLoss(Vector512<float> before, Vector512<float> after)
    {
        var (beforeLow, beforeHigh) = Vector512.Widen(before);
        var (afterLow, afterHigh) = Vector512.Widen(after);
        low += beforeLow - afterLow;
        high += beforeHigh - afterHigh;
    }

    public readonly double Total() => Vector512.Sum(low + high);
}
