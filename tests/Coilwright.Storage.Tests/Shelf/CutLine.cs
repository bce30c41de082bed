using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>A line to a database server that can be cut at the worst moment: when the server has committed, and before anybody hears of it.</summary>
internal sealed class CutLine : IAsyncDisposable
{
    private readonly TcpListener _door = new(IPAddress.Loopback, 0);
    private readonly int _to;
    private readonly Task _serving;
    private volatile bool _cut, _stayDown, _down;

    public CutLine(int to)
    {
        _to = to;
        _door.Start();
        _serving = ServeAsync();
    }

    public int Port => ((IPEndPoint)_door.LocalEndpoint).Port;

    /// <summary>How often it was cut.</summary>
    public int Cuts { get; private set; }

    public void CutAtAnswerToCommit(bool stayDown) => (_stayDown, _cut) = (stayDown, true);

    public void Mend() => _down = false;

    private async Task ServeAsync()
    {
        while (true)
        {
            try
            {
                _ = CarryAsync(await _door.AcceptTcpClientAsync());
            }
            catch (Exception e) when (e is SocketException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private async Task CarryAsync(TcpClient client)
    {
        using var near = client;
        if (_down) return;
        using var far = new TcpClient();
        await far.ConnectAsync(IPAddress.Loopback, _to);
        await Task.WhenAny(CarryAsync(near, far, _ => true), CarryAsync(far, near, Passes));
    }

    /// <summary>Whether an answer of the server may go on: not the one that tells that a commit is done ("CommandComplete", section 55.7 of the manual).</summary>
    private bool Passes(byte[] said)
    {
        if (!_cut || said.AsSpan().IndexOf(Encoding.ASCII.GetBytes("C\0\0\0\u000bCOMMIT\0")) < 0) return true;
        (_cut, _down) = (false, _stayDown);
        Cuts++;
        return false;
    }

    private static async Task CarryAsync(TcpClient from, TcpClient to, Func<byte[], bool> passes)
    {
        var buffer = new byte[64 * 1024];
        try
        {
            while (await from.GetStream().ReadAsync(buffer) is var read and > 0 && passes(buffer[..read])) await to.GetStream().WriteAsync(buffer.AsMemory(0, read));
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            // The other side hung up.
        }
    }

    public async ValueTask DisposeAsync()
    {
        _door.Stop();
        await _serving;
    }
}
