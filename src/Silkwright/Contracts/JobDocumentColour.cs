using Silkwright.Emulsion;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>One colour as the job's file says it.</summary>
public sealed record JobDocumentColour
{
    public required string Name { get; init; }

    /// <summary>The film's file, relative to the job's.</summary>
    public string? Film { get; init; }

    public TypedNeeds? Needs { get; init; }

    public WorkKind? Kind { get; init; }

    public required InkKind Ink { get; init; }

    public InkRole Role { get; init; } = InkRole.Colour;

    public int ImpressionsPerGarment { get; init; } = 1;
}
