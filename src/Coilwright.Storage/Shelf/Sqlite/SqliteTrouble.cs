using Coilwright.Core.Faults;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

/// <summary>Turns what SQLite throws into a fault with a reason that can be said in any language.</summary>
internal static class SqliteTrouble
{
    // Result codes: https://www.sqlite.org/rescode.html
    private const int Perm = 3, Busy = 5, Locked = 6, ReadOnly = 8, Corrupt = 11, Full = 13, CannotOpen = 14, Auth = 23, NotADatabase = 26;

    /// <summary>Whether an exception is the store's or the file system's way of saying no, rather than a defect of ours.</summary>
    public static bool Is(Exception e) => e is (SqliteException or IOException or UnauthorizedAccessException) and not ShelfUnreadableException;

    /// <summary>Whether it is the shelf's own file that is not sound.</summary>
    public static bool IsDamage(Exception e) => e is SqliteException { SqliteErrorCode: Corrupt or NotADatabase };

    /// <summary>The fault.</summary>
    /// <param name="file">The shelf's file.</param>
    /// <param name="e">What was thrown.</param>
    public static Fault Fault(string file, Exception e)
    {
        if (e is not SqliteException sqlite)
        {
            var detail = FileTrouble.Fault(FaultCodes.ShelfUnreachable, file, e);
            return detail.Values.GetValueOrDefault("detail") == FaultDetails.DiskFull ? Of(FaultCodes.ShelfDiskFull) : detail;
        }
        return sqlite.SqliteErrorCode switch
        {
            Busy or Locked => Of(FaultCodes.ShelfLocked),
            ReadOnly or Perm or Auth => Of(FaultCodes.ShelfReadOnly),
            Full => Of(FaultCodes.ShelfDiskFull),
            NotADatabase => Of(FaultCodes.ShelfNotOne),
            Corrupt => Of(FaultCodes.ShelfDamaged, ("reason", "")),
            CannotOpen => Of(FaultCodes.ShelfUnreachable, ("detail", Directory.Exists(Path.GetDirectoryName(file)) ? FaultDetails.NotAllowed : FaultDetails.NotFound)),
            _ => Of(FaultCodes.ShelfOther, ("reason", sqlite.Message)),
        };

        Fault Of(string code, params ReadOnlySpan<(string Name, string Value)> values) => Core.Faults.Fault.Of(code, "", file, values);
    }
}
