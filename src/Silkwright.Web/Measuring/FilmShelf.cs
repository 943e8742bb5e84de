using System.Collections.Concurrent;
using Silkwright.Film.Places;
using Silkwright.Records.Films;
using Silkwright.Records.Store;

namespace Silkwright.Web.Measuring;

/// <summary>Stored films, ready to be looked at anywhere; what that takes is made when somebody first looks.</summary>
public sealed class FilmShelf(FilmRecords films, DataFolder folder, TimeProvider time)
{
    // A pass over a film is bound by one core; more of them at once than there are cores would only wait for each other.
    private static readonly SemaphoreSlim Places = new(Environment.ProcessorCount);

    private readonly ConcurrentDictionary<FilmKey, Task<FilmTiles>> ready = new();

    /// <summary>A film's tiles; none when it is not stored.</summary>
    /// <exception cref="Estimates.InputProblemException">The film cannot be read.</exception>
    public async Task<FilmTiles?> OfAsync(FilmKey key, CancellationToken cancel)
    {
        if (await films.FindAsync(key.Hash, cancel) is not { } film || !File.Exists(films.PathOf(film)))
            return null;

        // Whoever leaves does not stop the work: the next tile asked for needs it too.
        var making = ready.GetOrAdd(key, _ => MakeAsync(films.PathOf(film), key));
        try
        {
            return await making.WaitAsync(cancel);
        }
        catch (Exception) when (making.IsFaulted)
        {
            _ = ready.TryRemove(KeyValuePair.Create(key, making));
            throw;
        }
    }

    private async Task<FilmTiles> MakeAsync(string path, FilmKey key)
    {
        await Places.WaitAsync();
        try
        {
            var beside = Path.Combine(Directory.CreateDirectory(folder.TilesPath).FullName, key.Address);
            var tiles = await Task.Run(() => FilmTiles.Of(path, FilmBench.OptionsOf(key), beside, CancellationToken.None));
            TilesSweep.Touch(beside, time);
            return tiles;
        }
        finally
        {
            _ = Places.Release();
        }
    }
}
