using System.Runtime.CompilerServices;

namespace Coilwright.Documents.Tests;

/// <summary>Output that somebody looked at and approved, kept beside the test that owns it.</summary>
public static class Approved
{
    /// <summary>Compares with the approved file; when it differs, leaves what came instead beside it as <c>.received</c>.</summary>
    public static void Same(string output, string file, [CallerFilePath] string testFile = "")
    {
        var here = Path.GetDirectoryName(testFile)!;
        while (!Directory.Exists(Path.Combine(here, "TurnRows"))) here = Path.GetDirectoryName(here)!;
        var approved = Path.Combine(here, file);
        var received = approved.Replace(".approved.", ".received.", StringComparison.Ordinal);
        if (File.Exists(approved) && File.ReadAllText(approved) == output)
        {
            File.Delete(received);
            return;
        }
        File.WriteAllText(received, output);
        Assert.Fail($"{file} is not as approved. Look at {received}; if it is right, copy it over the approved file.");
    }
}
