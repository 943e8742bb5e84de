using Silkwright.Emulsion;

namespace Silkwright.Catalogue;

/// <summary>Something that can be known of an emulsion. All of them: <see cref="CatalogueProperties"/>.</summary>
/// <param name="Name">As a catalogue writes it, the unit at its end: <c>solidsPercent</c>.</param>
/// <param name="Meaning">In plain words, without an article.</param>
/// <param name="HowToMeasure">How to find it out, in one sentence.</param>
public sealed record CatalogueProperty(string Name, string Meaning, string HowToMeasure)
{
    /// <summary>Unit of its numbers; empty for words and plain numbers.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The words it takes; none: it takes a number.</summary>
    public IReadOnlyList<string>? Words { get; init; }

    /// <summary>The least number that makes sense. [<see cref="Unit"/>]</summary>
    public double Least { get; init; } = double.NegativeInfinity;

    /// <summary>The greatest. [<see cref="Unit"/>]</summary>
    public double Most { get; init; } = double.PositiveInfinity;

    /// <summary>How far a datasheet's number usually is from the lot in hand, as a share of itself. [1]</summary>
    public double DatasheetShare { get; init; }

    /// <summary>Unit of the circumstance it is known at: a pot life at so many °C, a price at so many grams; empty where there is none.</summary>
    public string AtUnit { get; init; } = "";

    /// <summary>The least circumstance that makes sense. [<see cref="AtUnit"/>]</summary>
    public double LeastAt { get; init; } = double.NegativeInfinity;

    /// <summary>The greatest. [<see cref="AtUnit"/>]</summary>
    public double MostAt { get; init; } = double.PositiveInfinity;

    /// <summary>The circumstance meant where none is named; none: one must be named. [<see cref="AtUnit"/>]</summary>
    public double? UsualAt { get; init; }

    /// <summary>The families it can be asked of; none: all.</summary>
    public IReadOnlyList<EmulsionFamily>? Of { get; init; }

    /// <summary>Whether it makes sense to ask for it; every property does while the family is not known.</summary>
    public bool IsAskedOf(EmulsionFamily? family) => Of is null || family is not { } known || Of.Contains(known);
}
