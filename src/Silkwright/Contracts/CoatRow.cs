using Silkwright.Coating.Learning;

namespace Silkwright.Contracts;

/// <summary>A row of READINGS.csv or CASES.csv, read.</summary>
/// <param name="Line">Where it stands, from 1.</param>
/// <param name="Coat">What was coated how.</param>
public sealed record CoatRow(int Line, CoatObservation Coat)
{
    /// <summary>Emulsion over mesh; none for a case. [µm]</summary>
    public double? EomUm { get; init; }

    /// <summary>Place on the screen, where one is named.</summary>
    public string? Point { get; init; }

    /// <summary>Which reading of that place.</summary>
    public string? Repeat { get; init; }

    public DateOnly? MeasuredOn { get; init; }

    /// <summary>The strokes were counted and not written in their order: print side first is taken.</summary>
    public bool StrokesCounted { get; init; }

    /// <summary>The row as written, to tell rows that are there twice.</summary>
    public string Written { get; init; } = "";
}
