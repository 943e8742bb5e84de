using MathNet.Numerics.LinearAlgebra;

namespace Silkwright.Statistics.Mixed;

/// <summary>How surely a fit's ratios are told, by how the criterion bends about its least.</summary>
internal static class RatioTelling
{
    /// <summary>Step of a logarithm for differences of slopes.</summary>
    private const double Step = 1e-3;

    /// <param name="slope">The slope of criterion and beliefs over the variables of the search.</param>
    /// <param name="at">Where they are least; all above 0.</param>
    /// <returns>Variance of each variable's logarithm; none where the criterion does not bend upwards.</returns>
    public static double[]? LogVariances(Func<double[], double[]> slope, IReadOnlyList<double> at)
    {
        var bend = Matrix<double>.Build.Dense(at.Count, at.Count);
        for (var k = 0; k < at.Count; k++)
        {
            var (up, down) = (Along(k, Step), Along(k, -Step));
            for (var i = 0; i < at.Count; i++)
                bend[i, k] = (up[i] - down[i]) / (2 * Step);
        }

        // The criterion is minus twice a logarithm.
        bend = (bend + bend.Transpose()) / 4;
        var spectrum = bend.Evd(Symmetricity.Symmetric);
        return spectrum.EigenValues.All(value => value.Real > 0) ? [.. bend.Inverse().Diagonal()] : null;

        double[] Along(int moved, double by)
        {
            var place = at.ToArray();
            place[moved] *= Math.Exp(by);
            return [.. slope(place).Zip(place, (s, p) => s * p)];
        }
    }
}
