namespace Silkwright.Light.Surface;

/// <summary>Places spread evenly over what shops have.</summary>
/// <remarks>
/// A Kronecker sequence with the generalised golden ratio (x^(d+1) = x + 1; any text on quasi-Monte Carlo, from memory). What is told by orders of magnitude is even in its logarithm; air, film
/// and backing are dense near nothing, where most shops are; half of the places have no film under the image.
/// </remarks>
public static class SurfaceDesign
{
    /// <param name="count">How many.</param>
    /// <param name="seed">Another seed, other places.</param>
    public static IReadOnlyList<SurfacePlace> Places(int count, ulong seed)
    {
        var axes = SurfaceRange.Axes.Count;
        var ratio = 2.0;
        for (var i = 0; i < 60; i++)
            ratio = Math.Pow(1 + ratio, 1.0 / (axes + 1));
        var random = new Random(unchecked((int)(seed * 7919)));
        var shifts = Enumerable.Range(0, axes).Select(_ => random.NextDouble()).ToArray();
        var places = new List<SurfacePlace>();
        for (var number = 1L; places.Count < count; number++)
        {
            var place = default(SurfacePlace);
            for (var axis = 0; axis < axes; axis++)
            {
                var even = ((number * Math.Pow(ratio, -(axis + 1))) + shifts[axis]) % 1;
                place = SurfaceRange.Axes[axis].With(place, Value(SurfaceRange.Axes[axis], even));
            }

            if (SurfaceRange.Holds(place))
                places.Add(place);
        }

        return places;
    }

    private static double Value(SurfaceAxis axis, double even) => axis switch
    {
        { Name: "film under the image" } => axis.High * Squared(Math.Max(0, (2 * even) - 1)),
        { Low: 0, Unit: not "deg" } => axis.High * Squared(even),
        { Low: > 0 } when axis.High / axis.Low > 3 => axis.Low * Math.Pow(axis.High / axis.Low, even),
        _ => axis.Low + (even * (axis.High - axis.Low)),
    };

    private static double Squared(double x) => x * x;
}
