using MathNet.Numerics.LinearAlgebra;

namespace Silkwright.Statistics;

/// <summary>Minimum of a smooth function of a few variables from its value and slope.</summary>
/// <remarks>
/// Broyden, Fletcher, Goldfarb and Shanno with halved steps (J. Nocedal and S. Wright, *Numerical Optimization*, ch. 6, from memory). The library's own search
/// asks for a slope at every trial step and stops short on criteria of many thousands; here a slope, which costs most, is worked out once a step.
/// </remarks>
public static class QuasiNewton
{
    private const int MostHalvings = 40;

    /// <summary>Share of the fall that the slope promises which a step must bring.</summary>
    private const double Enough = 1e-4;

    /// <summary>A function at a place.</summary>
    /// <param name="Value">What is made small.</param>
    /// <param name="Slope">Its slope there, asked for only where the search goes on.</param>
    public readonly record struct Place(double Value, Func<double[]> Slope);

    /// <summary>Searches from a start.</summary>
    /// <param name="function">Bends about as much along every variable as <paramref name="bend"/> says.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="bend">A guess of the function's second derivative along every variable. Above 0.</param>
    /// <param name="settled">Ends where a full step promises to bring less than this. Above 0.</param>
    /// <param name="mostSteps">Ends after as many steps at the latest.</param>
    public static double[] Minimum(Func<double[], Place> function, IReadOnlyList<double> start, double bend, double settled, int mostSteps)
    {
        ArgumentNullException.ThrowIfNull(function);
        var at = Vector<double>.Build.DenseOfEnumerable(start);
        var here = function([.. at]);
        var slope = Vector<double>.Build.Dense(here.Slope());
        var inverse = Matrix<double>.Build.DenseDiagonal(at.Count, at.Count, 1 / bend);
        for (var step = 0; step < mostSteps; step++)
        {
            var move = -(inverse * slope);
            var promise = -(move * slope);
            if (promise < settled)
                break;
            if (Tried(function, at, move, here.Value, promise) is not { } tried)
                break;
            var (there, value) = tried;
            var next = Vector<double>.Build.Dense(value.Slope());
            var (moved, turned) = (there - at, next - slope);
            (at, here, slope) = (there, value, next);
            var along = moved * turned;
            if (along > 1e-12 * moved.L2Norm() * turned.L2Norm())
                inverse = Updated(inverse, moved, turned, along);
        }

        return [.. at];
    }

    private static (Vector<double> At, Place Place)? Tried(Func<double[], Place> function, Vector<double> from, Vector<double> move, double value, double promise)
    {
        var share = 1.0;
        for (var i = 0; i < MostHalvings; i++)
        {
            var at = from + (share * move);
            var place = function([.. at]);
            if (place.Value <= value - (Enough * share * promise))
                return (at, place);

            // The lowest point of the parabola through both values with the slope known, within reason.
            var low = share * share * promise / (2 * (place.Value - value + (share * promise)));
            share = double.IsFinite(low) ? Math.Clamp(low, 0.1 * share, 0.5 * share) : 0.1 * share;
        }

        return null;
    }

    private static Matrix<double> Updated(Matrix<double> inverse, Vector<double> moved, Vector<double> turned, double along)
    {
        var bent = inverse * turned;
        return inverse
            + ((1 + (turned * bent / along)) / along * moved.OuterProduct(moved))
            - (1 / along * (bent.OuterProduct(moved) + moved.OuterProduct(bent)));
    }
}
