using Silkwright.Film.Measuring;
using Silkwright.Film.Places;
using Silkwright.Film.TestFilms;
using SkiaSharp;

namespace Silkwright.Film.Tests.Places;

/// <summary>Every pixel of every tile of every level against the mean of its square of the film, taken pixel by pixel.</summary>
public sealed class FilmTilesTests
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(300, 200, FilmCompression.CcittG4, false)]
    [InlineData(4500, 4203, FilmCompression.CcittG4, false)]
    [InlineData(700, 9001, FilmCompression.None, false)]
    [InlineData(4099, 1500, FilmCompression.None, true)]
    public void A_tile_is_grey_by_how_much_of_the_film_prints_there(int width, int height, FilmCompression compression, bool asPng)
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(width), width, height, 0.4, 23);
        var path = asPng ? Png(folder, pixels) : Tiff(folder, pixels, compression);
        var tiles = FilmTiles.Of(path, new FilmOptions(600), folder["beside"], Cancel);
        Assert.Equal(asPng, File.Exists(folder["beside"] + ".rows"));
        var deepest = tiles.Levels.Deepest;
        Assert.Equal((1, 1), tiles.Levels.Tiles(0));
        Assert.True(Math.Max(width, height) <= FilmLevels.TileSidePx << deepest && (deepest == 0 || Math.Max(width, height) > FilmLevels.TileSidePx << (deepest - 1)));
        for (var level = 0; level <= deepest; level++)
        {
            var (columns, rows) = tiles.Levels.Tiles(level);
            for (var row = 0; row < rows; row++)
            {
                for (var column = 0; column < columns; column++)
                    Check(tiles.Png(level, column, row, Cancel)!, pixels, 1 << (deepest - level), column * FilmLevels.TileSidePx, row * FilmLevels.TileSidePx);
            }

            Assert.Null(tiles.Png(level, columns, 0, Cancel));
            Assert.Null(tiles.Png(level, 0, rows, Cancel));
        }

        Assert.Null(tiles.Png(deepest + 1, 0, 0, Cancel));
        Assert.Null(tiles.Png(-1, 0, 0, Cancel));
    }

    [Fact]
    public void What_lies_beside_a_film_is_made_once_and_nothing_half_made_stays()
    {
        using var folder = new TestFolder();
        var path = Tiff(folder, Bitmaps.Random(new Random(1), 5000, 700, 0.5, 9), FilmCompression.CcittG4);
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => FilmTiles.Of(path, new FilmOptions(), folder["beside"], stopped.Token));
        Assert.Equal([path], Directory.GetFiles(Path.GetDirectoryName(path)!));
        _ = FilmTiles.Of(path, new FilmOptions(), folder["beside"], Cancel);
        var made = File.GetLastWriteTimeUtc(folder["beside"] + ".greys");
        _ = FilmTiles.Of(path, new FilmOptions(), folder["beside"], Cancel);
        Assert.Equal(made, File.GetLastWriteTimeUtc(folder["beside"] + ".greys"));
    }

    private static void Check(byte[] png, bool[,] pixels, int factor, int left, int top)
    {
        using var picture = SKBitmap.Decode(png);
        var (width, height) = (pixels.GetLength(0), pixels.GetLength(1));
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
            {
                var (image, area) = (0, 0);
                for (var py = (top + y) * factor; py < Math.Min(height, (top + y + 1) * factor); py++)
                {
                    for (var px = (left + x) * factor; px < Math.Min(width, (left + x + 1) * factor); px++, area++)
                        image += pixels[px, py] ? 1 : 0;
                }

                var grey = picture.GetPixel(x, y).Red;
                Assert.True(Math.Abs(255 - (255.0 * image / area) - grey) < 1, $"factor {factor}: {left + x}, {top + y} is {grey} for {image} of {area}");
            }
        }
    }

    private static string Tiff(TestFolder folder, bool[,] pixels, FilmCompression compression)
    {
        var path = folder["film.tif"];
        FilmTiffWriter.Write(
            path,
            pixels.GetLength(0),
            pixels.GetLength(1),
            600,
            (top, rows, bits) =>
            {
                for (var y = 0; y < rows; y++)
                {
                    for (var x = 0; x < bits.Width; x++)
                        bits[x, y] = pixels[x, top + y];
                }
            },
            compression);
        return path;
    }

    private static string Png(TestFolder folder, bool[,] pixels)
    {
        using var film = new SKBitmap(pixels.GetLength(0), pixels.GetLength(1), SKColorType.Gray8, SKAlphaType.Opaque);
        for (var y = 0; y < film.Height; y++)
        {
            for (var x = 0; x < film.Width; x++)
                film.GetPixelSpan()[(y * film.RowBytes) + x] = pixels[x, y] ? (byte)0 : (byte)255;
        }

        using var data = film.Encode(SKEncodedImageFormat.Png, 100);
        var path = folder["film.png"];
        File.WriteAllBytes(path, data.ToArray());
        return path;
    }
}
