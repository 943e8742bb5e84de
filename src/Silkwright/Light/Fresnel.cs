using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>What a smooth surface between two media throws back of unpolarised light. docs/engines/light.md, equation 4.</summary>
/// <remarks>Source: Fresnel's equations and Snell's law; any text on optics.</remarks>
public static class Fresnel
{
    /// <param name="from">Refractive index on the light's side. [1], 1 or more.</param>
    /// <param name="to">Refractive index on the other side. [1], 1 or more.</param>
    /// <param name="cosine">Cosine of the angle to the surface's normal. [1], 0 to 1.</param>
    /// <returns>Reflectance, and the cosine behind the surface (0 where all is thrown back).</returns>
    public static (double Reflectance, double CosineBehind) Of(double from, double to, double cosine)
    {
        var ratio = from / to;
        var behind = 1 - (ratio * ratio * (1 - (cosine * cosine)));
        if (behind <= 0)
            return (1, 0);
        var cosineBehind = Math.Sqrt(behind);
        var across = ((from * cosine) - (to * cosineBehind)) / ((from * cosine) + (to * cosineBehind));
        var along = ((from * cosineBehind) - (to * cosine)) / ((from * cosineBehind) + (to * cosine));
        return (((across * across) + (along * along)) / 2, cosineBehind);
    }

    /// <summary>The same for many at once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (Vector512<float> Reflectance, Vector512<float> CosineBehind) Of(Vector512<float> from, Vector512<float> to, Vector512<float> cosine)
    {
        var one = Vector512<float>.One;
        var ratio = from / to;
        var behind = one - (ratio * ratio * (one - (cosine * cosine)));
        var all = Vector512.LessThanOrEqual(behind, Vector512<float>.Zero);
        var cosineBehind = Vector512.Sqrt(Vector512.Max(behind, Vector512<float>.Zero));
        var (fromCosine, toCosine) = (from * cosine, to * cosine);
        var (fromBehind, toBehind) = (from * cosineBehind, to * cosineBehind);
        var across = (fromCosine - toBehind) / (fromCosine + toBehind);
        var along = (fromBehind - toCosine) / (fromBehind + toCosine);
        var reflectance = ((across * across) + (along * along)) * Vector512.Create(0.5f);
        return (Vector512.ConditionalSelect(all, one, reflectance), cosineBehind);
    }
}
