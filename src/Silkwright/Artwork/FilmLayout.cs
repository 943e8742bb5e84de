namespace Silkwright.Artwork;

/// <summary>Where on a film something prints, coarsely: enough to hold films against each other without their pixels.</summary>
/// <remarks>docs/engines/film.md, "Films of one job".</remarks>
public sealed record FilmLayout
{
    /// <summary>Side of a cell. [mm] 2 mm, doubled until the longer side of the film has no more than 128 cells.</summary>
    public required double CellMm { get; init; }

    /// <summary>Cells in a row.</summary>
    public required int Across { get; init; }

    /// <summary>Cells in a column.</summary>
    public required int Down { get; init; }

    /// <summary>Share of each cell that prints, 0 to 255, row after row from the top left.</summary>
    public required ReadOnlyMemory<byte> Coverage { get; init; }

    /// <summary>What encloses everything that prints, register marks too; none on an empty film.</summary>
    public FilmBox? Image { get; init; }

    /// <summary>What encloses everything that prints but the register marks, to a millimetre; none where there is nothing else.</summary>
    public FilmBox? Artwork { get; init; }

    public required IReadOnlyList<RegisterMark> Marks { get; init; }
}
