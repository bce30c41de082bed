using Coilwright.Storage;
using Microsoft.AspNetCore.Components.Forms;

namespace Coilwright.Web.Bench;

/// <summary>Files that she brings in.</summary>
internal static class FileInput
{
    /// <summary>The bytes of a file, more than is read at most, so that a file that is too large is told as that and not as one that is cut off.</summary>
    /// <param name="file">The file.</param>
    /// <param name="most">How many bytes are read of such a file at most.</param>
    public static async Task<byte[]> ReadAsync(IBrowserFile file, int most = PieceFile.MaxBytes)
    {
        using var bytes = new MemoryStream();
        await using var stream = file.OpenReadStream(long.MaxValue);
        var buffer = new byte[64 * 1024];
        while (bytes.Length <= most && await stream.ReadAsync(buffer) is var read and > 0) bytes.Write(buffer, 0, read);
        return bytes.ToArray();
    }
}
