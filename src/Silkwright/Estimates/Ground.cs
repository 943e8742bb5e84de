namespace Silkwright.Estimates;

/// <summary>Where a number comes from. Ordered from the firmest ground to the weakest.</summary>
public enum Ground
{
    /// <summary>Read on this shop's own film, screen, gauge or press; or typed in by the shop as its own.</summary>
    MeasuredHere,

    /// <summary>Read in other shops and carried over.</summary>
    MeasuredElsewhere,

    /// <summary>Printed by whoever supplies the material.</summary>
    Datasheet,

    /// <summary>Computed from an equation whose inputs stand on firmer ground.</summary>
    Model,

    /// <summary>The trade's rule of thumb; no source that would stand up.</summary>
    CommonPractice,
}
