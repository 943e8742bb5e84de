using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;

namespace Silkwright.Tests.Exposure;

/// <summary>Exposure cases that several tests start from.</summary>
internal static class ExposureCases
{
    /// <summary>One coat a side on dyed 120/34 mesh under a metal halide lamp at 1 m: what the trade's usual times speak of.</summary>
    internal static ExposureCase Usual(EmulsionFamily family = EmulsionFamily.Diazo, LampKind lamp = LampKind.MetalHalide) => new()
    {
        Mesh = new MeshFabric(120, 34, Dyed: true),
        EomUm = Estimate.Within(5, 0.3, Ground.Model),
        StencilUm = Estimate.Within(57, 0.05, Ground.Model),
        Emulsion = new StencilEmulsion { Id = "any", Family = family },
        Lamp = new Lamp { Kind = lamp, DistanceMm = lamp == LampKind.MetalHalide ? 1000 : null },
        FinestLineUm = 100,
        FinestGapUm = 100,
    };

    private static readonly MeshFabric[] Meshes = [new(120, 34), new(90, 48), new(61, 64), new(43, 80)];

    internal static readonly Gen<ExposureCase> Any = Gen.Select(
        Gen.Select(Gen.Int[0, Meshes.Length - 1], Gen.Bool),
        Gen.Double[2, 40],
        Gen.Enum<EmulsionFamily>(),
        Gen.Enum<LampKind>(),
        Gen.Double[40, 500],
        Gen.Double[40, 500],
        Gen.Double[0, 2000],
        (mesh, eom, family, lamp, line, gap, hours) => new ExposureCase
        {
            Mesh = Meshes[mesh.Item1] with { Dyed = mesh.Item2 },
            EomUm = Estimate.Within(eom, 0.3, Ground.Model),
            StencilUm = Estimate.Within((1.55 * Meshes[mesh.Item1].ThreadUm) + eom, 0.08, Ground.Model),
            Emulsion = new StencilEmulsion { Id = "any", Family = family },
            Lamp = new Lamp { Kind = lamp, DistanceMm = 900, Hours = hours },
            FinestLineUm = line,
            FinestGapUm = gap,
        });
}
