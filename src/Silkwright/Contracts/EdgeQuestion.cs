using Silkwright.Emulsion;
using Silkwright.Light;

namespace Silkwright.Contracts;

/// <summary>What <c>light edge</c> asks for.</summary>
public static class EdgeQuestion
{
    /// <summary>More take an hour.</summary>
    public const double MostPhotons = 1e9;

    /// <summary>Standard errors of a few thousandths of the dose.</summary>
    public const double UsualPhotons = 1e6;

    public static readonly ChoiceField MeshColour = ChoiceField.Of<ThreadColour>("mesh-colour", "colour of the mesh; white when not given");

    public static readonly QuantityField MeshAngle = new("mesh-angle", QuantityKind.Angle, "angle of the threads to the edge; 0 when not given") { Least = -180, Most = 180 };

    public static readonly ChoiceField Family = ChoiceField.Of<EmulsionFamily>("family", "kind of emulsion; dual-cure when not given");

    public static readonly QuantityField Absorption = SlabQuestion.Absorption with { Meaning = "absorption coefficient of the coat; by its kind when not given" };

    public static readonly QuantityField Scattering = SlabQuestion.Scattering with { Meaning = "scattering coefficient of the coat; by its kind when not given" };

    public static readonly QuantityField Anisotropy = SlabQuestion.Anisotropy with { Meaning = "mean cosine of scattering in the coat; 0.85 when not given" };

    public static readonly QuantityField Index = SlabQuestion.Index with { Meaning = "refractive index of the coat; 1.52 when not given" };

    public static readonly QuantityField PrintSide = new("eom", QuantityKind.Thickness, "coat over the mesh on the print side; 15 % of the fabric when not given") { Sample = "12um", Least = 0, Most = InputLimits.MostEomUm };

    public static readonly QuantityField SqueegeeSide = new("squeegee-side", QuantityKind.Thickness, "coat over the mesh on the squeegee side; 3 um when not given") { Sample = "3um", Least = 0, Most = InputLimits.MostEomUm };

    public static readonly ChoiceField Lamp = ChoiceField.Of<LampShape>("lamp", "point at a distance, bank of tubes, array of diodes, or straight light to compare with; point when not given");

    public static readonly QuantityField HalfAngle = new("half-angle", QuantityKind.Angle, "half angle of the lamp's light at the glass; 5 for a point, 60 for tubes, 30 for diodes when not given") { Least = 0, Most = 90 };

    public static readonly QuantityField Distance = new("lamp-distance", QuantityKind.Length, "lamp to glass; with --lamp-source or --lamp-pitch") { Above = 0, Most = 10_000 };

    public static readonly QuantityField Source = new("lamp-source", QuantityKind.Length, "width of a point lamp, its reflector included, in place of the half angle") { Sample = "30mm", Least = 0, Most = 2_000 };

    public static readonly QuantityField Pitch = new("lamp-pitch", QuantityKind.Length, "diode to diode, where single ones shall be told apart") { Sample = "15mm", Least = 0, Most = 500 };

    public static readonly QuantityField Slant = new("slant", QuantityKind.Angle, "slant of the light across the edge, away from the lamp's middle; 0 when not given") { Least = -80, Most = 80 };

    public static readonly QuantityField Gap = new("gap", QuantityKind.Thickness, "air between film and coat; 10 um when not given") { Sample = "10um", Least = 0, Most = 2_000 };

    public static readonly QuantityField FilmBetween = new("film-between", QuantityKind.Thickness, "film between image and coat: its thickness where it lies the wrong way round; 0 when not given") { Least = 0, Most = 2_000 };

    public static readonly QuantityField FilmIndex = new("film-n", QuantityKind.Number, "refractive index of the film; 1 for a mask printed on the coat; 1.5 when not given") { Sample = "1.5", Least = 1, Most = 3 };

    public static readonly QuantityField Backing = new("backing", QuantityKind.Share, "share of light that the backing throws back; 5 %, a black blanket, when not given") { Sample = "5%", Least = 0, Most = 100 };

