namespace Silkwright.Emulsion;

/// <summary>What the ink is made of, as far as a stencil cares.</summary>
public enum InkKind
{
    Plastisol,
    WaterBased,
    Discharge,
    Solvent,
    Uv,
}
