using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Directions of sixteen photons.</summary>
internal static class LaneDirection
{
    /// <summary>Cosine and sine of an angle drawn evenly from the whole circle.</summary>
    /// <param name="turn">Drawn evenly from 0 to 1.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Vector512<float> Cosine, Vector512<float> Sine) Around(Vector512<float> turn)
    {
        var one = Vector512<float>.One;
        var twice = turn + turn;
        var second = Vector512.GreaterThanOrEqual(twice, one);
        var cosine = LaneMath.CosOfPi(Vector512.ConditionalSelect(second, twice - one, twice));
        var sine = Vector512.Sqrt(Vector512.Max(one - (cosine * cosine), Vector512<float>.Zero));
        // The second half turn runs from the far end back: cos π(1 + s) = −cos πs, sin likewise.
        return (Vector512.ConditionalSelect(second, -cosine, cosine), Vector512.ConditionalSelect(second, -sine, sine));
    }

    /// <summary>A direction turned by an angle to any side.</summary>
    /// <param name="u">Its first part.</param>
    /// <param name="v">Its second part.</param>
    /// <param name="w">Its third part.</param>
    /// <param name="deflection">Cosine of the angle.</param>
    /// <param name="turn">To which side; drawn evenly from 0 to 1.</param>
    /// <remarks>Two directions across the first: Duff and others, Building an orthonormal basis, revisited, J. Computer Graphics Techniques 6 (2017) 1. From memory.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Vector512<float> U, Vector512<float> V, Vector512<float> W) Turned(
        Vector512<float> u, Vector512<float> v, Vector512<float> w, Vector512<float> deflection, Vector512<float> turn)
    {
        var one = Vector512<float>.One;
        var (around, aside) = Around(turn);
        var sine = Vector512.Sqrt(Vector512.Max(one - (deflection * deflection), Vector512<float>.Zero));
        var (first, second) = (sine * around, sine * aside);
        var sign = Vector512.ConditionalSelect(Vector512.GreaterThanOrEqual(w, Vector512<float>.Zero), one, -one);
        var a = -(one / (sign + w));
        var b = u * v * a;
        var nu = (deflection * u) + (first * (one + (sign * u * u * a))) + (second * b);
        var nv = (deflection * v) + (first * (sign * b)) + (second * (sign + (v * v * a)));
        var nw = (deflection * w) - (first * (sign * u)) - (second * v);
        // Rounding lengthens a direction by a little every time: one step of Newton's brings it back.
        var length = (nu * nu) + (nv * nv) + (nw * nw);
        var back = Vector512.FusedMultiplyAdd(length, Vector512.Create(-0.5f), Vector512.Create(1.5f));
        return (nu * back, nv * back, nw * back);
    }
}
