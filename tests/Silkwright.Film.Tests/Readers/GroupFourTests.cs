using BitMiracle.LibTiff.Classic;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Readers;

public class GroupFourTests
{
    /// <summary>Oracle: what LibTiff's own decoder makes of the same file, byte for byte; noise, blocks and runs beyond the longest code word.</summary>
    [Fact]
    public void Rows_equal_those_of_the_tiff_library()
    {
        using var folder = new TestFolder();
        var random = new Random(51);
        for (var round = 0; round < 3000; round++)
        {
            var (width, height) = round % 20 == 0 ? (random.Next(2000, 9000), random.Next(1, 5)) : (random.Next(1, 260), random.Next(1, 40));
            var pixels = Bitmaps.Random(random, width, height, random.NextDouble(), 1 << random.Next(0, 12));
            var photometric = random.Next(2) == 0 ? Photometric.MINISWHITE : Photometric.MINISBLACK;
            Tiffs.Write(folder["a.tif"], pixels, 1, Compression.CCITTFAX4, photometric, random.Next(1, 20));
            Compare(folder["a.tif"], pixels);
        }
    }

    /// <summary>A drawn film with halftones and lettering: its G4 file and its uncompressed file hold the same rows.</summary>
    [Fact]
    public void A_drawn_film_reads_the_same_packed_and_not_packed()
    {
        using var folder = new TestFolder();
        var halftone = new HalftoneFill(55, 22.5, 3, 97, [2, 0, 28, 0], Radial: false);
        FilmShape[] shapes =
        [
            new() { Outline = "M2 2H28V20H2Z", Halftone = halftone },
            new() { Lettering = new FilmLettering("Weavers' field", 3, 28, 5, true, 0) },
        ];
        var bits = FilmMaker.Bits(new FilmRecipe("a.tif", 30, 31, 1200, shapes));
        foreach (var compression in new[] { FilmCompression.CcittG4, FilmCompression.None })
        {
            FilmTiffWriter.Write(folder["a.tif"], bits.Width, bits.Height, 1200, (top, rows, strip) => bits.All.Slice(top * bits.Stride, rows * bits.Stride).CopyTo(strip.All), compression);
            using var film = FilmFile.Open(folder["a.tif"], new FilmOptions());
            Assert.True(bits.All.SequenceEqual(FilmFile.ReadBits(film, null, CancellationToken.None).All));
        }
    }

    /// <summary>Rows from the middle, runs and bits, positive and negative, are those of the whole film.</summary>
    [Fact]
    public void Any_rows_can_be_read_apart_and_as_runs()
    {
        using var folder = new TestFolder();
        var random = new Random(52);
        for (var round = 0; round < 200; round++)
        {
            var pixels = Bitmaps.Random(random, random.Next(1, 200), random.Next(2, 60), random.NextDouble(), random.Next(1, 8));
            Tiffs.Write(folder["a.tif"], pixels, 1, Compression.CCITTFAX4, Photometric.MINISWHITE, random.Next(1, 20));
            var negative = random.Next(2) == 1;
            using var film = FilmFile.Open(folder["a.tif"], new FilmOptions(1200, negative ? FilmPolarity.Negative : FilmPolarity.Positive));
            var first = random.Next(pixels.GetLength(1));
            var count = random.Next(1, pixels.GetLength(1) - first + 1);
            var read = new bool[pixels.GetLength(0), pixels.GetLength(1)];
            var rows = 0;
            film.ReadRuns(
                first,
                count,
                (y, edges) =>
                {
                    Assert.Equal(first + rows++, y);
                    for (var i = 0; i < edges.Length; i += 2)
                    {
                        Assert.True(edges[i] < edges[i + 1] && (i == 0 || edges[i] > edges[i - 1]), "runs rise and are not empty");
                        for (var x = edges[i]; x < edges[i + 1]; x++)
                            read[x, y] = true;
                    }
                },
                CancellationToken.None);
            Assert.Equal(count, rows);
            for (var y = first; y < first + count; y++)
            {
                for (var x = 0; x < pixels.GetLength(0); x++)
                    Assert.Equal(pixels[x, y] != negative, read[x, y]);
            }
        }
    }

    /// <summary>6000 strips with bytes changed: each is read or refused as damaged, and nothing else happens.</summary>
    [Fact]
    public void Damaged_strips_are_read_or_refused()
    {
        using var folder = new TestFolder();
        var random = new Random(53);
        var (read, refused) = (0, 0);
        Tiffs.Write(folder["a.tif"], Bitmaps.Random(random, 400, 40, 0.5, 5), 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 40);
        var whole = File.ReadAllBytes(folder["a.tif"]);
        for (var round = 0; round < 6000; round++)
        {
            var bytes = (byte[])whole.Clone();
            for (var k = random.Next(1, 4); k > 0; k--)
                bytes[random.Next(8, bytes.Length - 200)] = (byte)random.Next(256);
            File.WriteAllBytes(folder["m.tif"], bytes);
            try
            {
                using var film = FilmFile.Open(folder["m.tif"], new FilmOptions(1200));
                film.ReadRuns(0, film.Header.HeightPx, (_, edges) => Assert.True(edges.IsEmpty || edges[^1] <= film.Header.WidthPx), CancellationToken.None);
                read++;
            }
            catch (InputProblemException)
            {
                refused++;
            }
        }

        Assert.True(read > 20 && refused > 1000, $"{read} read, {refused} refused");
    }

    private static void Compare(string path, bool[,] pixels)
    {
        using var film = FilmFile.Open(path, new FilmOptions(1200));
        var bits = FilmFile.ReadBits(film, null, CancellationToken.None);
        using var tiff = Tiff.Open(path, "r");
        var bytes = new byte[tiff.ScanlineSize()];
        var minIsBlack = tiff.GetField(TiffTag.PHOTOMETRIC)[0].ToInt() == (int)Photometric.MINISBLACK;
        for (var y = 0; y < bits.Height; y++)
        {
            Assert.True(tiff.ReadScanline(bytes, y));
            for (var x = 0; x < bits.Width; x++)
            {
                var set = (bytes[x >> 3] & (0x80 >> (x & 7))) != 0;
                if (set == minIsBlack == bits[x, y] || pixels[x, y] != bits[x, y])
                    Assert.Fail($"pixel {x}, {y} of {bits.Width} x {bits.Height}");
            }
        }
    }
}
