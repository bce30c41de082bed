using Coilwright.Core.Faults;

namespace Coilwright.Storage;

/// <summary>Turns what the file system throws into a fault with a reason that can be said in any language.</summary>
internal static class FileTrouble
{
    // errno of "No space left on device", "Disk quota exceeded", "File too large" (a limit on sizes), "Not a directory" and "Read-only file
    // system" on Linux; ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL on Windows. The framework hands errno through as HResult where it has no exception of its own.
    private const int NoSpace = 28, Quota = 122, FileTooBig = 27, NotADirectory = 20, ReadOnlyDisk = 30;
    private const int WindowsDiskFull = unchecked((int)0x80070070), WindowsHandleDiskFull = unchecked((int)0x80070027);

    /// <summary>Whether an exception is the file system's way of saying no, rather than a defect of ours.</summary>
    public static bool Is(Exception e) => e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or System.Security.SecurityException;

    /// <summary>The fault.</summary>
    public static Fault Fault(string code, string path, Exception e)
    {
        var detail = e switch
        {
            FileNotFoundException or DirectoryNotFoundException => FaultDetails.NotFound,
            // How the framework tells a file larger than the file system or a limit allows.
            ArgumentOutOfRangeException => FaultDetails.DiskFull,
            PathTooLongException or ArgumentException or NotSupportedException => FaultDetails.PathForm,
            UnauthorizedAccessException or System.Security.SecurityException => FaultDetails.NotAllowed,
            IOException io when io.HResult is NoSpace or Quota or FileTooBig or WindowsDiskFull or WindowsHandleDiskFull => FaultDetails.DiskFull,
            IOException { HResult: NotADirectory } => FaultDetails.NotFound,
            IOException { HResult: ReadOnlyDisk } => FaultDetails.NotAllowed,
            _ => FaultDetails.Other,
        };
        return detail == FaultDetails.Other
            ? Core.Faults.Fault.Of(code, "", path, ("detail", detail), ("reason", e.Message))
            : Core.Faults.Fault.Of(code, "", path, ("detail", detail));
    }
}
