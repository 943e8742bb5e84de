using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;

namespace Silkwright.Records.Store;

/// <summary>One program at a time changes the database's shape.</summary>
/// <remarks>
/// EF Core guards a migration of SQLite by a row in a table, which stays when the program is killed and blocks every later start.
/// A locked file is let go by the operating system, so whoever holds it may clear such a row away.
/// </remarks>
internal sealed class MigrationTurn : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    private readonly FileStream file;

    private MigrationTurn(FileStream file) => this.file = file;

    public static async Task<MigrationTurn> TakeAsync(DataFolder folder, CancellationToken cancel)
    {
        var path = Path.Combine(folder.Path, "silkwright.opening");
        for (var waited = TimeSpan.Zero; ; waited += Pause)
        {
            try
            {
                return new MigrationTurn(new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
            }
            catch (IOException) when (waited < Patience)
            {
                await Task.Delay(Pause, TimeProvider.System, cancel);
            }
            catch (IOException fault)
            {
                throw new InputProblemException(new Problem(
                    $"Another program has been opening this store for {Patience.TotalSeconds:0} s: {fault.Message}",
                    path,
                    "Close the other program, then start again."));
            }
        }
    }

    /// <summary>Clears what a killed migration left behind. Only under this turn.</summary>
    public async Task ForgetAbandonedLockAsync(RecordsContext context, CancellationToken cancel)
    {
        ObjectDisposedException.ThrowIf(!file.CanWrite, this);
        if (context.Database.IsSqlite())
            _ = await context.Database.ExecuteSqlRawAsync("DROP TABLE IF EXISTS \"__EFMigrationsLock\"", cancel);
    }

    public void Dispose() => file.Dispose();
}
