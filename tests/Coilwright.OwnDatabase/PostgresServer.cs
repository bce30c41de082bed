using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace Coilwright.OwnDatabase;

/// <summary>A PostgreSQL server of the tests' own: in a folder that goes with it, on a free port of this machine alone, without asking the system's.</summary>
/// <remarks>Needs the server's programs (Debian: <c>postgresql</c>), found under <c>/usr/lib/postgresql</c> or in the folder that <c>COILWRIGHT_POSTGRES</c> names.
/// The server does not run as root; there it is run as the user <c>postgres</c>, whom the package brings.</remarks>
public sealed class PostgresServer : IAsyncDisposable
{
    /// <summary>Who may do everything in it.</summary>
    public const string Owner = "keeper";

    /// <summary>Her password; only asked for by port, never by socket.</summary>
    public const string Password = "p;w'=\"clasp\" 7";

    private static readonly SemaphoreSlim One = new(1, 1);
    private static PostgresServer? _shared;

    private readonly string _folder;
    private readonly bool _durable;
    private int _databases;

    private PostgresServer(string folder, bool durable) => (_folder, _durable) = (folder, durable);

    /// <summary>The port that it listens on, on 127.0.0.1.</summary>
    public int Port { get; } = FreePort();

    /// <summary>The folder of its socket: whoever reaches it needs no password.</summary>
    public string Sockets => Path.Combine(_folder, "s");

    private string Data => Path.Combine(_folder, "data");

    private static string Programs { get; } = Environment.GetEnvironmentVariable("COILWRIGHT_POSTGRES")
        ?? Installed()
        ?? throw new InvalidOperationException("PostgreSQL's programs are not there. Install the package postgresql, or name their folder in COILWRIGHT_POSTGRES.");

    /// <summary>One for all who bring about no trouble; it goes with the program.</summary>
    public static async Task<PostgresServer> SharedAsync()
    {
        await One.WaitAsync();
        try
        {
            return _shared ??= await StartNewAsync();
        }
        finally
        {
            One.Release();
        }
    }

    /// <summary>A new one, started.</summary>
    /// <param name="durable">Whether it waits for the disk, as a server does that somebody relies on.</param>
    public static async Task<PostgresServer> StartNewAsync(bool durable = false)
    {
        var server = new PostgresServer(Directory.CreateTempSubdirectory("coilwright-pg-").FullName, durable);
        try
        {
            server.EndWithUs();
            var secret = Path.Combine(server._folder, "secret");
            await File.WriteAllTextAsync(secret, Password);
            Directory.CreateDirectory(server.Sockets);
            if (Environment.IsPrivilegedProcess) server.Run("chown", "-R", "postgres", server._folder);
            server.RunAsItself("initdb", "--pgdata", server.Data, "--username", Owner, "--pwfile", secret, "--auth-local", "trust", "--auth-host", "scram-sha-256",
                "--encoding", "UTF8", "--locale", "C.UTF-8", "--no-sync");
            server.Start();
            return server;
        }
        catch
        {
            await server.DisposeAsync();
            throw;
        }
    }

    /// <summary>Starts it, and waits until it answers.</summary>
    public void Start() => RunAsItself("pg_ctl", "start", "--wait", "--silent", "--pgdata", Data, "--log", Path.Combine(_folder, "log"), "--options", string.Create(CultureInfo.InvariantCulture,
        $"-c listen_addresses=127.0.0.1 -c port={Port} -c unix_socket_directories={Sockets} -c max_connections=200 -c shared_buffers=16MB -c fsync={(_durable ? "on" : "off")}"));

    /// <summary>Stops it.</summary>
    /// <param name="mode"><c>fast</c> as an administrator does; <c>immediate</c> as a crash does.</param>
    public void Stop(string mode = "fast") => RunAsItself("pg_ctl", "stop", "--wait", "--silent", "--mode", mode, "--pgdata", Data);

    /// <summary>Makes an empty database, and gives the way to it, by socket.</summary>
    public async Task<string> NewDatabaseAsync()
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"beads{Interlocked.Increment(ref _databases)}");
        await AskAsync(By("postgres"), $"CREATE DATABASE {name}");
        return By(name);
    }

    /// <summary>Drops a database, whoever is in it.</summary>
    public async Task DropAsync(string way) => await AskAsync(By("postgres"), $"DROP DATABASE IF EXISTS {new NpgsqlConnectionStringBuilder(way).Database} WITH (FORCE)");

    /// <summary>The way to a database by socket, where everybody is let in.</summary>
    public string By(string database, string user = Owner) =>
        new NpgsqlConnectionStringBuilder { Host = Sockets, Port = Port, Username = user, Database = database }.ConnectionString;

    /// <summary>The way to a database by port, where a password is asked for.</summary>
    public string ByPort(string database, string user = Owner, string? password = Password) =>
        new NpgsqlConnectionStringBuilder { Host = "127.0.0.1", Port = Port, Username = user, Database = database, Password = password }.ConnectionString;

    /// <summary>Asks something, as another program would.</summary>
    public static async Task<object?> AskAsync(string way, string sql)
    {
        await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(way) { Pooling = false }.ConnectionString);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        return await command.ExecuteScalarAsync();
    }

    /// <summary>Does what somebody types in a shell of hers, where the server's own tools are found and know the password.</summary>
    /// <param name="command">What she types; files are in a folder that goes with the server.</param>
    public void InShell(string command) => Run("env", $"PATH={Programs}:{Environment.GetEnvironmentVariable("PATH")}", $"PGPASSWORD={Password}", "sh", "-c", command);

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        if (File.Exists(Path.Combine(Data, "postmaster.pid"))) Stop("immediate");
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>Sees to it that server and folder go with this program, also when it is killed.</summary>
    private void EndWithUs() => Run("sh", "-c", "(tail --pid=\"$0\" -f /dev/null; cd / && kill -QUIT $(head -n 1 \"$1/data/postmaster.pid\"); rm -rf \"$1\") >/dev/null 2>&1 </dev/null &",
        Environment.ProcessId.ToString(CultureInfo.InvariantCulture), _folder);

    private void RunAsItself(string program, params string[] args)
    {
        var path = Path.Combine(Programs, program);
        if (Environment.IsPrivilegedProcess) Run("runuser", ["-u", "postgres", "--", path, .. args]);
        else Run(path, args);
    }

    private void Run(string program, params string[] args)
    {
        // A server that was started keeps what it was given to write to, so it is given nothing that anybody waits for.
        var said = Path.Combine(_folder, "said");
        using var run = Process.Start(new ProcessStartInfo("sh", ["-c", "exec \"$@\" >\"$0\" 2>&1 </dev/null", said, program, .. args]) { WorkingDirectory = _folder })!;
        run.WaitForExit();
        if (run.ExitCode != 0) throw new InvalidOperationException($"{program} {string.Join(' ', args)}: {File.ReadAllText(said)}{Log()}");
    }

    /// <summary>The programs of the newest version that is installed.</summary>
    private static string? Installed() => !Directory.Exists("/usr/lib/postgresql") ? null
        : Directory.GetDirectories("/usr/lib/postgresql").OrderByDescending(folder => int.TryParse(Path.GetFileName(folder), NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : 0)
            .Select(folder => Path.Combine(folder, "bin")).FirstOrDefault(bin => File.Exists(Path.Combine(bin, "initdb")));

    private string Log() => Path.Combine(_folder, "log") is var log && File.Exists(log) ? File.ReadAllText(log) : "";

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
