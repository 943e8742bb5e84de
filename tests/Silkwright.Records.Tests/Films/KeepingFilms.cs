using System.Text;
using Silkwright.Artwork;
using Silkwright.Estimates;
using Silkwright.Records.Films;
using Silkwright.Records.Store;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Films;

public sealed class KeepingFilms
{
    // SHA-256 of "abc": NIST, FIPS 180-4 example values.
    private const string HashOfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task A_film_is_kept_once_under_the_hash_of_what_it_holds(Database database)
    {
        await using var temporary = await TemporaryStore.OpenAsync(database);
        var films = temporary.Store.Films;
        var first = await AddAsync(films, "abc", "C:\\art\\Base FINAL.TIF");
        var second = await AddAsync(films, "abc", "copy.tif");

        Assert.Equal(HashOfAbc, first.Hash);
        Assert.Equal($"films/{HashOfAbc}.tif", first.StoredPath);
        Assert.Equal("Base FINAL.TIF", first.FileName);
        Assert.Equal(first, second);
        Assert.Equal("abc", await File.ReadAllTextAsync(films.PathOf(first), Cancel));
        Assert.Equal([films.PathOf(first)], Directory.GetFiles(temporary.Store.Folder.FilmsPath));
    }

    [Fact]
    public async Task The_same_film_from_many_at_once_is_one_film()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        var films = temporary.Store.Films;
        var kept = await Task.WhenAll(Enumerable.Range(0, 8).Select(n => Task.Run(() => AddAsync(films, "abc", $"film{n}.tif"), Cancel)));
        _ = Assert.Single(kept.Distinct());
        _ = Assert.Single(Directory.GetFiles(temporary.Store.Folder.FilmsPath));
    }

    [Fact]
    public async Task A_film_whose_sending_breaks_off_leaves_nothing()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        using var broken = new BreakingStream(200_000);
        _ = await Assert.ThrowsAsync<IOException>(() => temporary.Store.Films.AddAsync(broken, "base.tif", "Ines", Cancel));
        Assert.Empty(Directory.GetFiles(temporary.Store.Folder.FilmsPath));
        Assert.Empty(await temporary.Store.Films.ListAsync(Cancel));
    }

    /// <summary>What is on the disk while a film arrives is what a kill would leave.</summary>
    [Fact]
    public async Task A_program_killed_while_a_film_arrives_leaves_no_film_and_the_rest_is_swept_a_day_later()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        var folder = temporary.Store.Folder;
        var afterKill = NewFolder();
        using var halted = new BreakingStream(200_000, () => CopyAll(folder.FilmsPath, afterKill.FilmsPath));
        _ = await Assert.ThrowsAsync<IOException>(() => temporary.Store.Films.AddAsync(halted, "base.tif", "Ines", Cancel));

        var left = Assert.Single(Directory.GetFiles(afterKill.FilmsPath));
        File.SetLastWriteTimeUtc(left, temporary.Time.Now.UtcDateTime);
        Assert.EndsWith(".incoming", left, StringComparison.Ordinal);
        var restarted = await SilkwrightStore.OpenAsync(afterKill, temporary.Time, Cancel);
        Assert.Empty(await restarted.Films.ListAsync(Cancel));
        Assert.True(File.Exists(left), "another program may still be receiving it");
        temporary.Time.Pass(FilmRecords.AbandonedAfter + TimeSpan.FromMinutes(1));
        _ = await SilkwrightStore.OpenAsync(afterKill, temporary.Time, Cancel);
        Assert.Empty(Directory.GetFiles(afterKill.FilmsPath));
        Remove(afterKill);
    }

    [Fact]
    public async Task A_program_killed_between_the_file_and_its_row_finds_the_film_again()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        await File.WriteAllTextAsync(temporary.Store.Folder.FullPath($"films/{HashOfAbc}.tif"), "abc", Cancel);
        var film = await AddAsync(temporary.Store.Films, "abc", "base.tif");
        Assert.Equal(film, Assert.Single(await temporary.Store.Films.ListAsync(Cancel)));
        Assert.Equal("abc", await File.ReadAllTextAsync(temporary.Store.Films.PathOf(film), Cancel));
    }

    [Fact]
    public async Task An_empty_film_is_refused_and_leaves_nothing()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        _ = await Assert.ThrowsAsync<InputProblemException>(() => AddAsync(temporary.Store.Films, "", "base.tif"));
        Assert.Empty(Directory.GetFiles(temporary.Store.Folder.FilmsPath));
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task A_film_is_measured_once_for_each_way_of_measuring(Database database)
    {
        await using var temporary = await TemporaryStore.OpenAsync(database);
        var films = temporary.Store.Films;
        var film = await AddAsync(films, "abc", "base.tif");
        var times = 0;
        Task<FilmMeasurement> Measure(string path, CancellationToken cancel)
        {
            times++;
            Assert.Equal(films.PathOf(film), path);
            return Task.FromResult(AMeasurement);
        }

        var key = new MeasuringKey(film.Hash, null, Negative: false, "1");
        var measured = await films.MeasureOnceAsync(key, Measure, Cancel);
        var again = await films.MeasureOnceAsync(key, Measure, Cancel);
        Assert.Equal(1, times);
        Assert.Equal("base.tif", again.File);
        // A record compares its lists by reference, so the two are compared by what they say.
        Assert.Equivalent(measured, again, strict: true);

        MeasuringKey[] others = [key with { Dpi = 1200 }, key with { Negative = true }, key with { MeasuringVersion = "2" }];
        foreach (var other in others)
            _ = await films.MeasureOnceAsync(other, Measure, Cancel);
        Assert.Equal(4, times);
    }

    [Fact]
    public async Task A_measurement_of_an_unknown_film_is_refused()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        var key = new MeasuringKey(HashOfAbc, null, Negative: false, "1");
        _ = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.Films.KeepMeasurementAsync(key, AMeasurement, Cancel));
    }

    private static FilmMeasurement AMeasurement => new()
    {
        File = "anything",
        WidthPx = 14400,
        HeightPx = 19200,
        Dpi = 1200,
        CoveragePercent = 34.25,
        Components = new FilmCounts(3, 4),
        Specks = new FilmCounts(0, 1),
        FinestImage = new FinestFeature(105.83, [new FilmPlace(1.5, 2.25, 105.83)]),
        ImageWidths = [new WidthShare(200, 12.5)],
        Halftones = [],
        Remarks = ["one"],
    };

    private static async Task<StoredFilm> AddAsync(FilmRecords films, string text, string name)
    {
        using var content = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return await films.AddAsync(content, name, "Ines", Cancel);
    }

    private static void CopyAll(string from, string to)
    {
        foreach (var file in Directory.GetFiles(from))
        {
            using var source = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using var target = File.Create(Path.Combine(to, Path.GetFileName(file)));
            source.CopyTo(target);
        }
    }

    [Theory]
    [InlineData(1, null, "")]
    [InlineData(2, null, ".p2")]
    [InlineData(1, 2400.0, ".2400dpi")]
    [InlineData(12, 1693.25, ".p12.1693_25dpi")]
    public void A_film_has_one_address_and_an_address_one_film(int page, double? dpi, string ending)
    {
        var key = new FilmKey(HashOfAbc, page, dpi);
        Assert.Equal(HashOfAbc + ending, key.Address);
        Assert.Equal(key, FilmKey.Of(key.Address));
    }

    [Theory]
    [InlineData(".p0")]
    [InlineData(".p1")]
    [InlineData(".p02")]
    [InlineData(".600dpi.p2")]
    [InlineData(".x")]
    [InlineData(".")]
    [InlineData(".NaNdpi")]
    public void Any_other_address_is_no_films(string ending) => Assert.Null(FilmKey.Of(HashOfAbc + ending));

    /// <summary>Keys from before there were pages must go on finding what was kept under them.</summary>
    [Fact]
    public void A_page_is_part_of_what_a_measurement_is_kept_under()
    {
        Assert.Equal("file-positive", new FilmKey(HashOfAbc).Measured("1").Options);
        Assert.Equal("600-positive-page3", new FilmKey(HashOfAbc, 3, 600).Measured("1").Options);
    }
}
