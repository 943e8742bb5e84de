using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Silkwright.Records.Store;

/// <summary>Sets on every connection what SQLite keeps per connection, and so forgets.</summary>
/// <remarks>
/// WAL lets pages read while a tablet writes; FULL survives a power cut after the commit was reported (sqlite.org, "PRAGMA synchronous");
/// foreign keys are off by default in SQLite.
/// </remarks>
internal sealed class SqlitePragmas : DbConnectionInterceptor
{
    private const string Reading = "PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;";
    private const string Writing = "PRAGMA journal_mode=WAL; " + Reading;

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = Command(connection);
        _ = command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = Command(connection);
        _ = await command.ExecuteNonQueryAsync(cancellationToken);
    }

    // EF Core asks by a read-only connection whether the database is there; that one cannot change the journal.
    [SuppressMessage("Security", "CA2100", Justification = "One of two constants.")]
    private static DbCommand Command(DbConnection connection)
    {
        var readOnly = new SqliteConnectionStringBuilder(connection.ConnectionString).Mode == SqliteOpenMode.ReadOnly;
        var command = connection.CreateCommand();
        command.CommandText = readOnly ? Reading : Writing;
        return command;
    }
}
