using Silkwright.Light;

namespace Silkwright.Bench;

/// <summary>The rival of <see cref="LightBench"/>: one layer without surfaces, a photon at a time, as the published method has it (Wang, Jacques and Zheng 1995), depth and cosine alone.</summary>
internal static class ScalarSlab
{
    private const double Weak = 0.04;
    private const double Stronger = 5;

    /// <summary>Share of a beam that comes out below.</summary>
    public static double Transmittance(LayerOptics layer, int photons, int seed)
    {
        var state = (ulong)seed;
        var depthOfLayer = layer.ExtinctionPerCm * layer.ThicknessUm * 1e-4;
        var albedo = layer.ScatteringPerCm / layer.ExtinctionPerCm;
        var g = layer.Anisotropy;
        var below = 0.0;
        for (var photon = 0; photon < photons; photon++)
        {
            var (depth, cosine, weight) = (0.0, 1.0, 1.0);
            while (true)
            {
                depth -= Math.Log(1 - Next(ref state)) * cosine;
                if (depth < 0)
                    break;
                if (depth > depthOfLayer)
                {
                    below += weight;
                    break;
                }

                weight *= albedo;
                if (weight < Weak)
                {
                    if (Next(ref state) * Stronger >= 1)
                        break;
                    weight *= Stronger;
                }

                var part = (1 - (g * g)) / (1 - g + (2 * g * Next(ref state)));
                var deflection = (1 + (g * g) - (part * part)) / (2 * g);
                cosine = (cosine * deflection)
                    + (Math.Sqrt((1 - (cosine * cosine)) * (1 - (deflection * deflection))) * Math.Cos(Math.PI * Next(ref state)));
                cosine = Math.Clamp(cosine, -1, 1);
            }
        }

        return below / photons;
    }

    /// <summary>SplitMix64, Steele, Lea and Flood 2014.</summary>
    private static double Next(ref ulong state)
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var word = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9UL;
            word = (word ^ (word >> 27)) * 0x94D049BB133111EBUL;
            return ((word ^ (word >> 31)) >> 11) * (1.0 / (1UL << 53));
        }
    }
}
