using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Monte Carlo of light through flat layers: absorption, scattering, surfaces. docs/engines/light.md.</summary>
public static class SlabTransport
{
    /// <summary>Photons followed between two sums, and the grain of the work shared out.</summary>
    private const int BlockPhotons = 1 << 16;

    /// <summary>The instructions this machine does the work with; the result is the same with all.</summary>
    public static string InstructionSet => Vector512.IsHardwareAccelerated ? "AVX-512" : Vector256.IsHardwareAccelerated ? "AVX2" : Vector128.IsHardwareAccelerated ? "128 bits" : "portable";

    /// <summary>Follows the photons of a case.</summary>
    /// <param name="slab">The case.</param>
    /// <param name="threads">How many at once; none: one a core. The result is the same.</param>
    /// <param name="progress">Share done. [0..1]</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentOutOfRangeException">Layers or photons are none or too many, or a layer's value lies outside its range.</exception>
    public static SlabResult Of(SlabCase slab, int? threads = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        Check(slab);
        var tables = new SlabTables(slab);
        var blocks = (int)((slab.Photons + BlockPhotons - 1) / BlockPhotons);
        var tallies = new SlabTally[blocks];
        Shared.Run(blocks, threads, block =>
        {
            var photons = (int)Math.Min(BlockPhotons, slab.Photons - ((long)block * BlockPhotons));
            tallies[block] = PhotonBlock.Follow(tables, BlockKeys.Of(slab.Seed, (ulong)block), photons, cancel);
        }, progress, cancel);

        // Summed in the order of the blocks, whoever did them.
        var sum = new SlabTally { Absorbed = new double[slab.Layers.Count] };
        foreach (var tally in tallies)
            sum.Add(tally);
        return Result(slab, tables, sum);
    }

    private static SlabResult Result(SlabCase slab, SlabTables tables, SlabTally sum)
    {
        var n = (double)slab.Photons;
        return new SlabResult
        {
            // What is left of a beam of 1 when its photons enter with a weight in single precision.
            SpecularReflectance = 1 - tables.Entering,
            DiffuseReflectance = (sum.Out - sum.Below) / n,
            TotalTransmittance = sum.Below / n,
            UnscatteredTransmittance = sum.Unscattered / n,
            AbsorbedByLayer = [.. sum.Absorbed.Select(absorbed => absorbed / n)],
            Roulette = sum.Roulette / n,
            DiffuseReflectanceError = Error(sum.Out - sum.Below, sum.OutSquares - sum.BelowSquares),
            TotalTransmittanceError = Error(sum.Below, sum.BelowSquares),
            // Each has the full weight.
            UnscatteredTransmittanceError = Error(sum.Unscattered, sum.Unscattered * tables.Entering),
            AbsorbedError = Error(sum.Absorbed.Sum(), sum.AbsorbedSquares),
            Photons = slab.Photons,
        };

        double Error(double weights, double squares) => Math.Sqrt(Math.Max(0, (squares / n) - (weights / n * (weights / n))) / n);
    }

    private static void Check(SlabCase slab)
    {
        if (slab.Layers.Count is 0 or > SlabCase.MostLayers)
            throw new ArgumentOutOfRangeException(nameof(slab), slab.Layers.Count, $"There must be 1 to {SlabCase.MostLayers} layers.");
        if (slab.Photons is < 1 or > int.MaxValue * (long)BlockPhotons)
            throw new ArgumentOutOfRangeException(nameof(slab), slab.Photons, "At least one photon must be followed, and not more than anybody could.");
        foreach (var layer in slab.Layers)
        {
            if (!(layer is { RefractiveIndex: >= 1 and <= 3, AbsorptionPerCm: >= 0, ScatteringPerCm: >= 0, Anisotropy: > -1 and < 1, ThicknessUm: > 0 } && double.IsFinite(layer.ExtinctionPerCm)))
                throw new ArgumentOutOfRangeException(nameof(slab), layer, "A layer's value lies outside its range.");
            if (double.IsInfinity(layer.ThicknessUm) && (layer.ExtinctionPerCm == 0 || layer != slab.Layers[^1]))
                throw new ArgumentOutOfRangeException(nameof(slab), layer, "Only the lowest layer may be without an end, and it must absorb or scatter.");
        }

        if (slab is not { IndexAbove: >= 1 and <= 3, IndexBelow: >= 1 and <= 3 })
            throw new ArgumentOutOfRangeException(nameof(slab), slab, "A refractive index lies from 1 to 3.");
    }
}
