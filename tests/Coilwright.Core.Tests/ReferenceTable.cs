using System.Globalization;

namespace Coilwright.Core.Tests;

/// <summary>A table of values from outside this code, kept in <c>Reference/</c> with its source in its head.</summary>
public sealed class ReferenceTable
{
    private readonly string[] _names;

    private ReferenceTable(string[] names, IReadOnlyList<Row> rows) => (_names, Rows) = (names, rows);

    public IReadOnlyList<Row> Rows { get; }

    /// <summary>Reads a table; plain commas, no quotes, lines that start with # are its head.</summary>
    public static ReferenceTable Read(string fileName)
    {
        var lines = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", fileName))
            .Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split(',')).ToList();
        var rows = new List<Row>();
        var table = new ReferenceTable(lines[0], rows);
        rows.AddRange(lines.Skip(1).Select(cells => new Row(table, cells)));
        // A table that was emptied by accident must not pass as a test of nothing.
        Assert.NotEmpty(rows);
        return table;
    }

    public sealed class Row(ReferenceTable table, string[] cells)
    {
        /// <summary>A cell as a number.</summary>
        public double this[string column] => double.Parse(Text(column), NumberStyles.Float, CultureInfo.InvariantCulture);

        /// <summary>A cell as it is written.</summary>
        public string Text(string column) => cells[Array.IndexOf(table._names, column) is var i and >= 0 ? i
            : throw new ArgumentException($"There is no column '{column}'.", nameof(column))];

        public override string ToString() => string.Join(",", cells);
    }
}
