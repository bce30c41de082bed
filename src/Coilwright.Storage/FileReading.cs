using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Storage;

/// <summary>Reads a whole file of limited size, and says in words of its own why it could not.</summary>
internal static class FileReading
{
    /// <summary>The bytes of a file; null with a fault when it cannot be read or is larger than allowed, which is found before it is read.</summary>
    public static byte[]? Bytes(string path, int most, out Fault? fault)
    {
        fault = null;
        try
        {
            if (Directory.Exists(path))
            {
                fault = Unreadable(path, FaultDetails.IsFolder);
                return null;
            }
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 1);
            if (file.CanSeek && file.Length > most)
            {
                fault = TooLarge(path, most);
                return null;
            }
            // Read to the end rather than to the length: a pipe has none, and a file may grow meanwhile.
            var bytes = new byte[file.CanSeek ? (int)file.Length + 1 : 64 * 1024];
            var read = 0;
            while (true)
            {
                var more = file.Read(bytes, read, bytes.Length - read);
                if (more == 0) break;
                read += more;
                if (read > most)
                {
                    fault = TooLarge(path, most);
                    return null;
                }
                if (read == bytes.Length) Array.Resize(ref bytes, Math.Min(bytes.Length * 2, most + 1));
            }
            return bytes[..read];
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            fault = FileTrouble.Fault(FaultCodes.FileUnreadable, path, e);
            return null;
        }
    }

    private static Fault TooLarge(string path, int most) => Fault.Of(FaultCodes.FileTooLarge, "", path, ("max", string.Create(CultureInfo.InvariantCulture, $"{most / 1024 / 1024} MB")));

    private static Fault Unreadable(string path, string detail) => Fault.Of(FaultCodes.FileUnreadable, "", path, ("detail", detail));
}
