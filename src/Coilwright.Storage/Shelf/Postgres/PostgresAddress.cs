using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Coilwright.Core.Faults;
using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

/// <summary>Where a PostgreSQL database is and who asks it: a connection string, as <c>Host=...;Username=...;Database=...</c>.</summary>
/// <remarks>What is secret in it is for the driver alone: it is never shown, not by <see cref="ToString"/> either. A password may stand in it, or in
/// <c>PGPASSWORD</c>, or in a password file (<c>PGPASSFILE</c>, <c>~/.pgpass</c>), as the driver reads them.</remarks>
public sealed class PostgresAddress
{
    // Longer than any server of one's own takes to answer, short enough to be told while she looks.
    private const int SecondsToConnect = 5;

    private static readonly string[] Secrets = ["pass", "pwd", "psw"];

    private PostgresAddress(NpgsqlConnectionStringBuilder parts)
    {
        ConnectionString = parts.ConnectionString;
        var host = parts.Host!.Contains(',', StringComparison.Ordinal) || parts.Host.StartsWith('/')
            ? parts.Host
            : string.Create(CultureInfo.InvariantCulture, $"{parts.Host}:{parts.Port}");
        ToolOptions = string.Create(CultureInfo.InvariantCulture, $"--host={InQuotes(parts.Host)} --port={parts.Port} --username={InQuotes(parts.Username ?? Environment.UserName)} --dbname={InQuotes(Database(parts))}");
        Place = $"{Database(parts)} @ {host}";
    }

    /// <summary>The database and its server, to be shown: <c>beads @ localhost:5432</c>.</summary>
    public string Place { get; }

    /// <summary>The same as PostgreSQL's own tools take it on a command line: <c>--host=... --port=... --username=... --dbname=...</c>, without what is secret.</summary>
    public string ToolOptions { get; }

    /// <summary>The whole of it, secrets too.</summary>
    internal string ConnectionString { get; }

    /// <summary>Reads a connection string.</summary>
    /// <param name="text">The string.</param>
    /// <param name="address">What it says.</param>
    /// <param name="fault">Why it cannot be read.</param>
    public static bool TryRead(string text, [NotNullWhen(true)] out PostgresAddress? address, [NotNullWhen(false)] out Fault? fault)
    {
        address = null;
        fault = null;
        try
        {
            var parts = new NpgsqlConnectionStringBuilder(text) { PersistSecurityInfo = false, IncludeErrorDetail = false };
            if (string.IsNullOrWhiteSpace(parts.Host))
            {
                fault = Fault.Of(FaultCodes.DatabaseAddress, "", "", ("missing", "Host"));
                return false;
            }
            if (!parts.ShouldSerialize("Timeout")) parts.Timeout = SecondsToConnect;
            if (string.IsNullOrEmpty(parts.ApplicationName)) parts.ApplicationName = "Coilwright";
            address = new PostgresAddress(parts);
            return true;
        }
        catch (Exception e) when (e is ArgumentException or KeyNotFoundException or FormatException or InvalidCastException or OverflowException)
        {
            fault = Fault.Of(FaultCodes.DatabaseAddress, "", NotUnderstood(text));
            return false;
        }
    }

    /// <summary>The place alone.</summary>
    public override string ToString() => Place;

    /// <summary>The name in the string that is not understood; empty when it cannot be told, or when a secret could be shown with it: a password with a
    /// semicolon that is not in quotes goes on as a name.</summary>
    private static string NotUnderstood(string text)
    {
        if (Secrets.Any(secret => text.Contains(secret, StringComparison.OrdinalIgnoreCase))) return "";
        try
        {
            var all = new DbConnectionStringBuilder { ConnectionString = text };
            return all.Keys.Cast<string>().FirstOrDefault(name => !Takes(name, all[name])) ?? "";
        }
        catch (ArgumentException)
        {
            return "";
        }
    }

    private static string Database(NpgsqlConnectionStringBuilder parts) => parts.Database ?? parts.Username ?? Environment.UserName;

    /// <summary>A word as a shell takes it for one word.</summary>
    private static string InQuotes(string word) =>
        word.All(sign => char.IsAsciiLetterOrDigit(sign) || "_-./,:@".Contains(sign, StringComparison.Ordinal)) ? word : $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'";

    private static bool Takes(string name, object value)
    {
        try
        {
            _ = new NpgsqlConnectionStringBuilder { [name] = value };
            return true;
        }
        catch (Exception e) when (e is ArgumentException or KeyNotFoundException or FormatException or InvalidCastException or OverflowException)
        {
            return false;
        }
    }
}
