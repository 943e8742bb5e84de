using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Silkwright.Records.Store;

/// <summary>Two writers wanted the same next number: whoever comes second reads again and takes the one after.</summary>
internal static class WriteConflict
{
    // Each retry means that somebody else's entry was written; so many in a row do not happen in a screen room.
    private const int MostTries = 50;

    private const int SqliteConstraintPrimaryKey = 1555;
    private const int SqliteConstraintUnique = 2067;
    private const string SqlStateUniqueViolation = "23505";

    /// <summary>Runs a read-check-write until no other writer has taken the number it chose.</summary>
    public static async Task<T> RetryAsync<T>(Func<Task<T>> attempt)
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                return await attempt();
            }
            catch (DbUpdateException fault) when (tries < MostTries && IsTaken(fault))
            {
                // read again
            }
        }
    }

    private static bool IsTaken(DbUpdateException fault) => fault.InnerException switch
    {
        SqliteException sqlite => sqlite.SqliteExtendedErrorCode is SqliteConstraintPrimaryKey or SqliteConstraintUnique,
        DbException other => other.SqlState == SqlStateUniqueViolation,
        _ => false,
    };
}
