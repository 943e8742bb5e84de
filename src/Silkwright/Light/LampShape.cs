namespace Silkwright.Light;

/// <summary>What a lamp is to the place it lights.</summary>
public enum LampShape
{
    /// <summary>A small source at a distance.</summary>
    Point,

    /// <summary>A bank of tubes close to the glass.</summary>
    Tubes,

    /// <summary>An array of diodes with lenses.</summary>
    Diodes,

    /// <summary>Straight down: what no lamp does, to compare with.</summary>
    Straight,
}
