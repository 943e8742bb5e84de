using System.Runtime.CompilerServices;

namespace Silkwright.Light.Surface;

/// <summary>Legendre polynomials of the features and their products: what a surface is a sum of.</summary>
internal static class SurfaceTerms
{
    /// <summary>Highest degree in one feature alone; of products, three in all, or four of two features.</summary>
    public const int MostDegree = 4;

    /// <summary>Degrees of a feature, 0 included.</summary>
    public const int Degrees = MostDegree + 1;

    /// <summary>Places in the table of one feature's polynomials: feature × degrees + degree; 0 is the constant.</summary>
    public static int Place(int feature, int degree) => (feature * Degrees) + degree;

    public const int TableLength = SurfaceFeatures.Count * Degrees;

    /// <summary>All polynomials of all features of a place.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Table(SurfacePlace place, Span<double> table)
    {
        Span<double> features = stackalloc double[SurfaceFeatures.Count];
        SurfaceFeatures.Of(place, features);
        for (var feature = 0; feature < SurfaceFeatures.Count; feature++)
        {
            var x = features[feature];
            var (before, now) = (1.0, x);
            table[Place(feature, 0)] = before;
            table[Place(feature, 1)] = now;
            for (var degree = 1; degree < MostDegree; degree++)
            {
                (before, now) = (now, ((((2 * degree) + 1) * x * now) - (degree * before)) / (degree + 1));
                table[Place(feature, degree + 1)] = now;
            }
        }
    }

    /// <summary>All products worth trying, each by its up to three places in the table.</summary>
    public static IReadOnlyList<SurfaceTerm> Candidates()
    {
        var terms = new List<SurfaceTerm> { new(0, 0, 0) };
        for (var a = 0; a < SurfaceFeatures.Count; a++)
        {
            for (var degree = 1; degree <= MostDegree; degree++)
                terms.Add(new(Place(a, degree), 0, 0));
            for (var b = a + 1; b < SurfaceFeatures.Count; b++)
            {
                for (var of = 1; of < MostDegree; of++)
                {
                    for (var and = 1; of + and <= MostDegree; and++)
                        terms.Add(new(Place(a, of), Place(b, and), 0));
                }

                for (var c = b + 1; c < SurfaceFeatures.Count; c++)
                    terms.Add(new(Place(a, 1), Place(b, 1), Place(c, 1)));
            }
        }

        return terms;
    }
}
