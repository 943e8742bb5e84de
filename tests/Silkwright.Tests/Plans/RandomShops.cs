using CsCheck;
using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>Shops and jobs of every shape that the documents allow.</summary>
internal static class RandomShops
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    private static readonly Gen<InkKind> Ink = Gen.OneOf(Enum.GetValues<InkKind>());

    private static readonly Gen<MeshFabric> Fabric =
        from mesh in Gen.OneOf((24.0, 140.0), (43, 80), (61, 64), (77, 55), (90, 48), (120, 34), (140, 34))
        from dyed in Gen.Bool
        select new MeshFabric(mesh.Item1, mesh.Item2, dyed);

    private static readonly Gen<StencilEmulsion> Emulsion =
        from family in Gen.OneOf(EmulsionFamily.Diazo, EmulsionFamily.DualCure, EmulsionFamily.Photopolymer, EmulsionFamily.CapillaryFilm)
        from id in Gen.Int[0, 1_000_000]
        from solids in Gen.Double[20, 52]
        from saysWhatItResists in Gen.Bool
        from resists in Ink.Array[0, 4]
        from potLife in Gen.Double[5, 60]
        from sensitised in Gen.Int[0, 120]
        from received in Gen.Int[0, 1200]
        from celsius in Gen.Double[2, 38]
        from known in Gen.Bool.Array[7]
        from sensitive in Gen.OneOf((300.0, 335.0), (300, 380), (340, 430), (420, 480))
        from cleaner in Gen.OneOf(Enum.GetValues<ResistanceGrade>())
        select new StencilEmulsion
        {
            Id = $"emulsion {id}",
            Family = family,
            SolidsPercent = known[0] ? solids : null,
            Resists = saysWhatItResists ? resists : null,
            PotLifeDays = known[1] ? potLife : null,
            SensitisedOn = known[2] && family != EmulsionFamily.Photopolymer && family != EmulsionFamily.CapillaryFilm ? Today.AddDays(-sensitised) : null,
            ReceivedOn = known[3] ? Today.AddDays(-Math.Max(received, known[2] ? sensitised : 0)) : null,
            StoredCelsius = known[4] ? celsius : null,
            SensitiveFromNm = known[5] ? sensitive.Item1 : null,
            SensitiveToNm = known[5] ? sensitive.Item2 : null,
            ResistsCleaner = known[6] ? new GivenResistance(cleaner, Ground.Datasheet) : null,
        };

    private static readonly Gen<Lamp> Lamps =
        from kind in Gen.OneOf(Enum.GetValues<LampKind>())
        from distance in Gen.Double[50, 1500]
        from hours in Gen.Double[0, 3000]
        select new Lamp { Id = kind.ToString(), Kind = kind, DistanceMm = distance, Hours = hours };

    public static readonly Gen<Shop> Shop =
        from meshes in Fabric.Array[0, 4]
        from emulsions in Emulsion.Array[0, 6]
        from lamps in Lamps.Array[0, 2]
        from edge in Gen.Double[0.4, 2]
        from celsius in Gen.Double[10, 40]
        from humidity in Gen.Double[10, 98]
        from light in Gen.OneOf<RoomLight?>(null, RoomLight.Yellow, RoomLight.Filtered, RoomLight.White)
        from pace in Gen.Double[0.1, 60]
        from laid in Gen.Bool
        from wash in Gen.OneOf<PressWash?>(null, PressWash.None, PressWash.Water, PressWash.Solvent)
        select new Shop
        {
            Meshes = [.. meshes.Distinct()],
            Emulsions = laid ? Laid([.. emulsions.DistinctBy(e => e.Id)]) : [.. emulsions.DistinctBy(e => e.Id)],
            Lamps = lamps,
            Troughs = [new Trough("edge", edge)],
            Room = new Room { Celsius = celsius, HumidityPercent = humidity, Light = light },
            ScreensPerDay = pace,
            PressWash = wash,
        };

    /// <summary>Its films laid with its first liquid, whether the pair makes sense or not.</summary>
    private static StencilEmulsion[] Laid(StencilEmulsion[] emulsions)
    {
        var liquid = emulsions.FirstOrDefault(emulsion => emulsion.Family != EmulsionFamily.CapillaryFilm);
        return [.. emulsions.Select(emulsion => emulsion.Family == EmulsionFamily.CapillaryFilm ? emulsion with { LaidWith = liquid } : emulsion)];
    }

    private static readonly Gen<JobColour> Colour =
        from ink in Ink
        from role in Gen.OneOf(Enum.GetValues<InkRole>())
        from kind in Gen.OneOf(Enum.GetValues<WorkKind>())
        from typed in Gen.Bool
        from line in Gen.Double[80, 2000]
        from lpi in Gen.Double[25, 75]
        from halftone in Gen.Bool
        from impressions in Gen.Int[1, 3]
        select new JobColour
        {
            Name = "colour",
            Ink = ink,
            Role = role,
            Kind = kind,
            Needs = typed ? new TypedNeeds(FinestLineUm: line, RulingLpi: halftone ? lpi : null) : null,
            ImpressionsPerGarment = impressions,
        };

    public static readonly Gen<Job> Job =
        from run in Gen.Long[1, 80_000]
        from colours in Colour.Array[1, 3]
        select new Job { Name = "job", Date = Today, Run = run, Colours = colours };
}
