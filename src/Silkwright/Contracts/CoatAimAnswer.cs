using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Strokes for a wanted thickness.</summary>
/// <param name="WantedUm">[µm]</param>
/// <param name="ToleranceUm">Either way. [µm]</param>
/// <param name="AreaM2">Coated area of a screen. [m²]</param>
/// <param name="Aim">The strokes, the chance, and others.</param>
/// <param name="Notes">What was assumed.</param>
public sealed record CoatAimAnswer(double WantedUm, double ToleranceUm, double AreaM2, CoatAim Aim, IReadOnlyList<Note> Notes)
{
    public Estimate GramsPerScreen => Aim.Laid.GramsPerM2.Times(AreaM2);

    /// <summary>Screens' area that a litre coats. [m²]</summary>
    public Estimate M2PerLitre => Propagation.Through(
        x => 1000 * x[0] / x[1], [new("density", Emulsion.FamilyValues.DensityGPerCm3(Aim.Best.Coat.Emulsion)), new("coat", Aim.Laid.GramsPerM2)], floor: 0).Estimate;
}
