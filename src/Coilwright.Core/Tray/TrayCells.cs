namespace Coilwright.Core.Tray;

/// <summary>The cells of one line by the columns that they are read as.</summary>
/// <param name="line">The line.</param>
/// <param name="places">Which of its cells a column is.</param>
internal sealed class TrayCells(TrayLine line, IReadOnlyDictionary<string, int> places)
{
    /// <summary>Whether a column of the table is read as this.</summary>
    public bool Has(string column) => places.ContainsKey(column);

    /// <summary>The cell without blanks around it, and without the apostrophe that keeps a program from taking it for a formula; null when it is empty or no column is
    /// read as this.</summary>
    public string? Text(string column)
    {
        if (!places.TryGetValue(column, out var at) || at >= line.Cells.Length) return null;
        var text = line.Cells[at].Trim();
        if (text is ['\'', '=' or '+' or '-' or '@', ..]) text = text[1..];
        return text.Length == 0 ? null : text;
    }
}
