using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Moire;

namespace Silkwright.Contracts;

/// <summary>What <c>mesh moire</c> asks for.</summary>
public static class MoireQuestion
{
    /// <summary>Thread over pitch of general meshes for garments, 61/64, 77/55 and 120/34 between 0.39 and 0.42. Common practice, no source. [1]</summary>
    private const double UsualThreadPerPitch = 0.4;

    private const double UmPerCm = 10_000;

    /// <summary>Meshes that one rack holds.</summary>
    private const int MostOnHand = 40;

    private static readonly QuantityField Thread = MeshQuestion.Thread with { Required = false, Meaning = "thread diameter; two fifths of the pitch when not given" };

    public static readonly QuantityField Ruling = new("ruling", QuantityKind.PerLength, "ruling of the halftone")
    {
        Sample = "45/in",
        Required = true,
        Least = 4,
        Most = 120,
    };

    public static readonly QuantityField Angle = new("angle", QuantityKind.Angle, "angle of the halftone from the film's horizontal, counter-clockwise")
    {
        Required = true,
        Least = -180,
        Most = 180,
    };

    public static readonly QuantityField MeshAngle = new("mesh-angle", QuantityKind.Angle, "angle of the threads from the film's horizontal; 0 when not given")
    {
        Least = -180,
        Most = 180,
    };

    public static readonly QuantityField KnitCourses = new("knit-courses", QuantityKind.PerLength, "rows of stitches down the garment")
    {
        Sample = "17/cm",
        Least = 2,
        Most = 60,
    };

    public static readonly QuantityField KnitWales = KnitCourses with { Name = "knit-wales", Meaning = "columns of stitches across the garment" };

    public static readonly QuantityField Tone = new("tone", QuantityKind.Share, "one tone; every beat at its plainest tone when not given")
    {
        Sample = "30%",
        Least = 1,
        Most = 99,
    };

    public static readonly QuantityField Viewing = new("viewing", QuantityKind.Thickness, "nearest that an eye comes to the print; 500 mm when not given")
    {
        Sample = "500mm",
        Least = 100_000,
        Most = 10_000_000,
    };

    public static readonly TextField OnHand = new(
        "on-hand", "other meshes to hold it against, threads to the centimetre and thread in um as labels name them", "61/64,77/55,90/48");

    public static IReadOnlyList<QuestionField> Fields =>
        [MeshQuestion.Count, Thread, Ruling, Angle, MeshAngle, KnitCourses, KnitWales, Tone, Viewing, OnHand];

    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static MoireAnswer Answer(GivenTexts given)
    {
        var (asked, onHand, assumed) = Read(given);
        var answer = MoireAnswer.Of(asked, onHand);
        return answer with { Notes = [.. assumed, .. answer.Notes] };
    }

    /// <summary>The case alone, for its picture.</summary>
    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static MoireCase Case(GivenTexts given) => Read(given).Asked;

    private static (MoireCase Asked, IReadOnlyList<MeshFabric> OnHand, IReadOnlyList<Note> Assumed) Read(GivenTexts given)
    {
        var count = given.ReadRequired(MeshQuestion.Count);
        var thread = given.Read(Thread);
        if (count * thread >= UmPerCm)
        {
            given.Problems.Add(
                "At this count the threads would overlap: no opening is left.", given.Where(Thread),
                "Check the count and the diameter, or leave the diameter out.");
        }

        var (courses, wales) = (given.Read(KnitCourses), given.Read(KnitWales));
        if (courses is null != wales is null)
        {
            var missing = courses is null ? KnitCourses : KnitWales;
            given.Problems.Add("A knit has rows and columns; one of the two is missing.", given.Where(missing), $"Add {given.Where(missing)}: count the stitches over a centimetre both ways.");
        }

        var onHand = ReadOnHand(given);
        var asked = new MoireCase
        {
            Mesh = new MeshFabric(count, thread ?? (UsualThreadPerPitch * UmPerCm / count)),
            MeshAngleDegrees = given.Read(MeshAngle) ?? 0,
            RulingPerCm = given.ReadRequired(Ruling),
            AngleDegrees = given.ReadRequired(Angle),
            KnitCoursesPerCm = courses,
            KnitWalesPerCm = wales,
            TonePercent = given.Read(Tone),
            ViewingMm = given.Read(Viewing) / 1000 ?? MoireCase.UsualViewingMm,
        };
        given.ThrowIfAny();
        return (asked, onHand, thread is null
            ? [new Note($"The thread is not given: two fifths of the pitch is taken, {Figures.Length(asked.Mesh.ThreadUm)}. It moves visibility, not periods.", Ground.CommonPractice)]
            : []);
    }

    private static List<MeshFabric> ReadOnHand(GivenTexts given)
    {
        var meshes = new List<MeshFabric>();
        var names = (given.Read(OnHand) ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (names.Length > MostOnHand)
            given.Problems.Add($"{names.Length} meshes are named.", given.Where(OnHand), $"Name {MostOnHand} at most.");
        foreach (var name in names.Take(MostOnHand))
        {
            if (MeshLabel.Read(name) is { } mesh)
                meshes.Add(mesh);
            else
                given.Problems.Add($"'{NearName.Shown(name)}' is not a mesh.", given.Where(OnHand), $"Write {MeshLabel.Remedy}.");
        }

        return meshes;
    }
}
