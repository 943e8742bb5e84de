using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>What attacks what.</summary>
public static class Resistance
{
    /// <summary>How an emulsion stands up to an ink.</summary>
    /// <remarks>
    /// A grade given for this ink decides; then the emulsion's own list: an ink that is not on it attacks. Without either its
    /// family answers, on the careful side where types within the family differ (docs/engines/emulsion.md, table 2).
    /// </remarks>
    public static ResistanceAnswer To(InkKind ink, StencilEmulsion emulsion)
    {
        if (emulsion.LaidWith is { } laying)
            return Weaker(To(ink, emulsion.WithoutLaying()), To(ink, laying));
        var name = Name(ink);
        if (emulsion.Resistances?.GetValueOrDefault(ink) is { } graded)
            return new(graded.Grade, graded.Ground, Graded(graded.Grade, name));
        if (emulsion.Resists is not { } listed)
            return ByFamily(ink, emulsion.Family);
        return listed.Contains(ink)
            ? new(ResistanceGrade.Good, Ground.Datasheet, $"It is made to stand up to {name}.")
            : new(ResistanceGrade.Poor, Ground.Datasheet, $"It is not made for {name}: its list names {Listed(listed)}.");
    }

    /// <summary>Film and emulsion lie in the ink together: the weaker of them gives way.</summary>
    private static ResistanceAnswer Weaker(ResistanceAnswer film, ResistanceAnswer laying) => laying.Grade < film.Grade
        ? laying with { Reason = $"Of the emulsion it is laid with: {laying.Reason}" }
        : film;

    private static ResistanceAnswer ByFamily(InkKind ink, EmulsionFamily family) => (family, ink) switch
    {
        (_, InkKind.Plastisol) => Usually(ResistanceGrade.Good, "Every family of emulsion stands up to plastisol."),

        (EmulsionFamily.Diazo, InkKind.WaterBased) => Usually(
            ResistanceGrade.Fair, "A diazo made for water lasts in water-based ink when hardened, one made for solvents does not; it is not said which this is."),
        (EmulsionFamily.Diazo, InkKind.Discharge) => Usually(
            ResistanceGrade.Fair, "A diazo needs hardening for discharge ink, and must be one made for water."),
        (EmulsionFamily.Diazo, InkKind.Solvent) => Usually(
            ResistanceGrade.Fair, "A diazo made for solvents lasts in solvent ink, one made for water hardly; it is not said which this is."),
        (EmulsionFamily.Diazo, InkKind.Uv) => Usually(ResistanceGrade.Fair, "A diazo stands up to UV ink fairly well."),

        (EmulsionFamily.DualCure, InkKind.WaterBased) => Usually(
            ResistanceGrade.Fair, "A dual-cure serves most inks but is not very water-resistant: short runs, or hardened."),
        (EmulsionFamily.DualCure, InkKind.Discharge) => Usually(
            ResistanceGrade.Fair, "A dual-cure needs hardening for discharge ink."),
        (EmulsionFamily.DualCure, InkKind.Solvent) => Usually(ResistanceGrade.Good, "A dual-cure stands up to solvent ink."),
        (EmulsionFamily.DualCure, InkKind.Uv) => Usually(ResistanceGrade.Good, "A dual-cure stands up to UV ink."),

        (EmulsionFamily.Photopolymer, InkKind.WaterBased) => Usually(
            ResistanceGrade.Poor, "A ready-to-use photopolymer breaks down in water-based ink unless it is made for it, and nothing says that this one is."),
        (EmulsionFamily.Photopolymer, InkKind.Discharge) => Usually(
            ResistanceGrade.Poor, "A ready-to-use photopolymer breaks down in discharge ink unless it is made for it, and nothing says that this one is."),
        (EmulsionFamily.Photopolymer, InkKind.Solvent) => Usually(
            ResistanceGrade.Fair, "A ready-to-use photopolymer stands up to solvent ink fairly well."),
        (EmulsionFamily.Photopolymer, InkKind.Uv) => Usually(
            ResistanceGrade.Good, "A ready-to-use photopolymer stands up to UV ink."),

        (EmulsionFamily.CapillaryFilm, InkKind.WaterBased or InkKind.Discharge or InkKind.Solvent or InkKind.Uv) => Usually(
            ResistanceGrade.Fair, $"A capillary film stands up to {Name(ink)} as its sensitiser does, which is not said: soak a coupon in the ink first."),

        _ => throw new ArgumentOutOfRangeException(nameof(ink), (family, ink), "No such family or ink."),
    };

    private static ResistanceAnswer Usually(ResistanceGrade grade, string reason) => new(grade, Ground.CommonPractice, reason);

    private static string Graded(ResistanceGrade grade, string ink) => grade switch
    {
        ResistanceGrade.Good => $"It stands up to {ink}.",
        ResistanceGrade.Fair => $"It stands up to {ink} fairly: hardened, or for short runs.",
        _ => $"{char.ToUpperInvariant(ink[0])}{ink[1..]} attacks it.",
    };

    private static string Listed(IReadOnlyList<InkKind> inks) =>
        inks.Count == 0 ? "none" : string.Join(", ", inks.Select(InkWords.Of));

    private static string Name(InkKind ink) => ink switch
    {
        InkKind.Plastisol => "plastisol",
        InkKind.WaterBased => "water-based ink",
        InkKind.Discharge => "discharge ink",
        InkKind.Solvent => "solvent ink",
        InkKind.Uv => "UV ink",
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "No such ink."),
    };
}
