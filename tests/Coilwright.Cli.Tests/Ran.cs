using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Text;

namespace Coilwright.Cli.Tests;

/// <summary>What a run of the program came to.</summary>
internal sealed record Ran(int Code, byte[] OutBytes, string Error)
{
    public string Out => Encoding.UTF8.GetString(OutBytes);
}

/// <summary>Runs the built program as a process of its own, as a shell would.</summary>
internal static class TheProgram
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>The built program.</summary>
    public static string Dll { get; } = Path.Combine(AppContext.BaseDirectory, "coilwright.dll");

    /// <summary>The root of the repository.</summary>
    public static string Root { get; } = FindRoot();

    public static string Example(string name) => Path.Combine(Root, "examples", name + ".piece.json");

    public static IEnumerable<string> Examples => Directory.GetFiles(Path.Combine(Root, "examples"), "*.piece.json").Order(StringComparer.Ordinal);

    public static Ran Run(params string[] args) => Run([], args);

    public static Ran Run((string Name, string Value)[] environment, string[] args, string? dll = null) =>
        Finish(Start(environment, ["exec", dll ?? Dll, .. args], "dotnet"));

    /// <summary>Runs a line of shell in which $P stands for the program.</summary>
    public static Ran Shell(string line, string? folder = null) => Finish(Start([("P", $"dotnet exec {Dll}")], ["-c", line], "sh", folder));

    /// <summary>Starts the program so that Ctrl-C reaches it, even where the tests themselves run with it switched off.</summary>
    public static Process StartInterruptible(params string[] args) => Start([], ["--default-signal=INT", "dotnet", "exec", Dll, .. args], "env");

    public static void Interrupt(Process process)
    {
        using var kill = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
        Assert.Equal(0, kill.ExitCode);
    }

    public static Ran Finish(Process process)
    {
        using (process)
        {
            using var bytes = new MemoryStream();
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.BaseStream.CopyToAsync(bytes);
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
                Assert.Fail($"The program did not end within {Patience}.");
            }
            Task.WaitAll(error, output);
            return new Ran(process.ExitCode, bytes.ToArray(), error.Result);
        }
    }

    private static Process Start((string Name, string Value)[] environment, string[] args, string command, string? folder = null)
    {
        var start = new ProcessStartInfo(command, args)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            WorkingDirectory = folder ?? Root,
        };
        foreach (var (name, value) in environment) start.Environment[name] = value;
        var process = Process.Start(start)!;
        process.StandardInput.Close();
        return process;
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        var folder = Path.GetDirectoryName(here);
        while (folder is not null && !File.Exists(Path.Combine(folder, "Coilwright.slnx"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("The tests do not lie in the repository that they test.");
    }
}

/// <summary>A folder of a test's own, gone afterwards.</summary>
internal sealed class OwnFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("coilwright-").FullName;

    public string this[string name] => System.IO.Path.Combine(Path, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(this[name], text);
        return this[name];
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
