using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Silkwright.Records.Store;

/// <summary>Sets on every connection what SQLite keeps per connection, and so forgets.</summary>
/// <remarks>
/// WAL lets pages read while a tablet writes; FULL survives a power cut after the commit was reported (sqlite.org, "PRAGMA synchronous");
/// foreign keys are off by default in SQLite.
/// </remarks>
internal sealed class SqlitePragmas : DbConnectionInterceptor
{
    private const string Pragmas = "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        _ = command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        _ = await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
