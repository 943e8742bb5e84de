using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Tells the tally of sixteen ways through the coat, place by place. docs/engines/light.md, equation 9.</summary>
/// <param name="t">The stencil.</param>
/// <param name="tally">What is told.</param>
/// <param name="room">As many bytes as <see cref="Room"/>. On the stack: on the heap, two threads' rooms come to lie in one line of the cache.</param>
internal readonly ref struct StencilTelling(StencilTables t, StencilTally tally, Span<byte> room)
{
    public const int Lanes = 16;

    /// <summary>Five figures of four bytes for each lane. [bytes]</summary>
    public const int Room = 5 * Lanes * sizeof(float);

    /// <summary>Places on a way between two events that its dose is told at: four halve the dose's errors for a tenth of the time.</summary>
    private const int PlacesTold = 4;

    private readonly Span<int> slices = MemoryMarshal.Cast<byte, int>(room).Slice(0, Lanes);
    private readonly Span<int> steps = MemoryMarshal.Cast<byte, int>(room).Slice(Lanes, Lanes);
    private readonly Span<float> sharesU = MemoryMarshal.Cast<byte, float>(room).Slice(2 * Lanes, Lanes);
    private readonly Span<float> sharesV = MemoryMarshal.Cast<byte, float>(room).Slice(3 * Lanes, Lanes);
    private readonly Span<float> told = MemoryMarshal.Cast<byte, float>(room).Slice(4 * Lanes, Lanes);

    /// <param name="lanes">A bit for each photon whose way lies in the coat.</param>
    /// <param name="far">How far it goes. [µm]</param>
    /// <param name="weight">Its weight.</param>
    /// <param name="begin">Drawn evenly from 0 to 1: where on the first part of the way the first place lies.</param>
    /// <param name="from">Where it starts: across warp and weft, depth, and across the edge. [µm]</param>
    /// <param name="direction">Its direction along each.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Tell(
        uint lanes, Vector512<float> far, Vector512<float> weight, Vector512<float> begin,
        (Vector512<float> U, Vector512<float> V, Vector512<float> Z, Vector512<float> X) from, (Vector512<float> U, Vector512<float> V, Vector512<float> Z, Vector512<float> X) direction)
    {
        var part = far * Vector512.Create(1f / PlacesTold);
        var (at, paths) = (part * begin, weight * part);
        for (var place = 0; place < PlacesTold; place++, at += part)
        {
            Tell(lanes, Vector512.FusedMultiplyAdd(at, direction.Z, from.Z), Vector512.FusedMultiplyAdd(at, direction.X, from.X),
                Vector512.FusedMultiplyAdd(at, direction.U, from.U), Vector512.FusedMultiplyAdd(at, direction.V, from.V), paths);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Tell(uint lanes, Vector512<float> z, Vector512<float> x, Vector512<float> u, Vector512<float> v, Vector512<float> paths)
    {
        var zero = Vector512<float>.Zero;
        var slice = Vector512.ConvertToInt32(Vector512.Min(Vector512.Max(z * Vector512.Create(t.DepthsPerUm), zero), Vector512.Create(StencilTally.Depths - 1f)));
        var step = SidewaysSteps.Of(x);
        var (shareU, shareV) = ((u * Vector512.Create(1 / t.Pitch)) + Vector512.Create(0.5f), (v * Vector512.Create(1 / t.Pitch)) + Vector512.Create(0.5f));
        var openShare = 0.5f - (t.Radius / t.Pitch);
        Vector512.CopyTo(slice, slices);
        Vector512.CopyTo(step, steps);
        Vector512.CopyTo(shareU, sharesU);
        Vector512.CopyTo(shareV, sharesV);
        Vector512.CopyTo(paths, told);
        for (; lanes != 0; lanes &= lanes - 1)
        {
            var lane = BitOperations.TrailingZeroCount(lanes);
            tally.Add(slices[lane], steps[lane], sharesU[lane], sharesV[lane], openShare, told[lane]);
        }
    }
}
