using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>A slab without surfaces in double precision, a photon at a time: Prahl, Keijzer, Jacques and Welch 1989. Dose from interactions, not from paths.</summary>
internal static class OnePhotonAtATime
{
    private const int Batches = 40;

    /// <summary>Doses in the lowest slice at distances beyond an edge.</summary>
    public static (double Dose, double Error)[] DosesBeyond(TurbidMedium medium, double thicknessUm, int slices, double[] xUm, int photons)
    {
        var random = new Random(7);
        double[][] batches = [.. xUm.Select(_ => new double[Batches])];
        var extinction = medium.ExtinctionPerCm * 1e-4;
        for (var photon = 0; photon < photons; photon++)
        {
            var (x, z, ux, uy, uz, weight) = (0.0, 0.0, 0.0, 0.0, 1.0, 1.0);
            while (weight > 1e-4)
            {
                var step = -Math.Log(1 - random.NextDouble()) / extinction;
                (x, z) = (x + (step * ux), z + (step * uz));
                if (z < 0 || z >= thicknessUm)
                    break;
                // Light that passed the film anywhere at or before the edge and went this far.
                for (var k = 0; z >= thicknessUm * (slices - 1) / slices && k < xUm.Length; k++)
                    batches[k][photon % Batches] += Math.Abs(x) >= xUm[k] ? weight / extinction / 2 : 0;
                weight *= medium.ScatteringPerCm / medium.ExtinctionPerCm;
                (ux, uy, uz) = Spin(medium.Anisotropy, ux, uy, uz, random);
            }
        }

        return [.. batches.Select(sums =>
        {
            double[] doses = [.. sums.Select(sum => sum / (photons / Batches) / (thicknessUm / slices))];
            var mean = doses.Average();
            return (mean, Math.Sqrt(doses.Sum(dose => (dose - mean) * (dose - mean)) / (Batches - 1) / Batches));
        })];
    }

    private static (double X, double Y, double Z) Spin(double g, double ux, double uy, double uz, Random random)
    {
        var part = (1 - (g * g)) / (1 - g + (2 * g * random.NextDouble()));
        var cosine = Math.Clamp((1 + (g * g) - (part * part)) / (2 * g), -1, 1);
        var sine = Math.Sqrt(1 - (cosine * cosine));
        var (sinAround, cosAround) = Math.SinCos(2 * Math.PI * random.NextDouble());
        if (Math.Abs(uz) > 0.99999)
            return (sine * cosAround, sine * sinAround, Math.Sign(uz) * cosine);
        var level = Math.Sqrt(1 - (uz * uz));
        return (
            (sine * ((ux * uz * cosAround) - (uy * sinAround)) / level) + (ux * cosine),
            (sine * ((uy * uz * cosAround) + (ux * sinAround)) / level) + (uy * cosine),
            (-sine * cosAround * level) + (uz * cosine));
    }
}
