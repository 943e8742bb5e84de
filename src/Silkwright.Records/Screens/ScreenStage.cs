namespace Silkwright.Records.Screens;

/// <summary>Where a screen is in its making.</summary>
public enum ScreenStage
{
    /// <summary>Mesh on a frame, not yet washed.</summary>
    Meshed,
    Degreased,

    /// <summary>Coated, not yet dried.</summary>
    Coated,
    Drying,

    /// <summary>Coated and dry, waiting for light.</summary>
    Dry,

    /// <summary>Exposed and developed, not yet checked.</summary>
    Exposed,

    /// <summary>Checked: to be made again.</summary>
    Rejected,

    /// <summary>Checked and good.</summary>
    Ready,

    /// <summary>Has made impressions.</summary>
    Printing,

    /// <summary>Put away sound.</summary>
    Stored,
    Reclaimed,
    Broken,
}
