using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Silkwright.Records.Store;

/// <summary>Lets `dotnet ef` write migrations without a shop's folder.</summary>
public sealed class DesignTime : IDesignTimeDbContextFactory<RecordsContext>
{
    public RecordsContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<RecordsContext>().UseSqlite("Data Source=:memory:").Options);
}
