namespace Silkwright.Emulsion;

/// <summary>The light in the room where coated screens lie.</summary>
public enum RoomLight
{
    /// <summary>Yellow or amber: nothing below about 500 nm.</summary>
    Yellow,

    /// <summary>White tubes behind yellow sleeves, or daylight kept out by film: some stray white.</summary>
    Filtered,

    /// <summary>Ordinary white light.</summary>
    White,
}
