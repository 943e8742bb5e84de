using Silkwright.Artwork;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using SkiaSharp;

namespace Silkwright.Film.Places;

/// <summary>A film to be looked at anywhere and at any size: docs/engines/film.md, "Tiles". What it needs beside the film is made once, in one pass over its rows.</summary>
public sealed class FilmTiles
{
    /// <summary>A film whose strips are no higher is read where it is looked at; another's rows are packed again in short strips. Our own choice: the rows of two tiles.</summary>
    private const int MostRowsTogether = 2 * FilmLevels.TileSidePx;

    private readonly string filmPath;
    private readonly string greysPath;
    private readonly string rowsPath;
    private readonly FilmOptions options;
    private readonly FilmHeader header;
    private readonly bool isRepacked;

    private FilmTiles(string filmPath, FilmOptions options, string greysPath, string rowsPath, IFilmSource film)
    {
        (this.filmPath, this.options, this.greysPath, this.rowsPath) = (filmPath, options, greysPath, rowsPath);
        header = film.Header;
        isRepacked = film.RowsTogether > MostRowsTogether;
        Levels = new FilmLevels(header.WidthPx, header.HeightPx);
    }

    /// <summary>How the film is cut into tiles.</summary>
    public FilmLevels Levels { get; }

    /// <summary>Makes what is needed beside a film, or finds it made.</summary>
    /// <param name="filmPath">The film.</param>
    /// <param name="options">What the file cannot say.</param>
    /// <param name="besidePath">Begin of the names of the files that are kept, in a folder that is there; one for a film and its options.</param>
    /// <param name="cancel">Stops the work; nothing half made stays.</param>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The film cannot be read.</exception>
    public static FilmTiles Of(string filmPath, FilmOptions options, string besidePath, CancellationToken cancel)
    {
        using var film = FilmFile.Open(filmPath, options);
        var tiles = new FilmTiles(filmPath, options, besidePath + ".greys", besidePath + ".rows", film);
        if (!File.Exists(tiles.greysPath) || (tiles.isRepacked && !File.Exists(tiles.rowsPath)))
            tiles.Make(film, cancel);
        return tiles;
    }

    /// <summary>The film, to be read from any row on at little cost.</summary>
    public IFilmSource Open() => isRepacked ? new RepackedFilm(rowsPath, header) : FilmFile.Open(filmPath, options);

    /// <summary>What is at a spot, from the film's top left [mm]; the film's halftones where they are known.</summary>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The spot is not on the film.</exception>
    public FilmSpot At(double xMm, double yMm, IReadOnlyList<HalftoneZone> zones, CancellationToken cancel)
    {
        using var film = Open();
        return FilmSpots.At(film, xMm, yMm, zones, cancel);
    }

    /// <summary>One tile as PNG, grey by coverage, image black; none where there is no such tile.</summary>
    public byte[]? Png(int level, int column, int row, CancellationToken cancel)
    {
        if (!Levels.Has(level, column, row))
            return null;
        var (left, top) = (column * FilmLevels.TileSidePx, row * FilmLevels.TileSidePx);
        var (width, height) = Levels.Size(level);
        using var picture = new SKBitmap(Math.Min(FilmLevels.TileSidePx, width - left), Math.Min(FilmLevels.TileSidePx, height - top), SKColorType.Gray8, SKAlphaType.Opaque);
        if (level < GreyPyramid.Kept(Levels))
            FillFromGreys(picture, level, left, top);
        else
            FillFromRows(picture, Levels.Factor(level), left, top, cancel);
        using var data = picture.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private void Make(IFilmSource film, CancellationToken cancel)
    {
        var (greys, rows) = ($"{greysPath}.{Guid.NewGuid():N}", $"{rowsPath}.{Guid.NewGuid():N}");
        try
        {
            using (var file = File.OpenHandle(greys, FileMode.CreateNew, FileAccess.Write))
            using (var packed = isRepacked ? new RepackedFilm.Writer(rows, header) : null)
            {
                var pyramid = new GreyPyramid(Levels, file);
                film.ReadRows(
                    0,
                    header.HeightPx,
                    (y, row) =>
                    {
                        pyramid.Add(y, row);
                        packed?.Add(y, row);
                    },
                    cancel);
            }

            if (isRepacked)
                File.Move(rows, rowsPath, overwrite: true);
            File.Move(greys, greysPath, overwrite: true);
        }
        finally
        {
            File.Delete(greys);
            File.Delete(rows);
        }
    }

    private void FillFromGreys(SKBitmap picture, int level, int left, int top)
    {
        using var file = File.OpenHandle(greysPath);
        var (place, width) = (GreyPyramid.Place(Levels, level), Levels.Size(level).Width);
        for (var y = 0; y < picture.Height; y++)
            _ = RandomAccess.Read(file, picture.GetPixelSpan().Slice(y * picture.RowBytes, picture.Width), place + ((long)(top + y) * width) + left);
    }

    private void FillFromRows(SKBitmap picture, int factor, int left, int top, CancellationToken cancel)
    {
        using var film = Open();
        var counts = new int[picture.Width];
        var (first, count) = (top * factor, Math.Min(header.HeightPx - (top * factor), picture.Height * factor));
        film.ReadRows(
            first,
            count,
            (y, row) =>
            {
                for (var x = 0; x < counts.Length; x++)
                    counts[x] += BitRow.Count(row, (left + x) * factor, Math.Min(header.WidthPx, (left + x + 1) * factor));
                if ((y + 1) % factor != 0 && y + 1 != header.HeightPx)
                    return;
                var greys = picture.GetPixelSpan().Slice((y - first) / factor * picture.RowBytes, picture.Width);
                for (var x = 0; x < counts.Length; x++)
                    greys[x] = GreyPyramid.Grey(counts[x], ((y % factor) + 1) * (Math.Min(header.WidthPx, (left + x + 1) * factor) - ((left + x) * factor)));
                counts.AsSpan().Clear();
            },
            cancel);
    }
}
