namespace Silkwright.Light;

/// <summary>Colour of a mesh's threads.</summary>
public enum ThreadColour
{
    White,

    /// <summary>Yellow or amber: swallows the light that cures.</summary>
    Dyed,
}
