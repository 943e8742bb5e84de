namespace Silkwright.Emulsion;

/// <summary>What a chemical hardener does to the coat.</summary>
public enum Hardening
{
    /// <summary>It takes none.</summary>
    None,

    /// <summary>It lasts longer with one.</summary>
    Helps,

    /// <summary>In inks with water in them it lasts only with one.</summary>
    Needed,
}
