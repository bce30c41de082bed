using System.Net.Sockets;
using Coilwright.Core.Faults;
using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

/// <summary>Turns what PostgreSQL and its driver throw into a fault with a reason that can be said in any language. Of what was thrown only the server's own short
/// sentence is ever passed on: never the address, which may hold a password.</summary>
internal static class PostgresTrouble
{
    /// <summary>Whether an exception is the database's or the network's way of saying no, rather than a defect of ours.</summary>
    public static bool Is(Exception e) => e is NpgsqlException or SocketException or (IOException and not ShelfUnreadableException) or TimeoutException;

    /// <summary>Whether the connection itself was lost, or never was: what was asked on it may be asked again on another.</summary>
    public static bool IsLost(Exception e) => e is PostgresException said
        ? said.SqlState is PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown or PostgresErrorCodes.CannotConnectNow
        : Cause(e) is SocketException or IOException;

    /// <summary>The fault.</summary>
    /// <param name="place">The database, as it may be shown.</param>
    /// <param name="e">What was thrown.</param>
    public static Fault Fault(string place, Exception e) => e is PostgresException said ? Of(place, said) : Cause(e) switch
    {
        TimeoutException => Make(FaultCodes.DatabaseSlow, place),
        SocketException => Make(FaultCodes.DatabaseUnreachable, place),
        IOException => Make(FaultCodes.DatabaseLost, place),
        // The driver's own word, before it asks: it has no code.
        NpgsqlException none when none.Message.StartsWith("No password has been provided", StringComparison.Ordinal) => Make(FaultCodes.DatabaseRefused, place),
        var other => Make(FaultCodes.DatabaseOther, place, ("reason", other.Message)),
    };

    // Codes: https://www.postgresql.org/docs/current/errcodes-appendix.html
    private static Fault Of(string place, PostgresException said) => said.SqlState switch
    {
        PostgresErrorCodes.InvalidPassword or PostgresErrorCodes.InvalidAuthorizationSpecification => Make(FaultCodes.DatabaseRefused, place),
        PostgresErrorCodes.InvalidCatalogName => Make(FaultCodes.DatabaseMissing, place),
        PostgresErrorCodes.InsufficientPrivilege => Make(FaultCodes.DatabaseNoRights, place),
        PostgresErrorCodes.ReadOnlySqlTransaction => Make(FaultCodes.DatabaseReadOnly, place),
        PostgresErrorCodes.DiskFull => Make(FaultCodes.DatabaseFull, place),
        PostgresErrorCodes.TooManyConnections => Make(FaultCodes.DatabaseCrowded, place),
        PostgresErrorCodes.LockNotAvailable or PostgresErrorCodes.DeadlockDetected or PostgresErrorCodes.SerializationFailure => Make(FaultCodes.ShelfLocked, place),
        PostgresErrorCodes.QueryCanceled => Make(FaultCodes.DatabaseSlow, place),
        PostgresErrorCodes.CannotConnectNow => Make(FaultCodes.DatabaseUnreachable, place),
        PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown => Make(FaultCodes.DatabaseLost, place),
        _ => Make(FaultCodes.DatabaseOther, place, ("reason", said.MessageText)),
    };

    private static Fault Make(string code, string place, params ReadOnlySpan<(string Name, string Value)> values) => Core.Faults.Fault.Of(code, "", place, values);

    /// <summary>What lies at the bottom of what the driver threw.</summary>
    private static Exception Cause(Exception e)
    {
        for (var inner = e; inner is not null; inner = inner.InnerException)
            if (inner is SocketException or TimeoutException or IOException)
                return inner;
        return e;
    }
}
