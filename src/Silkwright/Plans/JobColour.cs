using Silkwright.Artwork;
using Silkwright.Emulsion;

namespace Silkwright.Plans;

/// <summary>One colour of a job.</summary>
public sealed record JobColour
{
    public required string Name { get; init; }

    public required InkKind Ink { get; init; }

    public InkRole Role { get; init; } = InkRole.Colour;

    /// <summary>The measured film; none when the artwork is only described.</summary>
    public FilmMeasurement? Film { get; init; }

    /// <summary>Typed needs; they fill what no film says.</summary>
    public TypedNeeds? Needs { get; init; }

    /// <summary>A typical kind of work; it fills what neither film nor typed needs say.</summary>
    public WorkKind? Kind { get; init; }

    /// <summary>Squeegee strokes on the garment, flashes between them included. 1 or more.</summary>
    public int ImpressionsPerGarment { get; init; } = 1;
}
