using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Steps of distance from the edge: fine beside it, wider in proportion far from it, to 4 mm on each side.</summary>
internal static class SidewaysSteps
{
    /// <summary>Steps to each side.</summary>
    public const int Half = 320;

    /// <summary>Where steps begin to widen. [µm]</summary>
    private const double FineUm = 0.5;

    /// <summary>Widening from step to step. [1]</summary>
    private const double Widening = 0.03;

    /// <summary>Boundary between two steps. [µm]; 0 at <see cref="Half"/>.</summary>
    public static double BoundaryUm(int boundary) => FineUm * Math.Sinh((boundary - Half) * Widening);

    /// <summary>The boundary's number for a place, with the part of the step beyond it.</summary>
    public static double At(double xUm)
    {
        var near = Half + (Math.Asinh(xUm / FineUm) / Widening);
        if (!(near > 0))
            return 0;
        var i = Math.Min((int)near, (2 * Half) - 1);
        return i + Math.Clamp((xUm - BoundaryUm(i)) / (BoundaryUm(i + 1) - BoundaryUm(i)), 0, 1);
    }

    /// <summary>Which step each of sixteen distances lies in.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<int> Of(Vector512<float> xUm)
    {
        var zero = Vector512<float>.Zero;
        var share = Vector512.Abs(xUm) * Vector512.Create((float)(1 / FineUm));
        var size = LaneMath.Log(share + Vector512.Sqrt(Vector512.FusedMultiplyAdd(share, share, Vector512<float>.One))) * Vector512.Create((float)(1 / Widening));
        var signed = Vector512.ConditionalSelect(Vector512.LessThan(xUm, zero), -size, size);
        var step = Vector512.Floor(signed) + Vector512.Create((float)Half);
        return Vector512.ConvertToInt32(Vector512.Min(Vector512.Max(step, zero), Vector512.Create((2f * Half) - 1)));
    }
}
