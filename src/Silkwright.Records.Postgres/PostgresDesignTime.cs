using Microsoft.EntityFrameworkCore.Design;
using Silkwright.Records.Store;

namespace Silkwright.Records.Postgres;

/// <summary>Lets `dotnet ef` write PostgreSQL migrations without a server.</summary>
public sealed class PostgresDesignTime : IDesignTimeDbContextFactory<RecordsContext>
{
    public RecordsContext CreateDbContext(string[] args) => new(PostgresStore.Options("Host=127.0.0.1"));
}
