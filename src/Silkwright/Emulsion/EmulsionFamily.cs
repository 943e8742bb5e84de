namespace Silkwright.Emulsion;

/// <summary>What hardens the coat, and how it is delivered.</summary>
public enum EmulsionFamily
{
    /// <summary>Two parts; a diazo condensate links the polyvinyl alcohol.</summary>
    Diazo,

    /// <summary>Two parts; diazo and acrylates with an initiator, two networks.</summary>
    DualCure,

    /// <summary>Ready to use; groups on the polymer pair under light.</summary>
    Photopolymer,

    /// <summary>A dried layer on a carrier, drawn into wet mesh.</summary>
    CapillaryFilm,
}
