using System.Globalization;
using Coilwright.Core.Cutting;

namespace Coilwright.Core.Tests.Cutting;

/// <summary>Published cutting problems with their optima; sources in the heads of the tables.</summary>
internal static class CuttingTables
{
    public static IReadOnlyDictionary<string, (CuttingProblem Problem, long Optimum)> All { get; } = Read();

    private static Dictionary<string, (CuttingProblem, long)> Read()
    {
        var all = new Dictionary<string, (CuttingProblem, long)>(StringComparer.Ordinal);
        foreach (var rows in ReferenceTable.Read("cutting-stock.csv").Rows.GroupBy(r => r.Text("instance")))
            all[rows.Key] = (Problem((int)rows.First()["stock_length"], rows.Select(r => new CutItem((int)r["piece"], (int)r["demand"]))), (long)rows.First()["optimum_stock"]);
        foreach (var row in ReferenceTable.Read("binpack-u120.csv").Rows)
        {
            var sizes = row.Text("items_space_separated").Split(' ').Select(s => int.Parse(s, CultureInfo.InvariantCulture)).ToArray();
            Assert.Equal(row["n"], sizes.Length);
            all[row.Text("instance")] = (Problem((int)row["capacity"], sizes.GroupBy(s => s).Select(g => new CutItem(g.Key, g.Count()))), (long)row["best_known"]);
        }
        return all;
    }

    private static CuttingProblem Problem(int length, IEnumerable<CutItem> items) => new([.. items], [new BarKind(length, null, 1)]);
}
