using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Records.Films;
using Silkwright.Records.Store;

namespace Silkwright.Web.Measuring;

/// <summary>Where an uploaded film is looked over before it is kept: nothing stays of one that cannot be read to its end.</summary>
public sealed class FilmDoor(FilmRecords films, DataFolder folder)
{
    // As many at once as there are cores: more would be no sooner done, and would keep the pages waiting for a thread.
    private static readonly SemaphoreSlim Places = new(Environment.ProcessorCount);

    /// <summary>Keeps a film.</summary>
    /// <exception cref="InputProblemException">It is not a film, or damaged.</exception>
    public Task<StoredFilm> ReceiveAsync(IFormFile upload, FilmOptions options, string by, CancellationToken cancel) =>
        WithCheckedAsync(
            upload,
            options,
            async path =>
            {
                await using var content = File.OpenRead(path);
                return await films.AddAsync(content, NameOf(upload), by, cancel);
            },
            cancel);

    /// <summary>Does something with an uploaded film that is not kept.</summary>
    /// <exception cref="InputProblemException">It is not a film, or damaged.</exception>
    public async Task<T> WithCheckedAsync<T>(IFormFile upload, FilmOptions options, Func<string, Task<T>> use, CancellationToken cancel)
    {
        // The uploader's file name never becomes a path.
        var path = Path.Combine(folder.FilmsPath, $"{Guid.NewGuid():N}.incoming");
        try
        {
            await using (var file = File.Create(path))
                await upload.CopyToAsync(file, cancel);
            await Places.WaitAsync(cancel);
            try
            {
                await Task.Run(() => ReadThrough(path, options, cancel), cancel);
                return await use(path);
            }
            finally
            {
                _ = Places.Release();
            }
        }
        catch (InputProblemException fault)
        {
            throw new InputProblemException([.. fault.Problems.Select(p => Renamed(p, Path.GetFileName(path), NameOf(upload)))]);
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>The name without any folder and without what cannot be seen.</summary>
    public static string NameOf(IFormFile upload) =>
        string.Concat(upload.FileName[(upload.FileName.LastIndexOfAny(['/', '\\']) + 1)..].Where(c => !char.IsControl(c)));

    private static void ReadThrough(string path, FilmOptions options, CancellationToken cancel)
    {
        using var source = FilmFile.Open(path, options);
        source.ReadRows(0, source.Header.HeightPx, (_, _) => { }, cancel);
    }

    /// <summary>By the name it came with, and without the hyphens that names of options have in the shell alone.</summary>
    private static Problem Renamed(Problem problem, string kept, string given) => new(
        problem.What.Replace(kept, given, StringComparison.Ordinal),
        problem.Where.Replace(kept, given, StringComparison.Ordinal),
        problem.Remedy.Replace(kept, given, StringComparison.Ordinal).Replace("--", "", StringComparison.Ordinal));
}
