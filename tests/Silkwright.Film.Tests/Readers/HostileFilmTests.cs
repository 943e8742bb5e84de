using System.Buffers.Binary;
using BitMiracle.LibTiff.Classic;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Readers;

public class HostileFilmTests
{
    private static readonly FilmOptions None = new();
    private static readonly FilmOptions At1200 = new(1200);

    [Fact]
    public void A_missing_film_is_a_problem_with_a_remedy() => Refused("nowhere/there.tif", At1200, "no such file");

    [Fact]
    public void Something_else_is_not_a_film()
    {
        using var folder = new TestFolder();
        File.WriteAllText(folder["a.tif"], "%!PS-Adobe-3.0 and so on");
        Refused(folder["a.tif"], At1200, "neither a TIFF nor a PNG nor a PDF");
        File.WriteAllText(folder["b.tif"], string.Empty);
        Refused(folder["b.tif"], At1200, "it is empty");
    }

    [Fact]
    public void A_film_without_a_resolution_asks_for_dpi()
    {
        using var folder = new TestFolder();
        Tiffs.Write(folder["a.tif"], new bool[40, 40], 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 16, resolution: null);
        Assert.Contains("--dpi", Refused(folder["a.tif"], None, "resolution").Remedy, StringComparison.Ordinal);
        File.WriteAllBytes(folder["a.png"], Pngs.Make(new bool[40, 40], 0, 1, pixelsPerMetre: 0));
        Assert.Contains("--dpi", Refused(folder["a.png"], None, "resolution").Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Zero_dpi_in_the_file_or_given_is_refused()
    {
        using var folder = new TestFolder();
        Tiffs.Write(folder["a.tif"], new bool[40, 40], 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 16, resolution: 0);
        _ = Refused(folder["a.tif"], None, "0 dpi");
        _ = Refused(folder["a.tif"], new FilmOptions(0), "0 dpi");
        _ = Refused(folder["a.tif"], new FilmOptions(double.NaN), "dpi");
    }

    [Fact]
    public void A_header_of_a_million_pixels_a_side_is_refused_before_anything_is_allocated()
    {
        using var folder = new TestFolder();
        Tiffs.Write(folder["a.tif"], new bool[40, 40], 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 16);
        var bytes = File.ReadAllBytes(folder["a.tif"]);
        SetTag(bytes, 256, 1_000_000);
        SetTag(bytes, 257, 1_000_000);
        File.WriteAllBytes(folder["a.tif"], bytes);
        File.WriteAllBytes(folder["a.png"], Pngs.Make(new bool[40, 40], 0, 1, 47244, claimed: (1_000_000, 1_000_000)));
        foreach (var name in new[] { "a.tif", "a.png" })
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            _ = Refused(folder[name], At1200, "1000000 x 1000000");
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
        }
    }

    [Theory]
    [InlineData(Compression.NONE)]
    [InlineData(Compression.CCITTFAX4)]
    [InlineData(Compression.LZW)]
    [InlineData(Compression.PACKBITS)]
    public void A_film_cut_short_is_damaged(Compression compression)
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(14), 203, 75, 0.4, 3);
        Tiffs.Write(folder["a.tif"], pixels, 1, compression, Photometric.MINISWHITE, 16);
        var bytes = File.ReadAllBytes(folder["a.tif"]);
        for (var length = 9; length < bytes.Length; length += 37)
        {
            File.WriteAllBytes(folder["b.tif"], bytes[..length]);
            _ = Refused(folder["b.tif"], At1200, "damaged");
        }
    }

    /// <summary>Byte 19 is the width's last, byte 24 the bit depth, byte 29 the first of the check value: PNG specification, clause 11.2.1.</summary>
    [Theory]
    [InlineData(19)]
    [InlineData(24)]
    [InlineData(29)]
    public void A_png_whose_header_does_not_match_its_check_value_is_refused(int place)
    {
        using var folder = new TestFolder();
        var bytes = Pngs.Make(new bool[40, 40], 0, 1, 47244);
        bytes[place] ^= 0x03;
        File.WriteAllBytes(folder["crc.png"], bytes);
        _ = Refused(folder["crc.png"], At1200, "check value");
    }

    [Fact]
    public void A_png_cut_short_or_interlaced_is_refused()
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(15), 203, 75, 0.4, 3);
        var bytes = Pngs.Make(pixels, 0, 1, 47244);
        for (var length = 9; length < bytes.Length - 40; length += 37)
        {
            File.WriteAllBytes(folder["b.png"], bytes[..length]);
            _ = Refused(folder["b.png"], At1200, "damaged");
        }

        File.WriteAllBytes(folder["c.png"], Pngs.Make(pixels, 0, 1, 47244, interlace: 1));
        _ = Refused(folder["c.png"], At1200, "interlaced");
    }

    [Theory]
    [InlineData(258, 16)]
    [InlineData(259, 7)]
    [InlineData(277, 3)]
    [InlineData(262, 2)]
    public void A_kind_that_is_not_read_is_named(int tag, int value)
    {
        using var folder = new TestFolder();
        Tiffs.Write(folder["a.tif"], new bool[40, 40], 8, Compression.NONE, Photometric.MINISBLACK, 16);
        var bytes = File.ReadAllBytes(folder["a.tif"]);
        SetTag(bytes, tag, value);
        File.WriteAllBytes(folder["a.tif"], bytes);
        _ = Refused(folder["a.tif"], At1200, "not read");
    }

    /// <summary>4000 seeded mutants of small films of every kind: read or refused with a remedy, never another exception, never a large allocation.</summary>
    [Fact]
    public void Spoilt_films_are_read_or_refused_with_a_remedy()
    {
        using var folder = new TestFolder();
        var films = SmallFilms.All(folder[""]).Where(film => film.Kind != "PDF").ToArray();
        var tally = Spoil(folder, films, 4000);
        Assert.True(tally.Read > 200 && tally.Refused > 200, $"{tally.Read} read, {tally.Refused} refused");
    }

    /// <summary>A PDF starts two programs, so there are fewer; the bench <c>fuzz</c> has more.</summary>
    [Fact]
    public void Spoilt_pdfs_are_read_or_refused_with_a_remedy()
    {
        Assert.SkipUnless(PdfProgram.Find("pdftoppm", Environment.GetEnvironmentVariable("PATH") ?? "") is not null, "pdftoppm is not installed here.");
        using var folder = new TestFolder();
        var tally = Spoil(folder, [.. SmallFilms.All(folder[""]).Where(film => film.Kind == "PDF")], 40);
        Assert.True(tally is { Read: > 0, Refused: > 0 }, $"{tally.Read} read, {tally.Refused} refused");
    }

    /// <summary>The guard itself is tried: sound films are read, and the same seed spoils alike.</summary>
    [Fact]
    public void What_is_spoilt_was_sound_and_is_spoilt_alike_each_time()
    {
        using var folder = new TestFolder();
        foreach (var (kind, bytes) in SmallFilms.All(folder[""]).Where(film => film.Kind != "PDF"))
        {
            File.WriteAllBytes(folder["sound"], bytes);
            using var film = FilmFile.Open(folder["sound"], new FilmOptions(600));
            Assert.InRange(BitRow.Count(FilmFile.ReadBits(film, null, CancellationToken.None).All), 2000, 14_000);
            Assert.Equal(FilmMutator.Spoil(bytes, new Random(5)), FilmMutator.Spoil(bytes, new Random(5)));
            Assert.True(kind is "TIFF" or "PNG");
        }
    }

    /// <summary>Found by <c>./bench fuzz</c>: the unpacker failed with an exception of its own.</summary>
    [Fact]
    public void A_png_that_its_unpacker_cannot_go_on_with_is_damaged()
    {
        using var folder = new TestFolder();
        var png = SmallFilms.All(folder[""]).Where(film => film.Kind == "PNG").ToArray();
        foreach (var (_, bytes) in png)
        {
            File.WriteAllBytes(folder["m"], FilmMutator.Spoil(bytes, new Random(6206)));
            var fault = Record.Exception(() =>
            {
                using var film = FilmFile.Open(folder["m"], new FilmOptions(600));
                film.ReadRows(0, film.Header.HeightPx, (_, _) => { }, CancellationToken.None);
            });
            Assert.True(fault is null or InputProblemException, fault?.ToString());
        }
    }

    private static (int Read, int Refused) Spoil(TestFolder folder, (string Kind, byte[] Bytes)[] films, int rounds)
    {
        var (read, refused) = (0, 0);
        for (var round = 0; round < rounds; round++)
        {
            File.WriteAllBytes(folder["m"], FilmMutator.Spoil(films[round % films.Length].Bytes, new Random(round)));
            var before = GC.GetAllocatedBytesForCurrentThread();
            try
            {
                using var film = FilmFile.Open(folder["m"], new FilmOptions(600));
                film.ReadRows(0, film.Header.HeightPx, (_, _) => { }, CancellationToken.None);
                read++;
            }
            catch (InputProblemException fault)
            {
                Assert.All(fault.Problems, problem => Assert.NotEmpty(problem.Remedy));
                refused++;
            }

            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 64 << 20);
        }

        return (read, refused);
    }

    private static Problem Refused(string path, FilmOptions options, string what)
    {
        var thrown = Assert.Throws<InputProblemException>(() =>
        {
            using var film = FilmFile.Open(path, options);
            _ = FilmFile.ReadBits(film, null, CancellationToken.None);
        });
        var problem = Assert.Single(thrown.Problems);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
        Assert.Equal(Path.GetFileName(path), problem.Where);
        return problem;
    }

    /// <summary>Overwrites one entry of a little-endian TIFF's directory with a single LONG (TIFF 6.0, section 2).</summary>
    private static void SetTag(byte[] bytes, int tag, int value)
    {
        var at = (int)BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(4));
        var count = BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at));
        for (var i = 0; i < count; i++)
        {
            var entry = bytes.AsSpan(at + 2 + (12 * i), 12);
            if (BinaryPrimitives.ReadUInt16LittleEndian(entry) != tag)
                continue;
            BinaryPrimitives.WriteUInt16LittleEndian(entry[2..], 4);
            BinaryPrimitives.WriteUInt32LittleEndian(entry[4..], 1);
            BinaryPrimitives.WriteInt32LittleEndian(entry[8..], value);
            return;
        }

        Assert.Fail($"The file has no tag {tag}.");
    }
}
