using Silkwright.Film.Measuring;

namespace Silkwright.Film.Tests.Measuring;

public class DistanceTransformTests
{
    private const int Width = 300;
    private const int Height = 200;
    private static readonly int[] Diameters = [3, 5, 7, 9, 15, 21, 33];

    /// <summary>
    /// Oracle: OpenCV 4.6.0, exact distance transform and connectedComponents; the lines are what distance_transform.py beside this file prints.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 60, 37, 1024, new[] { 32179, 36013, 36034, 36034, 36034, 36034, 36034 })]
    [InlineData(2, 3, 70, 9, 353, new[] { 379, 12336, 22211, 31948, 41050, 41582, 41582 })]
    [InlineData(3, 7, 85, 6, 212, new[] { 81, 559, 1312, 3971, 13116, 21351, 41498 })]
    [InlineData(4, 12, 90, 12, 117, new[] { 53, 205, 459, 950, 4616, 6819, 18142 })]
    [InlineData(5, 20, 70, 50, 80, new[] { 148, 388, 742, 1074, 3416, 11086, 20587 })]
    public void Openings_and_components_are_those_of_the_distance_transform(int seed, int block, int percent, int image, int gap, int[] removed)
    {
        var bits = Bitmaps.Film(Noise(seed, block, percent));
        var tiles = new OpeningTiles(bits, new FilmCells(bits), false, CancellationToken.None);
        Assert.Equal(removed, Diameters.Select(w => (int)tiles.Area(w)));
        var (imageSet, gapSet) = FilmComponents.FindAndTakeOutSpecks(bits, null, CancellationToken.None);
        Assert.Equal((image, gap), (imageSet.Count + imageSet.Specks, gapSet.Count + gapSet.Specks));
    }

    private static bool[,] Noise(long state, int block, int percent)
    {
        var pixels = new bool[Width, Height];
        for (var y = 0; y < Height; y += block)
        {
            for (var x = 0; x < Width; x += block)
            {
                state = Next(state);
                for (var j = y; j < Math.Min(Height, y + block); j++)
                {
                    for (var i = x; i < Math.Min(Width, x + block); i++)
                        pixels[i, j] = (state >> 16) % 100 < percent;
                }
            }
        }

        for (var k = 0; k < 300; k++)
        {
            state = Next(state);
            pixels[(state >> 8) % Width, (state >> 8) % Height] ^= true;
        }

        return pixels;
    }

    private static long Next(long state) => ((1103515245 * state) + 12345) & 0x7FFFFFFF;
}
