namespace Silkwright.Emulsion;

/// <summary>What attacks what.</summary>
public static class Resistance
{
    public static ResistanceAnswer To(InkKind ink, StencilEmulsion emulsion) =>
        throw new NotImplementedException();
}
