using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Catalogue;

/// <summary>What one source says of one property of one emulsion.</summary>
/// <param name="Emulsion">Its name.</param>
/// <param name="Property">What is told.</param>
/// <param name="At">The circumstance it was told at; none for properties without one. [the property's unit of circumstance]</param>
/// <param name="Value">What is told.</param>
/// <param name="Ground">Where it comes from; never a model.</param>
/// <param name="Source">Which sheet, test or person.</param>
/// <param name="Date">When it was printed or measured; none where nobody knows.</param>
public sealed record CatalogueEntry(
    string Emulsion, CatalogueProperty Property, double? At, CatalogueValue Value, Ground Ground, string Source, DateOnly? Date)
{
    /// <summary>The number with the spread such a source usually has; none for a word.</summary>
    public Estimate? Estimate => Value.Number is { } number ? UsualSpread.Around(number, Property.DatasheetShare, Ground) : null;

    /// <summary>
    /// Whether two sources cannot both be right: different words, or numbers that each lie outside the other's usual spread.
    /// </summary>
    public bool Conflicts(CatalogueEntry other) => (Estimate, other.Estimate) is ({ } here, { } there)
        ? Outside(here, there.Value) && Outside(there, here.Value)
        : Value != other.Value;

    /// <summary>The same source says the same at the same time, whatever the letters' case of the emulsion's name.</summary>
    public bool SaysTheSameAs(CatalogueEntry other) => this with { Emulsion = other.Emulsion } == other;

    private static bool Outside(Estimate estimate, double value) => value < estimate.Low || value > estimate.High;
}
