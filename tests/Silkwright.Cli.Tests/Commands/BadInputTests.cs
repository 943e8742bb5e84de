using System.Buffers.Binary;

namespace Silkwright.Cli.Tests.Commands;

/// <summary>Bad input ends with 2: what, where and the remedy on the message stream, nothing on the output, no stack of calls.</summary>
public sealed class BadInputTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("mesh --count 64 --thread 64um", "no unit", "/cm, /in")]
    [InlineData("mesh --count 61/cm --thread 64parsec", "not a unit", "um, mm, mil, in")]
    [InlineData("mesh --count -61/cm --thread 64um", "out of range", "at least 5/cm")]
    [InlineData("mesh --count 61/cm", "--thread is missing", "64um")]
    [InlineData("ink --mesh 61/cm --thread 64um --eom 12um --coverage 35% --area 900cm2 --impressions -600", "out of range", "whole number")]
    [InlineData("ink --mesh 61/cm --thread 64um --eom 12um --coverage 135% --area 900cm2 --impressions 600", "out of range", "at most 100%")]
    [InlineData("ink --mesh 61/cm --thread 64um --eom 12um --coverage 35% --area 900cm2 --impressions 600 --ink tar", "not known", "plastisol")]
    [InlineData("expose step --observed 5 --target 7", "exposure of the strip is missing", "--units")]
    [InlineData("expose step --seconds 60s --units 60 --observed 5 --target 7", "two ways", "one of the two")]
    [InlineData("expose step --seconds 0s --observed 5 --target 7", "out of range", "at least 0.01s")]
    [InlineData("dry air --temperature 25 --humidity 50%", "no unit", "C, F")]
    [InlineData("dry time --temperature 46C --humidity 35% --wet-thickness 60um --solids 40%", "out of range", "hardens the coat")]
    [InlineData("film nowhere.tif", "no such file", "Check the name")]
    [InlineData("film nowhere.tif --dpi 0", "out of range", "at least 50")]
    [InlineData("film nowhere.tif --dpi 1200dpi", "not a unit taken here", "for example 1200")]
    [InlineData("plan nowhere.json", "no such file", "Check the path")]
    [InlineData("mesh --count ٣/cm --thread 64um", "can't be read", "/cm, /in")]
    [InlineData("mesh --count 61/cm --thread ６４um", "can't be read", "um, mm, mil, in")]
    [InlineData("ink --mesh 61/cm --thread 64um --eom 12um --coverage ٣..٤% --area 900cm2 --impressions 600", "can't be read", "%")]
    [InlineData("shelf demo/shelf.json --most few", "'few' is no whole number", "whole number")]
    [InlineData("light slab --mua 10/cm --mus 90/cm --g 0.75 --n 1 --thickness 200um --threads 1.5", "'1.5' is no whole number", "whole number")]
    [InlineData("light edge --count 61/cm --thread 64um --threads 99999999999", "'99999999999' is no whole number", "whole number")]
    public async Task Each_fault_says_what_where_and_what_to_do(string line, string what, string remedy) =>
        Told(await ShellRun.Of(line.Split(' ')), what, remedy);

    [Fact]
    public async Task All_faults_are_told_at_once()
    {
        var run = await ShellRun.Of("mesh", "--count", "64", "--thread", "2,5mil", "--fabric-thickness", "thick");
        Told(run, "for 3 reasons", "point");
        Assert.All(["--count", "--thread", "--fabric-thickness"], option => Assert.Contains($"where:  {option}", run.Error, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_job_whose_film_is_missing_is_refused()
    {
        var job = folder.Write("job.json", """{"run": 100, "colours": [{"ink": "plastisol", "film": "gone.tif"}, {"ink": "plastisol", "film": "gone-too.tif"}]}""");
        var run = await ShellRun.Of("plan", job);
        Told(run, "no such file", "Check");
        Assert.Contains("gone-too.tif", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_with_negative_counts_and_unknown_inks_is_refused_with_all_faults()
    {
        var job = folder.Write("job.json", """{"run": -5, "colours": [{"ink": "tar"}]}""");
        Told(await ShellRun.Of("plan", job), "2 reasons", "plastisol");
    }

    [Fact]
    public async Task A_job_that_is_not_json_says_where()
    {
        var job = folder.Write("job.json", "{\n  \"run\": 5,,\n}");
        Told(await ShellRun.Of("plan", job), "not readable as JSON", "line 2");
    }

    [Fact]
    public async Task A_job_may_begin_with_a_byte_order_mark()
    {
        var job = folder.Write("job.json", "\uFEFF{\"run\": 100, \"colours\": [{\"ink\": \"plastisol\", \"kind\": \"leftChestSpot\"}]}");
        Assert.Equal(0, (await ShellRun.Of("plan", job, "--json")).ExitCode);
    }

    public static TheoryData<string, bool> TextsOfTwoBytes => new MatrixTheoryData<string, bool>(["plan FILE", "coat predict --readings FILE --cases FILE", "gauge read FILE", "catalogue show FILE", "shelf FILE"], [true, false]);

    /// <summary>As some programs save "Unicode": two bytes a letter, and no mark that says so.</summary>
    [Theory]
    [MemberData(nameof(TextsOfTwoBytes))]
    public async Task A_text_in_utf_16_without_its_mark_is_told_how_to_save_it(string line, bool bigEndian)
    {
        var file = folder.Write("file", new System.Text.UnicodeEncoding(bigEndian, byteOrderMark: false).GetBytes("{\"run\": 100}\n"));
        Told(await ShellRun.Of(line.Replace("FILE", file, StringComparison.Ordinal).Split(' ')), "UTF-16", "Save it as UTF-8");
    }

    [Theory]
    [InlineData("mesh --count 1e308/cm --thread 64um")]
    [InlineData("mesh --count 61/cm --thread -1e308um")]
    [InlineData("dry air --temperature 1e300C --humidity 1e-300%")]
    [InlineData("mesh moire --count 61/cm --thread 64um --ruling 1e308/in --angle 1e308deg")]
    public async Task A_number_beyond_all_measure_fills_no_line(string line)
    {
        var run = await ShellRun.Of(line.Split(' '));
        Assert.Equal(2, run.ExitCode);
        Assert.DoesNotContain("000000", run.Error, StringComparison.Ordinal);
        run = await ShellRun.Of("mesh", "--count", $"{new string('9', 3000)}/cm", "--thread", "64um");
        Assert.DoesNotContain(new string('9', 100), run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_thickness_beyond_all_measure_fills_no_line_of_a_gauges_file()
    {
        var run = await ShellRun.Of("gauge", "read", folder.Write("gauge.csv", "screen,eomUm\nA,1e200\n"), "--json");
        Assert.Contains("1E+200", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("000000", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_truncated_film_is_refused()
    {
        // a TIFF of 100 x 100 pixels whose one strip should hold 1300 bytes that are not there
        var film = folder.Write("cut.tif", Tiff((256, 3, 100), (257, 3, 100), (258, 3, 1), (259, 3, 1), (262, 3, 0), (273, 4, 200), (277, 3, 1), (278, 3, 100), (279, 4, 1300)));
        Told(await ShellRun.Of("film", film, "--dpi", "1200"), "cut.tif", "remedy");
    }

    [Fact]
    public async Task A_header_of_a_million_by_a_million_pixels_is_refused()
    {
        var film = folder.Write("vast.png", PngHeader(1_000_000, 1_000_000));
        Told(await ShellRun.Of("film", film, "--dpi", "1200"), "vast.png", "remedy");
    }

    [Fact]
    public async Task A_text_named_as_a_film_is_refused()
    {
        var film = folder.Write("notes.tif", "Not a film at all.");
        Told(await ShellRun.Of("film", film), "notes.tif", "remedy");
    }

    [Fact]
    public async Task A_failure_of_ours_ends_with_1_in_one_line_that_says_how_to_report()
    {
        var job = folder.Write("job.json", """{"run": 100, "colours": [{"ink": "plastisol"}]}""");
        var run = await ShellRun.Of(new BrokenClock(), "plan", job);
        Assert.Equal((1, ""), (run.ExitCode, run.Output));
        Assert.Contains("the clock is broken", Assert.Single(run.Error.TrimEnd().Split('\n')), StringComparison.Ordinal);
        Assert.Contains("report", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stopped_work_ends_with_130()
    {
        var film = folder.Write("notes.tif", "Not a film at all.");
        var error = new StringWriter();
        var surroundings = new Surroundings { Output = TextWriter.Null, Error = error };
        Assert.Equal(130, await Shell.RunAsync(["film", film], surroundings, new CancellationToken(canceled: true)));
        Assert.Contains("Stopped", error.ToString(), StringComparison.Ordinal);
    }

    private static void Told(ShellRun run, string what, string remedy)
    {
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(what, run.Error, StringComparison.Ordinal);
        Assert.Contains(remedy, run.Error, StringComparison.Ordinal);
        Assert.Contains("where:", run.Error, StringComparison.Ordinal);
        Assert.Contains("remedy:", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    /// <summary>A little-endian TIFF of one directory (TIFF 6.0, section 2).</summary>
    private static byte[] Tiff(params (ushort Tag, ushort Type, uint Value)[] entries)
    {
        var bytes = new byte[8 + 2 + (12 * entries.Length) + 4];
        "II*\0"u8.CopyTo(bytes);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(4), 8);
        BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(8), (ushort)entries.Length);
        for (var i = 0; i < entries.Length; i++)
        {
            var at = bytes.AsSpan(10 + (12 * i));
            BinaryPrimitives.WriteUInt16LittleEndian(at, entries[i].Tag);
            BinaryPrimitives.WriteUInt16LittleEndian(at[2..], entries[i].Type);
            BinaryPrimitives.WriteUInt32LittleEndian(at[4..], 1);
            BinaryPrimitives.WriteUInt32LittleEndian(at[8..], entries[i].Value);
        }

        return bytes;
    }

    /// <summary>Signature and header chunk of a 1-bit grey PNG (ISO/IEC 15948, clause 11.2.2).</summary>
    private static byte[] PngHeader(uint width, uint height)
    {
        var bytes = new byte[8 + 8 + 13 + 4];
        new byte[] { 0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, 0, 0, 0, 13 }.CopyTo(bytes, 0);
        "IHDR"u8.CopyTo(bytes.AsSpan(12));
        BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(16), width);
        BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(20), height);
        bytes[24] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(29), Crc(bytes.AsSpan(12, 17)));
        return bytes;
    }

    /// <summary>The polynomial of ISO/IEC 15948, annex D.</summary>
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var one in bytes)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }

        return ~crc;
    }

    private sealed class BrokenClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => throw new InvalidOperationException("the clock is broken");
    }
}
