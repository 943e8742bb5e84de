using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Henyey and Greenstein's law for up to sixteen media: cosine = forward − square·(top/(least + twice·u))². docs/engines/light.md, equation 3.</summary>
internal sealed class HenyeyGreenstein
{
    /// <summary>Anisotropies nearer to 0 than this scatter alike into all directions.</summary>
    private const double Isotropic = 1e-3;

    public HenyeyGreenstein(IReadOnlyList<double> anisotropies)
    {
        Spread = Tables.Of(anisotropies, g => Math.Abs(g) < Isotropic ? 1 : 0);
        double[] directed = [.. anisotropies.Select(g => Math.Abs(g) < Isotropic ? 0.5 : g)];
        Forward = Tables.Of(directed, g => (1 + (g * g)) / (2 * g));
        Square = Tables.Of(directed, g => 1 / (2 * g));
        Top = Tables.Of(directed, g => 1 - (g * g));
        Least = Tables.Of(directed, g => 1 - g);
        Twice = Tables.Of(directed, g => 2 * g);
    }

    /// <summary>1 where scattering goes alike into all directions.</summary>
    public Vector512<float> Spread { get; }

    public Vector512<float> Forward { get; }

    public Vector512<float> Square { get; }

    public Vector512<float> Top { get; }

    public Vector512<float> Least { get; }

    public Vector512<float> Twice { get; }

    /// <summary>Cosines of scattering angles from parts looked up for each lane and numbers drawn evenly.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> Deflection(
        Vector512<float> spread, Vector512<float> forward, Vector512<float> square, Vector512<float> top, Vector512<float> least, Vector512<float> twice, Vector512<float> turn)
    {
        var part = top / Vector512.FusedMultiplyAdd(twice, turn, least);
        var directed = Vector512.FusedMultiplyAdd(-square * part, part, forward);
        var alike = Vector512.GreaterThan(spread, Vector512<float>.Zero);
        return Vector512.ConditionalSelect(alike, (turn + turn) - Vector512<float>.One, LaneMath.Cosine(directed));
    }
}
