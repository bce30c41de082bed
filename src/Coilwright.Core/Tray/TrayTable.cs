using System.Collections.Immutable;

namespace Coilwright.Core.Tray;

/// <summary>A line of a table as it is written.</summary>
/// <param name="Line">Where it begins in its file, from 1.</param>
/// <param name="Cells">Its cells, as many as it has; a cell that is not there is empty.</param>
public sealed record TrayLine(int Line, ImmutableArray<string> Cells);

/// <summary>A table that a tray is to be filled from, as it is written: nothing of it is understood yet.</summary>
/// <param name="Heads">What stands over its columns.</param>
/// <param name="Lines">Its lines without empty ones.</param>
public sealed record TrayTable(ImmutableArray<string> Heads, ImmutableArray<TrayLine> Lines)
{
    /// <summary>Lines in one table at most: twice the kinds of the largest tray that is thought of.</summary>
    public const int MostLines = 100_000;
}

/// <summary>Which column of a table is what.</summary>
/// <param name="Columns">For each column of the table the name of <see cref="TrayColumns"/> that it is read as; null when it is left out.</param>
public sealed record TrayMatching(ImmutableArray<string?> Columns)
{
    /// <summary>What the heads say: each column of the tray is taken by the first head that means it, the others are left out.</summary>
    public static TrayMatching Of(ImmutableArray<string> heads, TrayWords words)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return new TrayMatching([.. heads.Select(head => TrayColumns.Find(head) ?? words.Column(head)).Select(column => column is not null && taken.Add(column) ? column : null)]);
    }

    /// <summary>The same with another meaning for one column; another that had it is left out.</summary>
    public TrayMatching With(int at, string? column) => new([.. Columns.Select((c, i) => i == at ? column : c == column ? null : c)]);
}
