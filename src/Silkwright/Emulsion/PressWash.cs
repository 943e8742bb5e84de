namespace Silkwright.Emulsion;

/// <summary>What screens are wiped with on press.</summary>
public enum PressWash
{
    /// <summary>They are not wiped, or with a dry cloth.</summary>
    None,

    Water,

    /// <summary>A solvent, a screen opener or a strong cleaner.</summary>
    Solvent,
}
