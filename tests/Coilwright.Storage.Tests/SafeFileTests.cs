using System.Diagnostics;
using System.Runtime.Versioning;
using Coilwright.Core.Faults;

namespace Coilwright.Storage.Tests;

/// <summary>Safe writing: the old file or the whole new one, never a half, and a reason when it cannot be.</summary>
public class SafeFileTests
{
    private const string SmallFilesVariable = "COILWRIGHT_TEST_SMALL_FILES_IN";

    [Fact]
    public void A_new_file_holds_exactly_the_bytes()
    {
        using var folder = new TempFolder();
        var bytes = Bytes(100_000);
        Assert.Null(SafeFile.Write(folder.File("new.json"), bytes));
        Assert.Equal(bytes, File.ReadAllBytes(folder.File("new.json")));
        Assert.Equal(["new.json"], Names(folder));
    }

    [Fact]
    public void An_old_file_is_replaced_whole_and_keeps_its_rights()
    {
        if (OperatingSystem.IsWindows()) return;
        using var folder = new TempFolder();
        var path = folder.File("old.json");
        File.WriteAllBytes(path, Bytes(5000));
        const UnixFileMode rights = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead;
        File.SetUnixFileMode(path, rights);
        Assert.Null(SafeFile.Write(path, "[]"u8));
        Assert.Equal("[]", File.ReadAllText(path));
        Assert.Equal(rights, File.GetUnixFileMode(path));
        Assert.Equal(["old.json"], Names(folder));
    }

