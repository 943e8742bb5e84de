namespace Silkwright.Exposure;

/// <summary>How the light leaves the lamp, which decides what distance does.</summary>
public enum LampKind
{
    /// <summary>Metal halide, near a point: the inverse square holds.</summary>
    MetalHalide,

    /// <summary>Diodes in an array close to the glass: the inverse square does not hold.</summary>
    LedArray,

    /// <summary>A bank of tubes close to the glass: light at all angles; the inverse square does not hold.</summary>
    TubeBank,

    /// <summary>Halogen or incandescent work lamp: little of its light is in the band.</summary>
    Halogen,
}
