namespace Silkwright.Emulsion;

/// <summary>How the coat comes off the mesh again.</summary>
public enum Reclaiming
{
    Easy,

    Hard,

    /// <summary>It does not: the mesh is lost.</summary>
    No,
}
