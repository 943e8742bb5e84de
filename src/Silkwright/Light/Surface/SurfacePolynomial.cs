using System.Runtime.CompilerServices;

namespace Silkwright.Light.Surface;

/// <summary>One figure of the surface: a sum of few terms.</summary>
/// <param name="Terms">Which.</param>
/// <param name="Coefficients">By term.</param>
internal sealed record SurfacePolynomial(IReadOnlyList<SurfaceTerm> Terms, IReadOnlyList<double> Coefficients)
{
    private readonly SurfaceTerm[] terms = [.. Terms];
    private readonly double[] coefficients = [.. Coefficients];

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Of(ReadOnlySpan<double> table)
    {
        var sum = 0.0;
        for (var i = 0; i < terms.Length; i++)
            sum += coefficients[i] * terms[i].Of(table);
        return sum;
    }
}
