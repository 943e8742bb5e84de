using System.Collections.Concurrent;
using Silkwright.Film.Measuring;

namespace Silkwright.Film.Tests.Measuring;

/// <summary>Pieces of what a disc removes, put together from bands, against flood fill on plain arrays.</summary>
public sealed class ResiduePiecesTests
{
    [Fact]
    public void The_pieces_are_those_of_flood_fill_however_the_bands_cut_them()
    {
        var random = new Random(97);
        var (pieces, across) = (0, 0);
        for (var round = 0; round < 24; round++)
        {
            var pixels = Bitmaps.Random(random, random.Next(30, 150), random.Next(520, 800), random.NextDouble(), random.Next(6, 40));
            var (w, gap) = (random.Next(3, 14), random.Next(2) == 1);
            var bits = Bitmaps.Film(pixels);
            var residue = PlainOpening.Residue(pixels, !gap, w);
            var expected = Bitmaps.Components(residue, true).Select(piece => Describe(piece, pixels, residue, !gap)).Order().ToList();
            var tiles = new OpeningTiles(bits, new FilmCells(bits), gap, CancellationToken.None);
            var touched = new TileMap(bits);
            var found = new ConcurrentBag<Blob>();
            new ResiduePieces(bits, tiles, null, DiscOpening.MostTileRows, CancellationToken.None).Find(w, null, found.Add, touched);
            Assert.Equal(expected, found.Select(b => (b.Top, b.Left, b.Bottom, b.Right - 1, b.Area, b.Marked)).Order());
            pieces += found.Count;
            across += found.Count(b => b.Top / DiscOpening.MostTileRows != b.Bottom / DiscOpening.MostTileRows);
            for (var y = 0; y < bits.Height; y++)
            {
                for (var x = 0; x < bits.Width; x++)
                    Assert.True(!residue[x, y] || touched[x >> 6, y]);
            }
        }

        Assert.True(pieces > 1000 && across > 30, $"{pieces} pieces, {across} of them across bands");
    }

    [Fact]
    public void A_piece_is_placed_at_its_pixel_nearest_to_its_centre()
    {
        var random = new Random(98);
        for (var round = 0; round < 40; round++)
        {
            // Rings have their centres far from their pixels.
            var pixels = new bool[400, 400];
            var (cx, cy, r) = (random.Next(120, 280), random.Next(120, 280), random.Next(4, 110));
            for (var x = 0; x < 400; x++)
            {
                for (var y = 0; y < 400; y++)
                    pixels[x, y] = Math.Abs(Math.Sqrt(((x - cx) * (x - cx)) + ((y - cy) * (y - cy))) - r) < 1.6 || (x % 37 < 2 && y % 41 == 0);
            }

            var bits = Bitmaps.Film(pixels);
            var pieces = new ResiduePieces(bits, new OpeningTiles(bits, new FilmCells(bits), false, CancellationToken.None), null, CancellationToken.None);
            var residue = PlainOpening.Residue(pixels, true, 9);
            var found = new ConcurrentBag<Blob>();
            pieces.Find(9, null, found.Add);
            foreach (var piece in found.Where(b => b.Area > 20))
            {
                double Far(int x, int y) => Math.Pow(x + 0.5 - (piece.SumX / piece.Area), 2) + Math.Pow(y + 0.5 - (piece.SumY / piece.Area), 2);
                var least = double.MaxValue;
                for (var x = piece.Left; x < piece.Right; x++)
                {
                    for (var y = piece.Top; y <= piece.Bottom; y++)
                        least = residue[x, y] ? Math.Min(least, Far(x, y)) : least;
                }

                var (foundX, foundY) = pieces.Place(9, piece);
                Assert.True(residue[foundX, foundY]);
                Assert.Equal(least, Far(foundX, foundY), 1e-9);
            }
        }
    }

    [Fact]
    public void The_largest_pieces_are_kept_the_uppermost_of_equal_ones_first()
    {
        var random = new Random(99);
        var all = Enumerable.Range(0, 500).Select(_ => new Blob { Area = random.Next(1, 40), SeedX = random.Next(1000), SeedY = random.Next(1000) }).ToArray();
        var largest = new LargestPieces(60);
        _ = Parallel.ForEach(all, largest.Add);
        Assert.Equal(all.OrderByDescending(p => p.Area).ThenBy(p => p.SeedY).ThenBy(p => p.SeedX).Take(60), largest.InOrder());
    }

    private static (int Top, int Left, int Bottom, int Right, long Area, bool Marked) Describe(List<(int X, int Y)> piece, bool[,] pixels, bool[,] residue, bool value)
    {
        var marked = piece.Exists(p => Enumerable.Range(-1, 3).Any(dy => Enumerable.Range(-1, 3).Any(dx =>
            p.X + dx is var x && p.Y + dy is var y && x >= 0 && y >= 0 && x < pixels.GetLength(0) && y < pixels.GetLength(1)
            && pixels[x, y] == value && !residue[x, y])));
        return (piece.Min(p => p.Y), piece.Min(p => p.X), piece.Max(p => p.Y), piece.Max(p => p.X), piece.Count, marked);
    }
}
