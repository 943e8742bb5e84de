using System.Data.Common;
using Microsoft.Data.Sqlite;
using Silkwright.Estimates;

namespace Silkwright.Records.Store;

/// <summary>What the disk or the database refuses, in words for the person who can mend it.</summary>
public static class StoreFaults
{
    // Result codes: sqlite.org, "Result and Error Codes".
    private const int Error = 1;
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    // ENOSPC of POSIX, ERROR_DISK_FULL of Windows.
    private const int PosixNoSpace = 28;
    private const int WindowsDiskFull = 112;

    /// <summary>The fault in words; none where it is a failure of ours.</summary>
    /// <param name="fault">What was thrown, or what lies in it.</param>
    /// <param name="folder">Whose store it was.</param>
    public static Problem? Told(Exception fault, DataFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return fault switch
        {
            SqliteException { SqliteErrorCode: NotADatabase or Corrupt } => new(
                "The database is damaged, or is none.", folder.DatabasePath, "Put its last backup there, or name another folder with --data."),
            SqliteException { SqliteErrorCode: Full } => DiskFull(folder),
            IOException when (fault.HResult & 0xFFFF) is PosixNoSpace or WindowsDiskFull => DiskFull(folder),
            SqliteException { SqliteErrorCode: ReadOnly or InputOutput or CannotOpen } => new(
                "The database cannot be read or written.", folder.DatabasePath, "See that it is a file, that this user may write it, and that its disk is well."),
            SqliteException { SqliteErrorCode: Busy or Locked } => new(
                "Another program holds the database.", folder.DatabasePath, "Close that program, then try again."),
            SqliteException => null,
            DbException { IsTransient: true } => new(
                "The database server does not answer.", "database server", "See that it runs and can be reached, then try again."),
            _ => fault.InnerException is { } inner ? Told(inner, folder) : null,
        };
    }

    /// <summary>The same, when the store is opened.</summary>
    internal static Problem? ToldOnOpening(Exception fault, DataFolder folder) => fault is SqliteException { SqliteErrorCode: Error }
        ? new("The database holds tables of another program.", folder.DatabasePath, "Name another folder with --data.")
        : Told(fault, folder);

    private static Problem DiskFull(DataFolder folder) =>
        new("The disk is full. Nothing was kept.", folder.Path, "Make room on it, then try again.");
}
