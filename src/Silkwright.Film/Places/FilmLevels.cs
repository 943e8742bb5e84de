namespace Silkwright.Film.Places;

/// <summary>A film cut into square tiles at several levels: level 0 is the whole film in one tile, each further level shows it twice as large, the deepest pixel by pixel.</summary>
/// <param name="WidthPx">Of the film. [px]</param>
/// <param name="HeightPx">Of the film. [px]</param>
public sealed record FilmLevels(int WidthPx, int HeightPx)
{
    /// <summary>Side of a tile; those at the right and lower edge end with the film. [px]</summary>
    public const int TileSidePx = 512;

    /// <summary>The level that shows every pixel of the film as one of its own.</summary>
    public int Deepest
    {
        get
        {
            var level = 0;
            while (Math.Max(WidthPx, HeightPx) > (long)TileSidePx << level)
                level++;
            return level;
        }
    }

    /// <summary>Pixels of the film, each way, in one of a level. [px]</summary>
    public int Factor(int level) => 1 << (Deepest - level);

    /// <summary>A level's own size. [px]</summary>
    public (int Width, int Height) Size(int level) => (Parts(WidthPx, Factor(level)), Parts(HeightPx, Factor(level)));

    /// <summary>Tiles of a level.</summary>
    public (int Columns, int Rows) Tiles(int level) => (Parts(Size(level).Width, TileSidePx), Parts(Size(level).Height, TileSidePx));

    /// <summary>Whether there is such a tile.</summary>
    public bool Has(int level, int column, int row) =>
        level >= 0 && level <= Deepest && column >= 0 && row >= 0 && column < Tiles(level).Columns && row < Tiles(level).Rows;

    private static int Parts(int length, int part) => ((length - 1) / part) + 1;
}
