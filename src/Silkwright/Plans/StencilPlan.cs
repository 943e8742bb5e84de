using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>The plan of a whole job.</summary>
public sealed record StencilPlan
{
    public required Job Job { get; init; }

    public required string ShopName { get; init; }

    public required string Currency { get; init; }

    public required IReadOnlyList<ColourPlan> Colours { get; init; }

    /// <summary>Screens to make, spares included.</summary>
    public required int Screens { get; init; }

    /// <summary>Expected cost of all screens of the job. [currency]</summary>
    public Estimate? Cost { get; init; }

    /// <summary>Hands-on minutes of all screens. [min]</summary>
    public required Estimate Minutes { get; init; }

    /// <summary>The films of the job held against each other: sizes, resolutions.</summary>
    public required FilmsTogether Films { get; init; }

    /// <summary>The unknown that would change the plan most if it were measured.</summary>
    public MeasureNext? MeasureNext { get; init; }

    /// <summary>Everything assumed, with its ground.</summary>
    public required IReadOnlyList<Note> Notes { get; init; }
}
