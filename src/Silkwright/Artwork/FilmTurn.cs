namespace Silkwright.Artwork;

/// <summary>How one film would have to be laid to lie on another.</summary>
public enum FilmTurn
{
    /// <summary>As it is.</summary>
    None,

    /// <summary>Left and right exchanged: output with the wrong side up.</summary>
    Mirrored,

    /// <summary>Top and bottom exchanged.</summary>
    MirroredTopToBottom,

    /// <summary>Upside down, turned by 180 degrees.</summary>
    TurnedHalf,
}
