using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Functions of many numbers at once, by fused multiply and add alone: the same to the last bit on every machine.</summary>
internal static class LaneMath
{
    /// <summary>ln x, right to 2 units in the last place for normal x above 0.</summary>
    /// <remarks>x = m 2^e with m from √½ to √2; ln m = 2 artanh((m − 1)/(m + 1)) by its series.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> Log(Vector512<float> x)
    {
        var bits = x.AsInt32();
        // 0x3F3504F3 is √½: what lies above it goes into the exponent.
        var exponent = (bits - Vector512.Create(0x3F3504F3)) >> 23;
        var mantissa = (bits - (exponent << 23)).AsSingle();
        var one = Vector512<float>.One;
        var s = (mantissa - one) / (mantissa + one);
        var t = s * s;
        var series = Vector512.FusedMultiplyAdd(t, Vector512.Create(2f / 9), Vector512.Create(2f / 7));
        series = Vector512.FusedMultiplyAdd(series, t, Vector512.Create(2f / 5));
        series = Vector512.FusedMultiplyAdd(series, t, Vector512.Create(2f / 3));
        series = Vector512.FusedMultiplyAdd(series, t, Vector512.Create(2f));
        return Vector512.FusedMultiplyAdd(Vector512.ConvertToSingle(exponent), Vector512.Create(0.693147180559945f), series * s);
    }

    /// <summary>cos πx for x from 0 to 1, right to 3·10⁻⁷.</summary>
    /// <remarks>sin of π(½ − x), by its Taylor series to the eleventh power.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> CosOfPi(Vector512<float> x)
    {
        var y = (Vector512.Create(0.5f) - x) * Vector512.Create(3.14159265358979f);
        var t = y * y;
        var series = Vector512.FusedMultiplyAdd(t, Vector512.Create(-2.50521084e-8f), Vector512.Create(2.75573192e-6f));
        series = Vector512.FusedMultiplyAdd(series, t, Vector512.Create(-1.98412698e-4f));
        series = Vector512.FusedMultiplyAdd(series, t, Vector512.Create(8.33333333e-3f));
        series = Vector512.FusedMultiplyAdd(series, t, Vector512.Create(-0.166666667f));
        return Vector512.FusedMultiplyAdd(series * t, y, y);
    }

    /// <summary>What rounding has carried past −1 or 1 brought back.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> Cosine(Vector512<float> x) => Vector512.Min(Vector512.Max(x, -Vector512<float>.One), Vector512<float>.One);
}
