using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Ink;

namespace Silkwright.Contracts;

/// <summary>What <c>ink</c> asks for.</summary>
public static class InkQuestion
{
    /// <summary>Taken where no ink is named: what most garments are printed with (common practice, no source).</summary>
    private const InkKind UsualInk = InkKind.Plastisol;

    public static readonly QuantityField Mesh = MeshQuestion.Count with { Name = "mesh", Meaning = "mesh count" };

    public static readonly QuantityField Eom = new("eom", QuantityKind.Thickness, "emulsion over mesh on the print side")
    {
        Sample = "12um",
        Required = true,
        Least = 0,
        Most = InputLimits.MostEomUm,
        TakesRange = true,
    };

    public static readonly QuantityField Coverage = new("coverage", QuantityKind.Share, "share of the film that prints")
    {
        Sample = "35%",
        Required = true,
        Least = InputLimits.LeastCoveragePercent,
        Most = 100,
        TakesRange = true,
    };

    public static readonly QuantityField Area = new("area", QuantityKind.Area, "area of the film; multiplied by the coverage")
    {
        Required = true,
        Least = InputLimits.LeastAreaCm2,
        Most = InputLimits.MostAreaCm2,
        TakesRange = true,
    };

    public static readonly QuantityField Impressions = new("impressions", QuantityKind.Number, "impressions of the run")
    {
        Sample = "600",
        Required = true,
        Least = 1,
        Most = InputLimits.MostImpressions,
        Whole = true,
    };

    public static readonly ChoiceField Ink = ChoiceField.Of<InkKind>("ink", "what the ink is made of; plastisol when not given");

    public static readonly QuantityField Transfer = new(
        "transfer", QuantityKind.Share, "share of the theoretical ink volume that reaches the garment; 60..85% when not given")
    {
        Sample = "70%",
        Least = 1,
        Most = 100,
        TakesRange = true,
    };

    public static readonly QuantityField Strokes = new("strokes", QuantityKind.Number, "squeegee strokes an impression; 1 when not given")
    {
        Sample = "2",
        Least = 1,
        Most = 12,
        Whole = true,
    };

    public static readonly QuantityField Density = new("density", QuantityKind.Density, "density of the ink; its kind's usual one when not given")
    {
        Least = 0.5,
        Most = 5,
        TakesRange = true,
    };

    public static readonly QuantityField VolumeSolids = new("volume-solids", QuantityKind.Share, "solids of the ink by volume; gives the dry deposit")
    {
        Sample = "40%",
        Least = 1,
        Most = 100,
        TakesRange = true,
    };

    public static IReadOnlyList<QuestionField> Fields =>
        [Mesh, MeshQuestion.Thread, Eom, Coverage, Area, Impressions, Ink, MeshQuestion.FabricThickness, Transfer, Strokes, Density, VolumeSolids];

    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static InkResult Answer(GivenTexts given)
    {
        var fabric = MeshQuestion.Read(given, Mesh);
        var eom = given.ReadRequiredEstimate(Eom);
        var coverage = given.ReadRequiredEstimate(Coverage);
        var area = given.ReadRequiredEstimate(Area);
        var impressions = given.ReadRequired(Impressions);
        var ink = given.Read<InkKind>(Ink);
        var transfer = given.ReadEstimate(Transfer);
        var strokes = given.Read(Strokes);
        var density = given.ReadEstimate(Density);
        var solids = given.ReadEstimate(VolumeSolids);
        given.ThrowIfAny();

        var result = InkDeposit.Of(new InkCase
        {
            Mesh = fabric,
            EomUm = eom,
            Ink = ink ?? UsualInk,
            CoveragePercent = coverage,
            AreaCm2 = area,
            Impressions = (long)impressions,
            Strokes = (int)(strokes ?? 1),
            TransferPercent = transfer,
            DensityGPerCm3 = density,
            VolumeSolidsPercent = solids,
        });
        return ink is null
            ? result with { Notes = [new Note("The ink is not named: plastisol is assumed.", Ground.CommonPractice), .. result.Notes] }
            : result;
    }
}
