using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>What <c>expose curve</c> asks for.</summary>
public static class CurveQuestion
{
    public static readonly QuantityField Penetration = new("penetration-depth", QuantityKind.Thickness, "depth over which the light falls by e before anything has bleached (Dp)")
    {
        Sample = "40um",
        Required = true,
        Least = InputLimits.LeastPenetrationUm,
        Most = 9_000,
        TakesRange = true,
    };

    public static readonly QuantityField Critical = new("critical-dose", QuantityKind.Dose, "dose that just cures the coat (Hc)")
    {
        Required = true,
        Least = 0.01,
        Most = 100_000,
        TakesRange = true,
    };

    public static readonly QuantityField Bleaching = new("bleaching", QuantityKind.Share, "share of the absorption that goes with the sensitiser; 0% when not given")
    {
        Least = 0,
        Most = 100,
        TakesRange = true,
    };

    public static readonly QuantityField BleachDose = Critical with
    {
        Name = "bleach-dose",
        Required = false,
        Meaning = "dose that leaves 37 % of the sensitiser (1/C); the critical dose when not given",
    };

    public static readonly QuantityField Depth = new("depth", QuantityKind.Thickness, "a depth to cure: its dose is told") { Sample = "60um", Least = 1, Most = 2000 };

    public static IReadOnlyList<QuestionField> Fields => [Penetration, Critical, Bleaching, BleachDose, Depth];

    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static CureCurve Answer(GivenTexts given)
    {
        var (penetration, critical) = (given.ReadRequiredEstimate(Penetration), given.ReadRequiredEstimate(Critical));
        var (share, dose) = (given.ReadEstimate(Bleaching), given.ReadEstimate(BleachDose));
        var depth = given.Read(Depth);
        given.ThrowIfAny();
        return CureCurve.Of(penetration, critical, share?.Times(0.01) ?? Estimate.Exact(0, Ground.CommonPractice), dose ?? critical, depth);
    }
}