    [Fact]
    public void A_link_stays_a_link_and_its_file_is_replaced()
    {
        if (OperatingSystem.IsWindows()) return;
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("file.json"), "old");
        File.CreateSymbolicLink(folder.File("link.json"), folder.File("file.json"));
        Assert.Null(SafeFile.Write(folder.File("link.json"), "new"u8));
        Assert.Equal("new", File.ReadAllText(folder.File("file.json")));
        Assert.NotNull(new FileInfo(folder.File("link.json")).LinkTarget);
    }

    [Fact]
    public void The_longest_name_that_the_system_allows_can_be_written()
    {
        using var folder = new TempFolder();
        var path = folder.File(new string('é', 122) + ".json");
        Assert.Null(SafeFile.Write(path, "new"u8));
        Assert.Equal("new", File.ReadAllText(path));
    }

    [Fact]
    public void A_target_that_cannot_be_written_is_refused_with_its_reason()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder.File("folder.json"));
        File.WriteAllText(folder.File("file.json"), "old");
        Assert.Equal(FaultDetails.IsFolder, Refused(folder.File("folder.json")));
        Assert.Equal(FaultDetails.NotFound, Refused(folder.File("nowhere/new.json")));
        Assert.Equal(FaultDetails.NotFound, Refused(folder.File("file.json/new.json")));
        Assert.Equal(FaultDetails.PathForm, Refused(folder.File(new string('n', 300))));
        Assert.Equal(FaultDetails.PathForm, Refused(""));
        Assert.Equal(FaultDetails.PathForm, Refused(folder.File("nul\0.json")));
        Assert.Equal(["file.json", "folder.json"], Names(folder));
    }

    [Fact]
    public void A_folder_cannot_be_made_where_a_file_is()
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("file.json"), "old");
        Assert.Equal(FaultDetails.IsFile, SafeFile.MakeFolder(folder.File("file.json"))?.Values["detail"]);
        Assert.Equal(FaultDetails.NotFound, SafeFile.MakeFolder(folder.File("file.json/under"))?.Values["detail"]);
        Assert.Equal("old", File.ReadAllText(folder.File("file.json")));
    }

    [Fact]
    public void A_file_marked_as_read_only_is_left_alone()
    {
        using var folder = new TempFolder();
        var path = folder.File("kept.json");
        File.WriteAllText(path, "old");
        File.SetAttributes(path, FileAttributes.ReadOnly);
        Assert.Equal(FaultDetails.NotAllowed, Refused(path));
        Assert.Equal("old", File.ReadAllText(path));
        Assert.Equal(["kept.json"], Names(folder));
    }

    [Fact]
    public void A_device_is_written_to_and_stays_a_device()
    {
        if (!OperatingSystem.IsLinux()) return;
        Assert.Null(SafeFile.Write("/dev/null", Bytes(100)));
        Assert.Equal(FaultDetails.DiskFull, Refused("/dev/full"));
        // A file that had taken its place would have a length and take the bytes.
        Assert.Equal(FaultDetails.DiskFull, Refused("/dev/full"));
    }

    // A disk of 64 kB, mounted for the test. Where the test may not mount, a limit on the size of files stands for it.
    [Fact]
    public void On_a_full_disk_the_old_file_is_kept_and_nothing_half_written_is_left()
    {
        if (!OperatingSystem.IsLinux()) return;
        using var folder = new TempFolder();
        if (Run("mount", ["-t", "tmpfs", "-o", "size=64k", "tmpfs", folder.Path]).ExitCode != 0)
        {
            A_limit_on_the_size_of_files_is_met_like_a_full_disk();
            return;
        }
        try
        {
            KeepsTheOldFileWhenTheDiskIsFull(folder);
        }
        finally
        {
            Assert.Equal(0, Run("umount", [folder.Path]).ExitCode);
        }
    }

    // Runs itself again in a process that may write no file above 64 kB: only so can the limit not hit the test runner's own files.
    [Fact]
    public void A_limit_on_the_size_of_files_is_met_like_a_full_disk()
    {
        if (!OperatingSystem.IsLinux()) return;
        using var folder = new TempFolder();
        var self = typeof(SafeFileTests).Assembly.Location;
        var method = $"{typeof(SafeFileTests).FullName}.{nameof(Under_the_limit)}";
        // The runtime's own doubly mapped memory counts as a file, so that is switched off in the child; and the signal that comes with the limit is
        // ignored, so that the write itself reports it, as a full disk's does.
        var (code, output) = Run("bash", ["-c", $"trap '' XFSZ; ulimit -f 64; exec dotnet '{self}' -method {method}"],
            (SmallFilesVariable, folder.Path), ("DOTNET_EnableWriteXorExecute", "0"));
        Assert.True(code == 0, output);
        Assert.Equal(["result.txt"], Names(folder));
        Assert.Equal("kept", File.ReadAllText(folder.File("result.txt")));
    }

    // What the child above runs; in an ordinary run it checks the same with room enough, so that it is never empty.
    [Fact]
    public void Under_the_limit()
    {
        if (Environment.GetEnvironmentVariable(SmallFilesVariable) is not { } small)
        {
            using var folder = new TempFolder();
            Assert.Null(SafeFile.Write(folder.File("small.json"), Bytes(200_000)));
            return;
        }
        Directory.CreateDirectory(Path.Combine(small, "inner"));
        using (var inner = new TempFolder(Path.Combine(small, "inner")))
            KeepsTheOldFileWhenTheDiskIsFull(inner);
        File.WriteAllText(Path.Combine(small, "result.txt"), "kept");
    }

    private static void KeepsTheOldFileWhenTheDiskIsFull(TempFolder folder)
    {
        var path = folder.File("piece.json");
        Assert.Null(SafeFile.Write(path, "old"u8));
        Assert.Equal(FaultDetails.DiskFull, Refused(path, Bytes(200_000)));
        Assert.Equal("old", File.ReadAllText(path));
        Assert.Equal(FaultDetails.DiskFull, Refused(folder.File("other.json"), Bytes(200_000)));
        Assert.Equal(["piece.json"], Names(folder));
        // And the room is free again.
        Assert.Null(SafeFile.Write(path, Bytes(30_000)));
    }

    [UnsupportedOSPlatform("windows")]
    private static (int ExitCode, string Output) Run(string program, string[] arguments, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in environment) start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + error.Result);
    }

    private static string Refused(string path, byte[]? bytes = null)
    {
        var fault = SafeFile.Write(path, bytes ?? [1, 2, 3]);
        Assert.NotNull(fault);
        Assert.Equal((FaultCodes.FileUnwritable, path), (fault.Code, fault.Value));
        return fault.Values["detail"];
    }

    private static IEnumerable<string?> Names(TempFolder folder) =>
        Directory.GetFileSystemEntries(folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal);

    private static byte[] Bytes(int count) => [.. Enumerable.Range(0, count).Select(i => (byte)(i % 251))];
}
