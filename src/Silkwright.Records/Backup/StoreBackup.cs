using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;
using Silkwright.Records.Films;
using Silkwright.Records.Store;

namespace Silkwright.Records.Backup;

/// <summary>A copy of a store that is a data folder itself: open it, or put it in the place of the lost one.</summary>
public static class StoreBackup
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { WriteIndented = true };

    /// <summary>Writes a copy while others go on reading and writing. Films already there are not copied again.</summary>
    /// <param name="store">An embedded store.</param>
    /// <param name="targetFolder">A folder without a silkwright.db; made where it is missing.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The films of the copy, also listed in its films.json.</returns>
    /// <remarks>One consistent state of the database: sqlite.org, "VACUUM", section "VACUUM with an INTO clause".</remarks>
    /// <exception cref="InputProblemException">The store is on a server, the target is taken or cannot be written to, or a film is gone.</exception>
    public static async Task<IReadOnlyList<StoredFilm>> WriteAsync(
        SilkwrightStore store, string targetFolder, CancellationToken cancel = default)
    {
        var target = DataFolder.Open(targetFolder);
        await using var context = store.CreateDbContext();
        if (!context.Database.IsSqlite())
            throw new InputProblemException(new Problem("This store is on a database server.", targetFolder, "Back it up with the server's own tools, and copy films/."));
        if (File.Exists(target.DatabasePath))
            throw new InputProblemException(new Problem("There is a store in this folder already.", target.DatabasePath, "Name a new folder for the copy."));

        var unfinished = target.DatabasePath + FilmFile.IncomingSuffix;
        File.Delete(unfinished);
        _ = await context.Database.ExecuteSqlAsync($"VACUUM INTO {unfinished}", cancel);
        // Films are never changed or removed, so those listed after the copy include every one the copy names.
        var films = await store.Films.ListAsync(cancel);
        await CopyFilmsAsync(store, target, films, cancel);
        await File.WriteAllTextAsync(target.FullPath("films.json"), JsonSerializer.Serialize(films, Json), cancel);
        // The name comes last: a folder with silkwright.db is a whole copy.
        File.Move(unfinished, target.DatabasePath);
        return films;
    }

    private static async Task CopyFilmsAsync(SilkwrightStore store, DataFolder target, IReadOnlyList<StoredFilm> films, CancellationToken cancel)
    {
        foreach (var film in films.Where(f => !File.Exists(target.FullPath(f.StoredPath))))
        {
            if (!File.Exists(store.Films.PathOf(film)))
                throw new InputProblemException(new Problem($"The file of film {film.FileName} is gone.", store.Films.PathOf(film), "Store the film again, then back up."));
            await CopyAsync(store.Films.PathOf(film), target, film, cancel);
        }
    }

    private static async Task CopyAsync(string from, DataFolder target, StoredFilm film, CancellationToken cancel)
    {
        await using var content = new FileStream(from, FileMode.Open, FileAccess.Read, FileShare.Read);
        var copy = await FilmFile.ReceiveAsync(content, target.FilmsPath, cancel);
        FilmFile.Settle(copy, target.FullPath(film.StoredPath));
    }
}
