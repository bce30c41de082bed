using Coilwright.Core.Faults;

namespace Coilwright.Storage;

/// <summary>Writes a file so that at every moment either the old one or the whole new one is there.</summary>
/// <remarks>
/// <para>The bytes go to a file beside the target, are flushed to the disk, and only then take the target's name. When anything fails the file beside
/// is removed and the target is as it was.</para>
/// <para>The rights of an existing target are kept. A target marked as read-only is refused, for an administrator too: someone meant it. A target
/// that is a link keeps being one; the file that it leads to is replaced.</para>
/// <para>Devices and pipes (<c>/dev/stdout</c>) cannot be renamed over and are written straight to.</para>
/// </remarks>
public static class SafeFile
{
    /// <summary>Writes a file. Null when it is written; otherwise a <see cref="FaultCodes.FileUnwritable"/> fault with the reason.</summary>
    /// <param name="path">Path of the target.</param>
    /// <param name="bytes">Its new contents.</param>
    public static Fault? Write(string path, ReadOnlySpan<byte> bytes)
    {
        string? beside = null;
        try
        {
            if (IsDevice(Path.GetFullPath(path)))
            {
                using var device = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
                device.Write(bytes);
                return null;
            }
            var target = new FileInfo(path).LinkTarget is null ? Path.GetFullPath(path) : File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName;
            if (Directory.Exists(target)) return Unwritable(path, FaultDetails.IsFolder);
            var exists = File.Exists(target);
            if (exists && IsReadOnly(target)) return Unwritable(path, FaultDetails.NotAllowed);

            beside = Path.Combine(Path.GetDirectoryName(target)!, $".{Shortened(Path.GetFileName(target))}.{Guid.NewGuid():N}.part");
            using (var file = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0))
            {
                if (exists && !OperatingSystem.IsWindows()) File.SetUnixFileMode(file.SafeFileHandle, File.GetUnixFileMode(target));
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }
            File.Move(beside, target, overwrite: true);
            beside = null;
            return null;
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            return FileTrouble.Fault(FaultCodes.FileUnwritable, path, e);
        }
        finally
        {
            if (beside is not null) Remove(beside);
        }
    }

    /// <summary>Makes a folder, and those above it, where they are not there yet. Null when it is there; otherwise a
    /// <see cref="FaultCodes.FileUnwritable"/> fault with the reason.</summary>
    /// <param name="path">Path of the folder.</param>
    public static Fault? MakeFolder(string path)
    {
        try
        {
            if (File.Exists(path)) return Unwritable(path, FaultDetails.IsFile);
            Directory.CreateDirectory(path);
            return null;
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            return FileTrouble.Fault(FaultCodes.FileUnwritable, path, e);
        }
    }

    /// <summary>Why something else than a file, as what a program prints, could not be written: the reason as of a file.</summary>
    /// <param name="name">What could not be written.</param>
    /// <param name="e">What the system said.</param>
    public static Fault Why(string name, IOException e) => FileTrouble.Fault(FaultCodes.FileUnwritable, name, e);

    private static bool IsDevice(string fullPath) => !OperatingSystem.IsWindows()
        && (fullPath.StartsWith("/dev/", StringComparison.Ordinal) && !fullPath.StartsWith("/dev/shm/", StringComparison.Ordinal)
            || fullPath.StartsWith("/proc/", StringComparison.Ordinal));

    private static bool IsReadOnly(string target) => OperatingSystem.IsWindows()
        ? File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly)
        : (File.GetUnixFileMode(target) & (UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite)) == 0;

    // The name beside is longer than the target's by 39 signs; a name may have 255 bytes, and a sign up to four.
    private static string Shortened(string name) => name.Length <= 40 ? name : name[..40];

    private static void Remove(string beside)
    {
        try
        {
            File.Delete(beside);
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            // The reason why it could not be written is the one to tell; that the remnant could not be removed follows from it.
        }
    }

    private static Fault Unwritable(string path, string detail) => Fault.Of(FaultCodes.FileUnwritable, "", path, ("detail", detail));
}