    public static readonly ChoiceField Image = ChoiceField.Of<FilmImageKind>("image", "what is on the film: edge, black line or clear gap; edge when not given");

    public static readonly QuantityField Width = new("width", QuantityKind.Thickness, "width of the line or gap") { Sample = "100um", Above = 0, Most = 10_000 };

    public static readonly QuantityField Photons = SlabQuestion.Photons with { Meaning = "photons followed; 1e6 when not given", Least = 1_000, Most = MostPhotons };

    public static IReadOnlyList<QuestionField> Fields =>
    [
        MeshQuestion.Count, MeshQuestion.Thread, MeshQuestion.FabricThickness, MeshColour, MeshAngle, Family, PrintSide, SqueegeeSide, Absorption, Scattering, Anisotropy, Index,
        Lamp, HalfAngle, Distance, Source, Pitch, Slant, Gap, FilmBetween, FilmIndex, Backing, Image, Width, Photons, SlabQuestion.Seed,
    ];

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static EdgeAsked Read(GivenTexts given)
    {
        var mesh = MeshQuestion.Read(given, MeshQuestion.Count);
        var parts = new EdgeParts
        {
            Mesh = mesh with { Dyed = given.Read<ThreadColour>(MeshColour) == ThreadColour.Dyed },
            MeshAngleDegrees = given.Read(MeshAngle) ?? 0,
            Family = given.Read<EmulsionFamily>(Family),
            CoatAbsorptionPerCm = given.Read(Absorption),
            CoatScatteringPerCm = given.Read(Scattering),
            CoatAnisotropy = given.Read(Anisotropy),
            CoatIndex = given.Read(Index),
            PrintSideUm = given.Read(PrintSide),
            SqueegeeSideUm = given.Read(SqueegeeSide),
            Lamp = ReadLamp(given),
            GapUm = given.Read(Gap),
            CarrierUm = given.Read(FilmBetween) ?? 0,
            FilmIndex = given.Read(FilmIndex),
            BackingReflectance = given.Read(Backing) / 100,
            Image = ReadImage(given),
            Photons = (long)(given.Read(Photons) is { } many and not double.NaN ? many : UsualPhotons),
            Seed = (ulong)(given.Read(SlabQuestion.Seed) is { } begin and not double.NaN ? begin : 1),
        };
        given.ThrowIfAny();
        return parts.Asked();
    }

    private static LampLight? ReadLamp(GivenTexts given)
    {
        var shape = given.Read<LampShape>(Lamp);
        var (halfAngle, distance, source, pitch, slant) = (given.Read(HalfAngle), given.Read(Distance), given.Read(Source), given.Read(Pitch), given.Read(Slant));
        if (source is not null)
            given.NotBoth(HalfAngle, Source);
        foreach (var needs in new[] { Source, Pitch }.Where(field => given.Has(field) && distance is null))
            given.Problems.Add($"{given.Where(needs)} says an angle only with the lamp's distance.", given.Where(Distance), $"Add it, for example {given.Where(Distance)} 800mm.");
        if (shape is null && halfAngle is null && source is null && pitch is null && slant is null)
            return null;
        var light = EdgeLamp.Of(shape ?? LampShape.Point, halfAngle, distance, source, pitch) with { SlantDegrees = slant ?? 0 };
        if (!light.IsAboveGlass)
            given.Problems.Add("The lamp's light would come from below the glass.", given.Where(Slant), "Give a smaller slant or a smaller half angle.");
        return light;
    }

    private static FilmImage ReadImage(GivenTexts given)
    {
        var kind = given.Read<FilmImageKind>(Image) ?? FilmImageKind.Edge;
        if (kind != FilmImageKind.Edge)
            return new FilmImage(kind, given.ReadRequired(Width));
        if (given.Has(Width))
            given.Problems.Add("An edge has no width.", given.Where(Width), $"Leave it out, or write {given.Where(Image)} line or gap.");
        return FilmImage.Edge;
    }
}
