using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Postgres;
using Coilwright.Storage.Shelf.Sqlite;

namespace Coilwright.Web.Hosting;

/// <summary>How the bench is started.</summary>
public sealed record BenchOptions
{
    /// <summary>The variable of the environment that may hold the address of a database.</summary>
    public const string DatabaseVariable = "COILWRIGHT_DATABASE";

    /// <summary>The port asked for first. Not a registered one; chosen by us.</summary>
    public const int UsualPort = 5317;

    /// <summary>The port that she asked for; 0 takes any free one; null tries <see cref="UsualPort"/> and takes any free one when it is taken.</summary>
    public int? Port { get; init; }

    /// <summary>Folder that her pieces are kept in.</summary>
    public string Shelf { get; init; } = ShelfFolder.Default;

    /// <summary>The database that her pieces are kept in; null when they are in <see cref="Shelf"/>.</summary>
    public PostgresAddress? Database { get; init; }

    /// <summary>How her shelf is opened; for tests, which bring trouble about with it.</summary>
    internal Func<SqliteShelfOptions, SqliteShelfOptions> Opening { get; init; } = usual => usual;

    /// <summary>The same for a database.</summary>
    internal Func<PostgresShelfOptions, PostgresShelfOptions> OpeningDatabase { get; init; } = usual => usual;

    /// <summary>Folder of the program's data and examples.</summary>
    public string ProgramFolder { get; init; } = AppContext.BaseDirectory;

    /// <summary>Reads the command line: <c>--port N</c>, <c>--shelf FOLDER</c>, <c>--database ADDRESS</c>.</summary>
    /// <param name="args">The arguments.</param>
    /// <param name="database">The address that the environment gives, so that a password need not stand on the command line; null when it gives none. What
    /// stands on the command line overrules it.</param>
    /// <param name="options">What was asked for.</param>
    /// <param name="slip">What was not understood.</param>
    public static bool TryRead(IReadOnlyList<string> args, string? database, [NotNullWhen(true)] out BenchOptions? options, [NotNullWhen(false)] out BenchSlip? slip)
    {
        var (read, shelf, address) = (new BenchOptions(), (string?)null, (string?)null);
        (options, slip) = (null, null);
        for (var i = 0; i < args.Count; i += 2)
        {
            var value = i + 1 < args.Count && args[i + 1].Length > 0 ? args[i + 1] : null;
            switch (args[i])
            {
                case "--port" when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port <= ushort.MaxValue:
                    read = read with { Port = port };
                    break;
                case "--shelf" when value is not null:
                    shelf = value;
                    break;
                case "--database" when value is not null:
                    address = value;
                    break;
                default:
                    // Of an address that stands where none is looked for, the beginning: it may hold a password.
                    slip = new BenchSlip.NotUnderstood(args[i].Split('=', ';')[0]);
                    return false;
            }
        }
        if (shelf is not null && address is not null)
        {
            slip = new BenchSlip.TwoPlaces();
            return false;
        }
        if (shelf is not null) read = read with { Shelf = Path.GetFullPath(shelf) };
        else if ((address ?? database) is { Length: > 0 } text)
        {
            if (!PostgresAddress.TryRead(text, out var found, out var fault))
            {
                slip = new BenchSlip.Address(fault);
                return false;
            }
            read = read with { Database = found };
        }
        options = read;
        return true;
    }
}
