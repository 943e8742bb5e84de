using System.Diagnostics;
using Silkwright.Light;
using Silkwright.Mesh;

namespace Silkwright.Bench;

/// <summary>How many photons a second are followed, beside a lean scalar program of the same method in the same run.</summary>
internal static class LightBench
{
    private static readonly SlabCase Slab = new() { Layers = [new LayerOptics(1, 10, 90, 0.75, 200)], Photons = 40_000_000, Seed = 1 };

    /// <summary>Three layers of Wang, Jacques and Zheng 1995.</summary>
    private static readonly SlabCase Three = new()
    {
        Layers = [new LayerOptics(1.37, 1, 100, 0.9, 1000), new LayerOptics(1.37, 1, 10, 0, 1000), new LayerOptics(1.37, 2, 10, 0.7, 2000)],
        Photons = 2_000_000,
        Seed = 1,
    };

    /// <summary>A fine dyed mesh, coated, under a point lamp.</summary>
    private static readonly StencilCase Stencil = new EdgeParts { Mesh = new MeshFabric(120, 34, Dyed: true), Photons = 4_000_000 }.Asked().Case;

    public static void Run()
    {
        Console.WriteLine($"Photons followed a second, with {SlabTransport.InstructionSet}; best of three. Scalar: a photon at a time in double precision, one thread.");
        Console.WriteLine();
        Console.WriteLine($"{"case",-14}{"one core",12}{"all cores",12}{"cores gain",12}{"scalar",12}{"times scalar",14}");
        _ = SlabTransport.Of(Slab with { Photons = 1_000_000 });
        _ = SlabTransport.Of(Three with { Photons = 100_000 });
        var (one, all) = (Best(() => SlabTransport.Of(Slab, threads: 1), Slab.Photons), Best(() => SlabTransport.Of(Slab), Slab.Photons));
        var (three, threeAll) = (Best(() => SlabTransport.Of(Three, threads: 1), Three.Photons), Best(() => SlabTransport.Of(Three), Three.Photons));
        _ = StencilTransport.Of(Stencil with { Photons = 200_000 });
        var (stencil, stencilAll) = (Best(() => StencilTransport.Of(Stencil, threads: 1), Stencil.Photons), Best(() => StencilTransport.Of(Stencil), Stencil.Photons));
        var through = 0.0;
        var scalar = Best(() => through = ScalarSlab.Transmittance(Slab.Layers[0], 4_000_000, 1), 4_000_000);
        Console.WriteLine($"{"slab",-14}{Millions(one),12}{Millions(all),12}{all / one,12:0.00}{Millions(scalar),12}{one / scalar,14:0.0}");
        Console.WriteLine($"{"three layers",-14}{Millions(three),12}{Millions(threeAll),12}{threeAll / three,12:0.00}");
        Console.WriteLine($"{"stencil edge",-14}{Millions(stencil),12}{Millions(stencilAll),12}{stencilAll / stencil,12:0.00}");
        Console.WriteLine();
        Console.WriteLine($"The scalar program's slab lets {through:0.0000} through, ours {SlabTransport.Of(Slab with { Photons = 4_000_000 }).TotalTransmittance:0.0000}; van de Hulst 1980 has 0.66096.");
    }

    private static string Millions(double perSecond) => $"{perSecond / 1e6:0.00} M";

    private static double Best(Action run, double photons)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i < 3; i++)
        {
            var watch = Stopwatch.StartNew();
            run();
            best = Math.Min(best, watch.Elapsed.TotalSeconds);
        }

        return photons / best;
    }
}
