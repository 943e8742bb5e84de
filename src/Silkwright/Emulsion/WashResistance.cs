using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>How a stencil stands what it is wiped with on press.</summary>
public static class WashResistance
{
    /// <summary>The grade; none where screens are not wiped, or nobody said with what.</summary>
    /// <remarks>
    /// Solvents: the emulsion's own grade for cleaners, else its family's (docs/engines/emulsion.md, table 4). Water: wiping is no
    /// soaking, so what does not stand water-based ink well counts as fair, never as poor. Of a film and the emulsion it is laid with,
    /// the weaker.
    /// </remarks>
    public static ResistanceAnswer? To(PressWash? wash, StencilEmulsion emulsion)
    {
        if (wash is null or PressWash.None)
            return null;
        var alone = wash == PressWash.Solvent ? ToSolvent(emulsion) : ToWater(emulsion.WithoutLaying());
        return emulsion.LaidWith is { } laying && To(wash, laying) is { } behind && behind.Grade < alone.Grade ? behind : alone;
    }

    private static ResistanceAnswer ToSolvent(StencilEmulsion emulsion)
    {
        if (emulsion.ResistsCleaner is { } given)
            return new(given.Grade, given.Ground, given.Grade switch
            {
                ResistanceGrade.Good => "It stands the solvents that screens are wiped with.",
                ResistanceGrade.Fair => "It stands the solvents that screens are wiped with fairly.",
                _ => "The solvents that screens are wiped with on press attack it.",
            });
        return emulsion.Family == EmulsionFamily.DualCure
            ? new(ResistanceGrade.Good, Ground.CommonPractice, "A dual-cure stands the solvents that screens are wiped with.")
            : new(ResistanceGrade.Fair, Ground.CommonPractice, "Wiping with solvents shortens its life, and how it stands them is not said: soak a coupon.");
    }

    private static ResistanceAnswer ToWater(StencilEmulsion emulsion)
    {
        var printed = Resistance.To(InkKind.WaterBased, emulsion);
        return printed.Grade == ResistanceGrade.Good
            ? new(ResistanceGrade.Good, printed.Ground, "It stands being wiped with water.")
            : new(ResistanceGrade.Fair, printed.Ground, "Wiping with water swells it: short and well dried.");
    }
}
