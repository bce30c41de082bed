using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using Coilwright.Benchmarks.Running;

namespace Coilwright.Benchmarks.Sheet;

/// <summary>Does a sheet come about as soon as a report? Whole processes, started one after the other in turn, from the program as it was built.</summary>
/// <remarks>What a maker waits for: the runtime's start, compiling, reading, reckoning, writing. Not a matter for BenchmarkDotNet, which measures warm code.</remarks>
public static class SheetClaim
{
    private const int PairsInARound = 15;

    public static Claim Claim { get; } = new("sheet", "`sheet` as a whole process takes at most 3 times as long as `reckon`.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        var program = Path("Program");
        var verdicts = new List<Verdict>();
        foreach (var piece in Directory.GetFiles(Path("Examples"), "*.piece.json").Order(StringComparer.Ordinal))
        {
            var folder = Directory.CreateTempSubdirectory("coilwright-sheet-").FullName;
            try
            {
                Start(program, "reckon", piece);
                Start(program, "sheet", piece, "--out", folder);
                if (Directory.GetFiles(folder, "*.pdf").Length == 0) throw new InvalidOperationException("No sheet was written.");
                var ratios = new List<double>();
                for (var round = 0; round < rounds; round++)
                {
                    List<double> reckon = [], sheet = [];
                    for (var i = 0; i < PairsInARound; i++)
                    {
                        reckon.Add(Start(program, "reckon", piece));
                        sheet.Add(Start(program, "sheet", piece, "--out", folder));
                    }
                    ratios.Add(Medians.Of(sheet) / Medians.Of(reckon));
                    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{System.IO.Path.GetFileName(piece)}, medians of {PairsInARound}: reckon {Medians.Of(reckon):0} ms, sheet {Medians.Of(sheet):0} ms."));
                }
                verdicts.Add(new Verdict($"sheet / reckon, {System.IO.Path.GetFileNameWithoutExtension(piece)}", ratios, Promise.AtMost, 3));
            }
            finally
            {
                Directory.Delete(folder, recursive: true);
            }
        }
        return [.. verdicts];
    }

    // Milliseconds from start to end.
    private static double Start(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true };
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var time = clock.Elapsed.TotalMilliseconds;
        // 1 is done too: a notice says that the piece cannot be worn as it is.
        if (process.ExitCode is not (0 or 1)) throw new InvalidOperationException($"{string.Join(' ', arguments)} ended with {process.ExitCode}.");
        return time;
    }

    private static string Path(string key) => typeof(SheetClaim).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == key).Value!;
}
