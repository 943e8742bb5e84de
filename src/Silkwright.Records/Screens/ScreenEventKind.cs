namespace Silkwright.Records.Screens;

/// <summary>What can happen to a screen, in the order a screen is made.</summary>
public enum ScreenEventKind
{
    /// <summary>Mesh stretched, or its tension read again.</summary>
    Tensioned,
    Degreased,
    Coated,
    DryIn,
    DryOut,

    /// <summary>Temperature and humidity where the screen stands.</summary>
    Climate,
    Exposed,
    Checked,
    JobAssigned,
    Printed,
    Ended,

    /// <summary>An entry taken back: what it said did not happen.</summary>
    Withdrawn,
}
