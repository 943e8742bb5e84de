using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>What an exposure is asked of, typed: lamp, emulsion, mesh, coat and detail. What is left out is taken as usual and noted.</summary>
public static class ExposureQuestion
{
    public static readonly ChoiceField Lamp = ChoiceField.Of<LampKind>("lamp", "how the light leaves the lamp; a metal halide when not given");
    public static readonly ChoiceField Family = ChoiceField.Of<EmulsionFamily>("family", "family of the emulsion; dual-cure when not given");
    public static readonly QuantityField Count = MeshQuestion.Count with { Required = false, Meaning = "mesh count; 120/cm when not given" };
    public static readonly QuantityField Thread = MeshQuestion.Thread with { Required = false, Meaning = "thread diameter; two fifths of the pitch when not given" };
    public static readonly ChoiceField Dye = ChoiceField.Of<MeshDye>("mesh-colour", "colour of the mesh; white when not given");

    public static readonly QuantityField Eom = new("eom", QuantityKind.Thickness, "dry emulsion over mesh; as measured on the strips, or 3 to 15 um, when not given")
    {
        Sample = "8um",
        Least = 0,
        Most = InputLimits.MostEomUm,
        TakesRange = true,
    };

    public static readonly QuantityField Line = new("line", QuantityKind.Thickness, "finest printed line to hold; about the finest the mesh prints when not given")
    {
        Sample = "150um",
        Least = InputLimits.LeastDetailUm,
        Most = InputLimits.MostDetailUm,
    };

    public static readonly QuantityField Gap = Line with { Name = "gap", Meaning = "finest gap between printed areas to hold" };
    public static readonly QuantityField Distance = new("distance", QuantityKind.Length, "lamp to glass, of a lamp near a point") { Least = 1, Most = LampGeometry.MostDistanceMm };
    public static readonly QuantityField Hours = new("hours", QuantityKind.Number, "hours on the lamp") { Sample = "400", Least = 0, Most = InputLimits.MostLampHours };
    public static readonly ChoiceField Counts = ChoiceField.Of<ExposureCount>("counts", "what the machine counts; seconds when not given");

    public static readonly ChoiceField Way = ChoiceField.Of<Imaging>("imaging", "how the image comes onto the coat; a film in a vacuum frame when not given");

    public static readonly QuantityField Spot = new("spot", QuantityKind.Thickness, "width of a spot of written or projected light at half its height; as usual when not given") { Sample = "30um", Least = 1, Most = 300 };

    public static readonly QuantityField Peak = new("peak", QuantityKind.Wavelength, "wavelength of the lamp's strongest light, as printed on it; as usual for its kind when not given") { Least = 250, Most = 500 };
    private const double UmPerCm = 10_000;
    private const double UsualCountPerCm = 120;
    private const double UsualThreadPerPitch = 0.4;

    public static IReadOnlyList<QuestionField> Fields => [Lamp, Family, Count, Thread, Dye, Eom, Line, Gap, Distance, Hours, Counts, Way, Spot, Peak];

    /// <summary>The window that was asked for.</summary>
    /// <exception cref="InputProblemException">Something typed is wrong; carries every fault.</exception>
    public static (ExposureCase Case, ExposureWindow Window) Window(GivenTexts given)
    {
        var exposure = Read(given, [], out var assumed);
        given.ThrowIfAny();
        var window = ExposureModel.Window(exposure!);
        return (exposure!, window with { Notes = [.. assumed, .. window.Notes] });
    }

    /// <summary>The case that was typed; faults stay in <paramref name="given"/>, and then there is none.</summary>
    /// <param name="given">What was typed.</param>
    /// <param name="strips">Strips to learn from.</param>
    /// <param name="assumed">What was taken as usual.</param>
    internal static ExposureCase? Read(GivenTexts given, IReadOnlyList<StepTest> strips, out IReadOnlyList<Note> assumed)
    {
        var notes = new List<Note>();
        assumed = notes;
        var kind = given.Read<LampKind>(Lamp);
        var family = given.Read<EmulsionFamily>(Family);
        var (count, thread) = (given.Read(Count), given.Read(Thread));
        var dye = given.Read<MeshDye>(Dye);
        var eom = given.ReadEstimate(Eom);
        var (line, gap) = (given.Read(Line), given.Read(Gap));
        var (distance, hours) = (given.Read(Distance), given.Read(Hours));
        var counts = given.Read<ExposureCount>(Counts);
        var (way, spot, peak) = (given.Read<Imaging>(Way), given.Read(Spot), given.Read(Peak));
        if (distance < LampGeometry.LeastDistanceMm(kind ?? LampKind.MetalHalide))
        {
            given.Problems.Add(
                $"So near its light is no point's, and the inverse square says nothing: such a lamp stands {LampGeometry.LeastDistanceMm(kind ?? LampKind.MetalHalide):0} to {LampGeometry.MostDistanceMm:0} mm from the glass.",
                given.Where(Distance), "Give the distance from lamp to glass, or leave it out.");
        }

        var perCm = count ?? UsualCountPerCm;
        if (perCm * thread >= UmPerCm)
            given.Problems.Add("At this count the threads would overlap: no opening is left.", given.Where(Thread), "Check the count and the diameter, or leave the diameter out.");
        if (!given.Problems.IsEmpty)
            return null;
        Assume(kind is null, "The lamp is not told: a metal halide is taken.");
        Assume(family is null, "The family of the emulsion is not told: dual-cure is taken.");
        Assume(count is null, "The mesh is not told: 120 threads to the centimetre are taken.");
        Assume(dye is null, "The mesh is taken as white.");
        if (eom is null)
            notes.Add(StripCoat.Told(strips));
        var fabric = new MeshFabric(perCm, thread ?? (UsualThreadPerPitch * UmPerCm / perCm), dye == MeshDye.Dyed);
        var over = eom ?? StripCoat.EomUm(strips);
        return new ExposureCase
        {
            Mesh = fabric,
            EomUm = over,
            StencilUm = StencilThickness.Of(fabric, over),
            Emulsion = new StencilEmulsion { Id = "this emulsion", Family = family ?? EmulsionFamily.DualCure },
            Lamp = new Lamp { Id = "this lamp", Kind = kind ?? LampKind.MetalHalide, DistanceMm = distance, Hours = hours, Counts = counts ?? ExposureCount.Seconds, Imaging = way ?? Imaging.Film, SpotUm = spot, PeakNm = peak },
            FinestLineUm = line,
            FinestGapUm = gap,
            Tests = strips,
        };

        void Assume(bool missing, string text)
        {
            if (missing)
                notes.Add(new Note(text, Ground.CommonPractice));
        }
    }
}
