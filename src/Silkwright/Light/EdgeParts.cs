using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Light;

/// <summary>What is known of a screen in the exposure unit; the rest is assumed from common practice and said.</summary>
public sealed record EdgeParts
{
    /// <summary>Coat over the mesh, as a share of the fabric, where it is not given: textile coats have 10 to 20 %. Common practice. [1]</summary>
    private const double UsualEomShare = 0.15;

    public required MeshFabric Mesh { get; init; }

    /// <summary>Angle of the threads to the edge. [degrees]</summary>
    public double MeshAngleDegrees { get; init; }

    public EmulsionFamily? Family { get; init; }

    /// <summary>[1]</summary>
    public double? CoatIndex { get; init; }

    /// <summary>[1/cm]</summary>
    public double? CoatAbsorptionPerCm { get; init; }

    /// <summary>[1/cm]</summary>
    public double? CoatScatteringPerCm { get; init; }

    /// <summary>[1]</summary>
    public double? CoatAnisotropy { get; init; }

    /// <summary>Coat over the mesh on the print side. [µm]</summary>
    public double? PrintSideUm { get; init; }

    /// <summary>Coat over the mesh on the squeegee side. [µm]</summary>
    public double? SqueegeeSideUm { get; init; }

    /// <summary>None: a small source of the usual width.</summary>
    public LampLight? Lamp { get; init; }

    /// <summary>[1]</summary>
    public double? FilmIndex { get; init; }

    /// <summary>Film between image and coat, where it lies the wrong way round. [µm]</summary>
    public double CarrierUm { get; init; }

    /// <summary>Air between film and coat. [µm]</summary>
    public double? GapUm { get; init; }

    /// <summary>[1]</summary>
    public double? BackingReflectance { get; init; }

    public FilmImage Image { get; init; } = FilmImage.Edge;

    public required long Photons { get; init; }

    public ulong Seed { get; init; } = 1;

    /// <summary>The case, what of it moves the answer, and what was assumed.</summary>
    public EdgeAsked Asked()
    {
        var notes = new List<Note>();
        var assumed = new List<AssumedInput>();
        var family = Family ?? EmulsionFamily.DualCure;
        if (Family is null && (CoatAbsorptionPerCm is null || CoatScatteringPerCm is null))
            notes.Add(new("The kind of emulsion is not given: dual-cure is taken.", Ground.CommonPractice));
        var coat = new TurbidMedium(
            CoatIndex ?? UsualOptics.CoatIndex.Value,
            CoatAbsorptionPerCm ?? Assume("the coat's absorption", UsualOptics.CoatAbsorption(family), (stencil, value) => stencil with { Coat = stencil.Coat with { AbsorptionPerCm = value } }),
            CoatScatteringPerCm ?? Assume("the coat's scattering", UsualOptics.CoatScattering(family), (stencil, value) => stencil with { Coat = stencil.Coat with { ScatteringPerCm = value } }),
            CoatAnisotropy ?? Assume("how far forward the coat scatters", UsualOptics.CoatAnisotropy, (stencil, value) => stencil with { Coat = stencil.Coat with { Anisotropy = value } }));
        var thread = UsualOptics.Thread(Mesh.Dyed);
        thread = thread with
        {
            AbsorptionPerCm = Assume("the threads' absorption", UsualOptics.ThreadAbsorption(Mesh.Dyed), (stencil, value) => WithThread(stencil, of => of with { AbsorptionPerCm = value })),
            ScatteringPerCm = Assume("the threads' scattering", UsualOptics.ThreadScattering, (stencil, value) => WithThread(stencil, of => of with { ScatteringPerCm = value })),
        };
        notes.Add(new("What coat and threads do with the light is common practice, and wide: nobody has published it for real coats. The intervals hold that; a step test narrows it.", Ground.CommonPractice));
        var weave = StencilWeave.Of(Mesh, thread, MeshAngleDegrees);
        if (PrintSideUm is null)
            notes.Add(new($"The coat over the mesh is not given: {Figures.Length(UsualEomShare * weave.ThicknessUm)} is taken, {UsualEomShare * 100:0} % of the fabric.", Ground.CommonPractice));
        if (Lamp is null)
            notes.Add(new($"The lamp is not given: a small source at a distance, its light within {LampLight.UsualPointDegrees:0} degrees.", Ground.CommonPractice));
        var stencil = new StencilCase
        {
            Lamp = Lamp ?? new LampLight { HalfAngleDegrees = LampLight.UsualPointDegrees },
            Image = Image,
            FilmIndex = FilmIndex ?? 1.5,
            CarrierUm = CarrierUm,
            GapUm = GapUm ?? Assume("air between film and coat", UsualOptics.GapUm, (of, value) => of with { GapUm = value }),
            Coat = coat,
            PrintSideUm = PrintSideUm ?? (UsualEomShare * weave.ThicknessUm),
            Weave = weave,
            SqueegeeSideUm = SqueegeeSideUm ?? Assume("the coat on the squeegee side", UsualOptics.SqueegeeSideUm, (of, value) => of with { SqueegeeSideUm = value }),
            BackingReflectance = BackingReflectance ?? UsualOptics.BlackBlanket.Value,
            Photons = Photons,
            Seed = Seed,
        };
        return new EdgeAsked(stencil, assumed, notes);

        double Assume(string name, Estimate estimate, Func<StencilCase, double, StencilCase> with)
        {
            assumed.Add(new AssumedInput(new Uncertain(name, estimate), with));
            return estimate.Value;
        }

        static StencilCase WithThread(StencilCase stencil, Func<TurbidMedium, TurbidMedium> changed) =>
            stencil with { Weave = stencil.Weave! with { Thread = changed(stencil.Weave!.Thread) } };
    }
}
