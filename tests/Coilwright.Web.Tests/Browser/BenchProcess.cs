using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Coilwright.Web.Tests.Hosting;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The bench as a program of its own, which can be killed as a power cut kills it, and started again on the same port.</summary>
internal sealed class BenchProcess : IAsyncDisposable
{
    private readonly OwnShelf _shelf = new();
    private Process? _process;

    public int Port { get; } = FreePort();

    public Uri Address => new($"http://127.0.0.1:{Port}");

    public async Task StartAsync()
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Coilwright.Web.dll"), "--port", Port.ToString(CultureInfo.InvariantCulture), "--shelf", _shelf.Folder])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // What the environment says of addresses must not matter, and nothing may depend on development.
        start.Environment["ASPNETCORE_URLS"] = "http://0.0.0.0:1";
        start.Environment.Remove("ASPNETCORE_ENVIRONMENT");
        // Killed, it would leave what it could be debugged by in the machine's temporary folder.
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        _process = Process.Start(start)!;
        var said = await _process.StandardOutput.ReadLineAsync();
        Assert.Contains(Address.ToString().TrimEnd('/'), said, StringComparison.Ordinal);
        // Read on, so that a full pipe never stops it.
        _ = _process.StandardOutput.ReadToEndAsync();
        _ = _process.StandardError.ReadToEndAsync();
    }

    public async Task KillAsync()
    {
        if (_process is null) return;
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
        _process = null;
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        _shelf.Dispose();
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
