using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Sqlite;

namespace Coilwright.Web.Hosting;

/// <summary>How the bench is started.</summary>
public sealed record BenchOptions
{
    /// <summary>The port asked for first. Not a registered one; chosen by us.</summary>
    public const int UsualPort = 5317;

    /// <summary>The port that she asked for; 0 takes any free one; null tries <see cref="UsualPort"/> and takes any free one when it is taken.</summary>
    public int? Port { get; init; }

    /// <summary>Folder that her pieces are kept in.</summary>
    public string Shelf { get; init; } = ShelfFolder.Default;

    /// <summary>How her shelf is opened; for tests, which bring trouble about with it.</summary>
    internal Func<SqliteShelfOptions, SqliteShelfOptions> Opening { get; init; } = usual => usual;

    /// <summary>Folder of the program's data and examples.</summary>
    public string ProgramFolder { get; init; } = AppContext.BaseDirectory;

    /// <summary>Reads the command line: <c>--port N</c>, <c>--shelf FOLDER</c>.</summary>
    /// <param name="args">The arguments.</param>
    /// <param name="options">What was asked for.</param>
    /// <param name="slip">The argument that was not understood.</param>
    public static bool TryRead(IReadOnlyList<string> args, [NotNullWhen(true)] out BenchOptions? options, [NotNullWhen(false)] out string? slip)
    {
        options = new BenchOptions();
        slip = null;
        for (var i = 0; i < args.Count; i++)
        {
            if (args[i] == "--port" && i + 1 < args.Count
                && int.TryParse(args[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port <= ushort.MaxValue)
            {
                options = options with { Port = port };
                i++;
                continue;
            }
            if (args[i] == "--shelf" && i + 1 < args.Count && args[i + 1].Length > 0)
            {
                options = options with { Shelf = Path.GetFullPath(args[i + 1]) };
                i++;
                continue;
            }
            slip = args[i];
            options = null;
            return false;
        }
        return true;
    }
}
