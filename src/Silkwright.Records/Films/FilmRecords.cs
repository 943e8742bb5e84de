using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Silkwright.Artwork;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Films;

/// <summary>The films, each kept once, and what each was found to demand.</summary>
public sealed class FilmRecords(SilkwrightStore store)
{
    /// <summary>Received files that nobody has settled after this long belong to a program that was killed.</summary>
    public static readonly TimeSpan AbandonedAfter = TimeSpan.FromDays(1);

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>Stores a film. The same bytes again give the film already there, under its first name.</summary>
    /// <param name="content">Read to its end; never held whole in memory.</param>
    /// <param name="fileName">As the person calls it; folders are dropped.</param>
    /// <param name="by">The person.</param>
    /// <param name="cancel">Stops the work; nothing stays.</param>
    /// <exception cref="InputProblemException">The film is empty, has no name, or nobody is named.</exception>
    public async Task<StoredFilm> AddAsync(Stream content, string fileName, string by, CancellationToken cancel = default)
    {
        var name = FilmFile.NameOnly(fileName).Trim();
        var problems = new ProblemList();
        DocumentFaults.Person(problems, "by", by);
        if (name.Length is 0 or > DocumentFaults.LongestText)
            problems.Add("The film has no usable file name.", fileName, "Give the file a name such as base.tif.");
        problems.ThrowIfAny();

        var incoming = await FilmFile.ReceiveAsync(content, store.Folder.FilmsPath, cancel);
        try
        {
            if (incoming.Bytes == 0)
                throw new InputProblemException(new Problem("The film is empty.", name, "Export it again, then store it."));
            return await SettleAsync(incoming, name, by, cancel);
        }
        finally
        {
            File.Delete(incoming.Path);
        }
    }

    /// <summary>Stores a film from a file, under the file's own name.</summary>
    /// <exception cref="InputProblemException">The file cannot be read or is empty, or nobody is named.</exception>
    public async Task<StoredFilm> AddFileAsync(string path, string by, CancellationToken cancel = default)
    {
        try
        {
            await using var content = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            return await AddAsync(content, path, by, cancel);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException)
        {
            throw new InputProblemException(new Problem("The film cannot be read.", path, "Check the name, and that this user may read the file."));
        }
    }

    /// <summary>A film by its hash; none when it is not stored.</summary>
    public async Task<StoredFilm?> FindAsync(string hash, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await context.Films.AsNoTracking().FirstOrDefaultAsync(f => f.Hash == hash, cancel);
    }

    /// <summary>Every film, by name.</summary>
    public async Task<IReadOnlyList<StoredFilm>> ListAsync(CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        return await context.Films.AsNoTracking().OrderBy(f => f.FileName).ThenBy(f => f.Hash).ToListAsync(cancel);
    }

    /// <summary>Where the film lies on this machine.</summary>
    public string PathOf(StoredFilm film) => store.Folder.FullPath(film.StoredPath);

    /// <summary>The measurement made before with the same options and in the same way; none when there is none.</summary>
    public async Task<FilmMeasurement?> FindMeasurementAsync(MeasuringKey key, CancellationToken cancel = default)
    {
        await using var context = store.CreateDbContext();
        var kept = await context.FilmMeasurements.AsNoTracking()
            .FirstOrDefaultAsync(m => m.FilmHash == key.FilmHash && m.Options == key.Options && m.MeasuringVersion == key.MeasuringVersion, cancel);
        return kept is null ? null : JsonSerializer.Deserialize<FilmMeasurement>(kept.Json, Json);
    }

    /// <summary>Keeps a measurement. The first one of a key stays.</summary>
    /// <exception cref="InputProblemException">The film is not stored.</exception>
    public async Task KeepMeasurementAsync(MeasuringKey key, FilmMeasurement measurement, CancellationToken cancel = default)
    {
        _ = await WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            if (!await context.Films.AnyAsync(f => f.Hash == key.FilmHash, cancel))
                throw new InputProblemException(new Problem("No film with this hash is stored.", key.FilmHash, "Store the film first."));
            if (await context.FilmMeasurements.AnyAsync(
                m => m.FilmHash == key.FilmHash && m.Options == key.Options && m.MeasuringVersion == key.MeasuringVersion, cancel))
                return 0;
            _ = context.Add(new StoredMeasurement
            {
                FilmHash = key.FilmHash,
                Options = key.Options,
                MeasuringVersion = key.MeasuringVersion,
                Json = JsonSerializer.Serialize(measurement, Json),
                MeasuredAt = store.Time.KeptNow(),
            });
            return await context.SaveChangesAsync(cancel);
        });
    }

    /// <summary>The film's measurement: the one kept, else a new one that is then kept.</summary>
    /// <param name="key">Film, options and way of measuring.</param>
    /// <param name="measure">Measures the film at the path it is given.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The film is not stored, or its file is gone.</exception>
    public async Task<FilmMeasurement> MeasureOnceAsync(
        MeasuringKey key, Func<string, CancellationToken, Task<FilmMeasurement>> measure, CancellationToken cancel = default)
    {
        if (await FindMeasurementAsync(key, cancel) is { } kept)
            return kept;
        var film = await FindAsync(key.FilmHash, cancel)
            ?? throw new InputProblemException(new Problem("No film with this hash is stored.", key.FilmHash, "Store the film first."));
        if (!File.Exists(PathOf(film)))
            throw new InputProblemException(new Problem("The film's file is gone from the data folder.", PathOf(film), "Store the film again."));
        var measured = (await measure(PathOf(film), cancel)) with { File = film.FileName };
        await KeepMeasurementAsync(key, measured, cancel);
        return measured;
    }

    /// <summary>Removes what killed programs left half-received.</summary>
    /// <returns>How many files were removed.</returns>
    public int SweepAbandoned()
    {
        var before = store.Time.GetUtcNow() - AbandonedAfter;
        var abandoned = Directory.EnumerateFiles(store.Folder.FilmsPath, $"*{FilmFile.IncomingSuffix}")
            .Where(path => File.GetLastWriteTimeUtc(path) < before.UtcDateTime)
            .ToList();
        abandoned.ForEach(File.Delete);
        return abandoned.Count;
    }

    private Task<StoredFilm> SettleAsync(IncomingFilm incoming, string name, string by, CancellationToken cancel) =>
        WriteConflict.RetryAsync(async () =>
        {
            await using var context = store.CreateDbContext();
            var kept = await context.Films.AsNoTracking().FirstOrDefaultAsync(f => f.Hash == incoming.Hash, cancel);
            var film = kept ?? new StoredFilm
            {
                Hash = incoming.Hash,
                FileName = name,
                Bytes = incoming.Bytes,
                StoredPath = $"films/{incoming.Hash}{FilmFile.Ending(name)}",
                AddedAt = store.Time.KeptNow(),
                AddedBy = by.Trim(),
            };
            // File first, row second: a row always has its film; a film without a row is found again by its hash.
            if (!File.Exists(PathOf(film)))
                FilmFile.Settle(incoming, PathOf(film));
            if (kept is null)
            {
                _ = context.Add(film);
                _ = await context.SaveChangesAsync(cancel);
            }

            return film;
        });
}
