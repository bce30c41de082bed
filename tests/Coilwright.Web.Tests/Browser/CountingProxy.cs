using System.Net;
using System.Net.Sockets;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Stands between a browser and the bench and counts what the bench sends, as it goes over the wire: compressed, web sockets included.</summary>
internal sealed class CountingProxy : IDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly Uri _to;
    private long _received;

    public CountingProxy(Uri to)
    {
        _to = to;
        _listener.Start();
        _ = AcceptAsync();
    }

    public string Address => $"http://{_listener.LocalEndpoint}";

    public long ReceivedBytes => Interlocked.Read(ref _received);

    public void Dispose() => _listener.Dispose();

    private async Task AcceptAsync()
    {
        try
        {
            while (true) _ = PassOnAsync(await _listener.AcceptTcpClientAsync());
        }
        catch (Exception e) when (e is SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private async Task PassOnAsync(TcpClient browser)
    {
        using (browser)
        using (var bench = new TcpClient())
        {
            try
            {
                await bench.ConnectAsync(_to.Host, _to.Port);
                await Task.WhenAny(CopyAsync(browser.GetStream(), bench.GetStream(), count: false), CopyAsync(bench.GetStream(), browser.GetStream(), count: true));
            }
            catch (Exception e) when (e is SocketException or IOException)
            {
                // One side hung up.
            }
        }
    }

    private async Task CopyAsync(NetworkStream from, NetworkStream to, bool count)
    {
        var buffer = new byte[16 * 1024];
        while (await from.ReadAsync(buffer) is var read and > 0)
        {
            if (count) Interlocked.Add(ref _received, read);
            await to.WriteAsync(buffer.AsMemory(0, read));
        }
    }
}
