namespace Silkwright.Records.Screens;

/// <summary>What ended a stencil.</summary>
public enum EndReason
{
    /// <summary>Taken off sound and stripped.</summary>
    Reclaimed,

    /// <summary>Broke down.</summary>
    Broke,

    /// <summary>Put away sound; it may be taken up again.</summary>
    Stored,
}
