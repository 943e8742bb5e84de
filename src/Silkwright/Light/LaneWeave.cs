using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Sixteen photons among the threads of a weave. docs/engines/light.md, equation 10.</summary>
internal static class LaneWeave
{
    /// <summary>A distance that is never reached.</summary>
    public static readonly Vector512<float> Never = Vector512.Create(float.PositiveInfinity);

    /// <summary>To the surface of a round thread that runs across: out of it from within, into it from outside; never where it is missed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> ToThread(
        Vector512<float> across, Vector512<float> height, Vector512<float> acrossDirection, Vector512<float> heightDirection, Vector512<float> radius, Vector512<float> inside)
    {
        var zero = Vector512<float>.Zero;
        var square = Vector512.Max(Vector512.FusedMultiplyAdd(acrossDirection, acrossDirection, heightDirection * heightDirection), Vector512.Create(1e-12f));
        var towards = Vector512.FusedMultiplyAdd(across, acrossDirection, height * heightDirection);
        var distance = Vector512.FusedMultiplyAdd(across, across, Vector512.FusedMultiplyAdd(height, height, -(radius * radius)));
        var discriminant = Vector512.FusedMultiplyAdd(towards, towards, -(square * distance));
        var root = Vector512.Sqrt(Vector512.Max(discriminant, zero));
        var meets = inside | (Vector512.GreaterThan(discriminant, zero) & Vector512.LessThan(towards, zero));
        var far = Vector512.Max((Vector512.ConditionalSelect(inside, root, -root) - towards) / square, zero);
        return Vector512.ConditionalSelect(meets, far, Never);
    }

    /// <summary>To the boundary of the field that the photon is in, which is half way to the next thread.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> ToField(Vector512<float> place, Vector512<float> direction, Vector512<float> halfPitch)
    {
        var size = Vector512.Max(Vector512.Abs(direction), Vector512.Create(1e-12f));
        var ahead = Vector512.ConditionalSelect(Vector512.GreaterThan(direction, Vector512<float>.Zero), halfPitch - place, halfPitch + place);
        return Vector512.Max(ahead, Vector512<float>.Zero) / size;
    }

    /// <summary>Number of the field that a place lies in.</summary>
    public static Vector512<float> FieldOf(Vector512<float> place, float pitch) => Vector512.Floor((place * Vector512.Create(1 / pitch)) + Vector512.Create(0.5f));

    /// <summary>Whether a place is within a thread.</summary>
    public static Vector512<float> Within(Vector512<float> across, Vector512<float> height, Vector512<float> radius) =>
        Vector512.LessThan(Vector512.FusedMultiplyAdd(across, across, height * height), radius * radius);
}
