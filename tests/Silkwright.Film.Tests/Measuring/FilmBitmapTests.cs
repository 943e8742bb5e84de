using Silkwright.Film.Measuring;

namespace Silkwright.Film.Tests.Measuring;

/// <summary>A film in cells against a plain array of pixels.</summary>
public sealed class FilmBitmapTests
{
    [Fact]
    public void Every_pixel_and_every_edge_is_kept_whatever_cells_are_alike()
    {
        var random = new Random(91);
        for (var round = 0; round < 300; round++)
        {
            var pixels = Bitmaps.Random(random, random.Next(1, 400), random.Next(1, 300), random.NextDouble(), random.Next(1, 140));
            var film = Bitmaps.Film(pixels);
            Assert.Equal(pixels, Bitmaps.Pixels(film));
            Assert.Equal(pixels.Cast<bool>().Count(p => p), film.Count());
            var y = random.Next(film.Height);
            var edges = new int[film.Width + 2];
            var row = new bool[film.Width];
            foreach (var run in edges[..film.Edges(y, edges)].Chunk(2))
                row.AsSpan(run[0]..run[1]).Fill(true);
            Assert.Equal(Enumerable.Range(0, film.Width).Select(x => pixels[x, y]), row);
        }
    }

    [Fact]
    public void What_is_set_and_turned_is_what_a_plain_array_holds()
    {
        var random = new Random(92);
        for (var round = 0; round < 200; round++)
        {
            var pixels = Bitmaps.Random(random, random.Next(1, 300), random.Next(1, 300), random.NextDouble(), random.Next(1, 140));
            var film = Bitmaps.Film(pixels);
            for (var k = 0; k < 6; k++)
                SetAndCount(film, pixels, random);
            film.Compact();
            Assert.Equal(pixels, Bitmaps.Pixels(film));
            var where = Bitmaps.Random(random, film.Width, film.Height, random.NextDouble(), random.Next(1, 140));
            film.Turn(Bitmaps.Film(where));
            for (var x = 0; x < film.Width; x++)
            {
                for (var y = 0; y < film.Height; y++)
                    Assert.Equal(pixels[x, y] != where[x, y], film[x, y]);
            }

            film.Clear();
            Assert.Equal(0, film.Count());
        }
    }

    /// <summary>A cell that is turned is kept anew beside what it was: noise of which every cell has specks takes more room than all its pixels.</summary>
    [Fact]
    public void Noise_may_be_turned_again_and_again()
    {
        var pixels = Bitmaps.Random(new Random(97), 1000, 1000, 0.5, 1);
        var film = Bitmaps.Film(pixels);
        var where = Bitmaps.Film(Bitmaps.Random(new Random(98), 1000, 1000, 0.01, 1));
        for (var twice = 0; twice < 3; twice++)
        {
            film.Turn(where);
            film.Turn(where);
        }

        Assert.Equal(pixels, Bitmaps.Pixels(film));
    }

    /// <summary>Noise takes all the room of its pixels: 13 MB, of which 8 MiB stay in memory. Oracle: the same noise drawn again.</summary>
    [Fact]
    public void What_lies_in_the_scratch_file_is_read_from_several_threads_and_turned_as_what_lies_in_memory()
    {
        using var folder = new TestFolder();
        using var scratch = new ScratchFile(folder[""]);
        var (film, where) = (new FilmBitmap(8200, 13_000, scratch), new FilmBitmap(8200, 13_000, scratch));
        Draw(film, y => Row(film, y, 1));
        Draw(where, y => y % 3 == 0 ? Row(film, y, 2) : new ulong[film.Stride]);
        AssertRows(film, y => Row(film, y, 1));
        film.Turn(where);
        AssertRows(film, y => y % 3 == 0 ? [.. Row(film, y, 1).Zip(Row(film, y, 2), (one, other) => one ^ other)] : Row(film, y, 1));
    }

    private static void Draw(FilmBitmap film, Func<int, ulong[]> row)
    {
        var writer = new CellRowWriter(film);
        for (var y = 0; y < film.Height; y++)
            row(y).CopyTo(writer.Row(y));
        writer.Flush();
    }

    private static void AssertRows(FilmBitmap film, Func<int, ulong[]> row) =>
        Parallel.For(0, film.Height, new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken }, y =>
        {
            var read = new ulong[film.Stride];
            film.Read(y, 0, read);
            Assert.True(read.AsSpan().SequenceEqual(row(y)), $"row {y}");
        });

    private static ulong[] Row(FilmBitmap film, int y, int kind)
    {
        var random = new Random((y * 4) + kind);
        var row = new ulong[film.Stride];
        random.NextBytes(System.Runtime.InteropServices.MemoryMarshal.AsBytes(row.AsSpan()));
        row[^1] &= film.LastMask;
        return row;
    }

    private static void SetAndCount(FilmBitmap film, bool[,] pixels, Random random)
    {
        var (left, top) = (random.Next(film.Width), random.Next(film.Height));
        var (right, bottom) = (random.Next(left, film.Width) + 1, random.Next(top, film.Height) + 1);
        Assert.Equal(Enumerable.Range(left, right - left).Count(x => pixels[x, top]), film.Count(top, left, right));
        film.Set(left, right, top, bottom);
        var row = random.Next(film.Height);
        film.Set(row, left, right);
        for (var x = left; x < right; x++)
        {
            pixels[x, row] = true;
            for (var y = top; y < bottom; y++)
                pixels[x, y] = true;
        }
    }
}
