namespace Silkwright.Emulsion;

/// <summary>Ink kinds in plain words.</summary>
public static class InkWords
{
    public static string Of(InkKind ink) => ink switch
    {
        InkKind.Plastisol => "plastisol",
        InkKind.WaterBased => "water-based",
        InkKind.Discharge => "discharge",
        InkKind.Solvent => "solvent",
        InkKind.Uv => "UV",
        _ => throw new ArgumentOutOfRangeException(nameof(ink)),
    };
}
