using System.Globalization;
using System.Reflection;
using Coilwright.Core.Cutting;

namespace Coilwright.Benchmarks.Cutting;

/// <summary>The published cutting problems and their optima, from the tables of the tests.</summary>
public static class PublishedCutting
{
    public static IReadOnlyDictionary<string, (CuttingProblem Problem, long Optimum)> All { get; } = Read();

    private static Dictionary<string, (CuttingProblem, long)> Read()
    {
        var folder = typeof(PublishedCutting).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().First(a => a.Key == "Reference").Value!;
        var all = new Dictionary<string, (CuttingProblem, long)>(StringComparer.Ordinal);
        foreach (var rows in Rows(Path.Combine(folder, "cutting-stock.csv")).GroupBy(r => r[0]))
            all[rows.Key] = (Problem(Whole(rows.First()[1]), rows.Select(r => new CutItem(Whole(r[2]), Whole(r[3])))), Whole(rows.First()[4]));
        foreach (var row in Rows(Path.Combine(folder, "binpack-u120.csv")))
            all[row[0]] = (Problem(Whole(row[1]), row[7].Split(' ').Select(Whole).GroupBy(s => s).Select(g => new CutItem(g.Key, g.Count()))), Whole(row[3]));
        return all;
    }

    private static IEnumerable<string[]> Rows(string path) => File.ReadLines(path).Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Split(','));

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static CuttingProblem Problem(int length, IEnumerable<CutItem> items) => new([.. items], [new BarKind(length, null, 1)]);
}
