namespace Silkwright.Light.Surface;

/// <summary>A product of up to three polynomials, each by its place in <see cref="SurfaceTerms"/>' table; 0 is 1.</summary>
internal readonly record struct SurfaceTerm(int A, int B, int C)
{
    public double Of(ReadOnlySpan<double> table) => table[A] * table[B] * table[C];
}
