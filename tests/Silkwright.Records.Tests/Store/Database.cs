namespace Silkwright.Records.Tests.Store;

/// <summary>The databases that every promise of the store is checked on.</summary>
public enum Database
{
    Sqlite,
    Postgres,
}
