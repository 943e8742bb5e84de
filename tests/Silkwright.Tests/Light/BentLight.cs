using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>Straight light bent by clear threads: a scalar march in small steps, where the stuff changes Snell's law, or thrown back by lot with Fresnel's in its sines and tangents.</summary>
internal static class BentLight
{
    private const double StepUm = 0.05;
    private const int Rays = 40_000;

    /// <summary>Shares of the dose at a depth that have gone sideways by distances or more to one side.</summary>
    public static double[] SharesBeyond(StencilCase stencil, double[] xUm, double depthUm)
    {
        var random = new Random(5);
        var (beyond, all) = (new double[xUm.Length], 0.0);
        var pitch = stencil.Weave!.PitchUm;
        for (var ray = 0; ray < Rays; ray++)
        {
            var (sideways, dose) = Gone(stencil, pitch * random.NextDouble(), 2 * pitch * random.NextDouble(), depthUm, random);
            all += dose;
            // Half, as either side is alike.
            for (var k = 0; k < xUm.Length; k++)
                beyond[k] += Math.Abs(sideways) >= xUm[k] ? dose / 2 : 0;
        }

        return [.. beyond.Select(dose => dose / all)];
    }

    private static (double Sideways, double Dose) Gone(StencilCase stencil, double u, double v, double depthUm, Random random)
    {
        var (begin, z, du, dv, dz) = (u, 0.0, 0.0, 0.0, 1.0);
        var inside = WeaveByPlaces.IsThread(stencil, u, v, z);
        for (var steps = 0; z < depthUm && steps < 40_000; steps++)
        {
            var (nextU, nextV, nextZ) = (u + (StepUm * du), v + (StepUm * dv), z + (StepUm * dz));
            if (z < 0)
                return (0, 0);
            var after = WeaveByPlaces.IsThread(stencil, nextU, nextV, nextZ);
            // At the seams half way between crossings threads jump without a surface.
            var seam = Math.Round(u / stencil.Weave!.PitchUm) != Math.Round(nextU / stencil.Weave.PitchUm) || Math.Round(v / stencil.Weave.PitchUm) != Math.Round(nextV / stencil.Weave.PitchUm);
            if (after != inside && !seam)
            {
                var at = WeaveByPlaces.Nearest(stencil, nextU, nextV, nextZ)!.Value;
                var radius = Math.Sqrt((at.Across * at.Across) + (at.Height * at.Height));
                var (nu, nv, nz) = (at.Warp ? at.Across / radius : 0, at.Warp ? 0 : at.Across / radius, at.Height / radius);
                var on = (du * nu) + (dv * nv) + (dz * nz);
                if (on < 0)
                    (nu, nv, nz, on) = (-nu, -nv, -nz, -on);
                var ratio = inside ? stencil.Weave.Thread.RefractiveIndex / stencil.Coat.RefractiveIndex : stencil.Coat.RefractiveIndex / stencil.Weave.Thread.RefractiveIndex;
                var (arrives, goes) = (Math.Acos(Math.Min(1, on)), Math.Asin(Math.Min(1, ratio * Math.Sqrt(Math.Max(0, 1 - (on * on))))));
                var back = ratio * Math.Sin(arrives) >= 1 || random.NextDouble() < ThrownBack(arrives, goes);
                var along = back ? -2 * on : Math.Cos(goes) - (ratio * on);
                if (back)
                    (ratio, after, nextU, nextV, nextZ) = (1, inside, u, v, z);
                (du, dv, dz) = ((ratio * du) + (along * nu), (ratio * dv) + (along * nv), (ratio * dz) + (along * nz));
            }

            (u, v, z, inside) = (nextU, nextV, nextZ, after);
        }

        return z < depthUm ? (0, 0) : (u - begin, 1 / dz);
    }

    /// <summary>Fresnel in sines and tangents of the two angles.</summary>
    private static double ThrownBack(double arrives, double goes)
    {
        if (arrives < 1e-4)
            return Math.Pow((arrives - goes) / Math.Max(1e-12, arrives + goes), 2);
        var (across, along) = (Math.Sin(arrives - goes) / Math.Sin(arrives + goes), Math.Tan(arrives - goes) / Math.Tan(arrives + goes));
        return ((across * across) + (along * along)) / 2;
    }
}
