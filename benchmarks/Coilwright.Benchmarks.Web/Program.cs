using System.Globalization;
using System.Reflection;
using Coilwright.Benchmarks;
using Coilwright.Benchmarks.Running;
using Coilwright.Benchmarks.Web;
using Coilwright.Core.Editing;

const int Warm = 12, EditsInARound = 42;
var rounds = args.Length > 0 && int.TryParse(args[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var asked) && asked > 0 ? asked : 3;

Environment.SetEnvironmentVariable("PLAYWRIGHT_DRIVER_SEARCH_PATH", PathOf("Driver"));
if (args.Contains("tray")) return await TraySearch.MeasureAsync(rounds);
if (args.Contains("coil")) return await CoilInSpace.MeasureAsync(rounds, PathOf("Program"));
if (args.Contains("pattern")) return await PatternOnPaper.MeasureAsync(rounds);

// How long it takes from a key to the rows painted anew, in a browser, with the bench as a process of its own. See benchmarks/README.md.
await using var bench = await BenchAndBrowser.StartAsync(PathOf("Program"));
var full = GeneratedPieces.OfFiveTurns(200);
var single = PieceEditing.Apply(full, new SetOrderText("round"), GeneratedPieces.Data) is EditOutcome.Done done
    ? done.Piece with { Title = "One bead" } : throw new InvalidOperationException("One bead cannot be strung.");

// Each round measures them in turn, so that what slows the machine for a while slows all of them.
List<double> many = [], one = [], busy = [], readings = [], manyOverOne = [], busyOverMany = [];
await using var manyPage = await bench.OpenAsync(full);
await using var onePage = await bench.OpenAsync(single);
await manyPage.EditAsync(Warm);
await onePage.EditAsync(Warm);
for (var round = 0; round < rounds; round++)
{
    var (all, o) = (await manyPage.EditAsync(EditsInARound), Rows(await onePage.EditAsync(EditsInARound)));
    var (m, r) = (Rows(all), all.ConvertAll(t => t.Readings));
    await bench.KeepBusyAsync(manyPage);
    var b = Rows(await manyPage.EditAsync(EditsInARound));
    var worked = await BenchAndBrowser.StillBusyAsync(manyPage);
    await BenchAndBrowser.StopAsync(manyPage);
    if (!worked) throw new InvalidOperationException("The job was over before the edits were: nothing was measured beside it.");
    many.Add(P95(m));
    readings.Add(P95(r));
    one.Add(P95(o));
    busy.Add(P95(b));
    manyOverOne.Add(P95(m) / P95(o));
    busyOverMany.Add(P95(b) / P95(m));
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"p95 of {EditsInARound}: 200 beads {P95(m):0} ms (median {Medians.Of(m):0}), one bead {P95(o):0} ms (median {Medians.Of(o):0}), 200 beads beside a job {P95(b):0} ms (median {Medians.Of(b):0}); the readings of 200 beads {P95(r):0} ms (median {Medians.Of(r):0})."));
}
Verdict[] verdicts =
[
    new("200 beads / one bead, p95", manyOverOne, Promise.AtMost, 3),
    new("200 beads beside a job / without, p95", busyOverMany, Promise.AtMost, 2),
];
foreach (var verdict in verdicts) Console.WriteLine(verdict);
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"On this machine, medians of the rounds' p95: {Medians.Of(many):0} ms for 200 beads, {Medians.Of(one):0} ms for one, {Medians.Of(busy):0} ms for 200 beside a job; {Medians.Of(readings):0} ms until the readings of 200."));
return verdicts.All(v => v.Met) ? 0 : 1;

static List<double> Rows(List<(double Rows, double Readings)> times) => times.ConvertAll(t => t.Rows);

static double P95(IEnumerable<double> values)
{
    double[] sorted = [.. values.Order()];
    return sorted[(int)Math.Ceiling(0.95 * sorted.Length) - 1];
}

static string PathOf(string key) => Assembly.GetExecutingAssembly().GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == key).Value!;
