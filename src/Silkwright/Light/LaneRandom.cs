using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Sixteen streams of random numbers side by side, each begun by a count: xoshiro128+.</summary>
/// <remarks>
/// Source: Blackman and Vigna, Scrambled linear pseudorandom number generators, 2021; seeds mixed by the finaliser of MurmurHash3 (public domain).
/// Only the upper 24 bits are used: the lowest of this generator are weak.
/// </remarks>
internal struct LaneRandom
{
    private static readonly Vector512<float> Unit = Vector512.Create(1f / (1 << 24));

    private Vector512<uint> a;
    private Vector512<uint> b;
    private Vector512<uint> c;
    private Vector512<uint> d;

    /// <summary>Begins the chosen lanes anew at their counts.</summary>
    /// <param name="chosen">All bits set in the lanes to begin.</param>
    /// <param name="counts">A different number for each stream of one key.</param>
    /// <param name="keys">Four words made of the seed.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Begin(Vector512<uint> chosen, Vector512<uint> counts, ReadOnlySpan<uint> keys)
    {
        a = Vector512.ConditionalSelect(chosen, Mixed(counts ^ Vector512.Create(keys[0])), a);
        b = Vector512.ConditionalSelect(chosen, Mixed(counts ^ Vector512.Create(keys[1])), b);
        c = Vector512.ConditionalSelect(chosen, Mixed(counts ^ Vector512.Create(keys[2])), c);
        d = Vector512.ConditionalSelect(chosen, Mixed(counts ^ Vector512.Create(keys[3])), d);
    }

    /// <summary>The next number of each stream, from 0 and below 1, in steps of 2⁻²⁴.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector512<float> Next()
    {
        var result = a + d;
        var shifted = b << 9;
        c ^= a;
        d ^= b;
        b ^= c;
        a ^= d;
        c ^= shifted;
        d = (d << 11) | (d >>> 21);
        return Vector512.ConvertToSingle((result >>> 8).AsInt32()) * Unit;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<uint> Mixed(Vector512<uint> word)
    {
        word ^= word >>> 16;
        word *= 0x85EBCA6Bu;
        word ^= word >>> 13;
        word *= 0xC2B2AE35u;
        return word ^ (word >>> 16);
    }
}
