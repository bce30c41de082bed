using Coilwright.Core.Tray;

namespace Coilwright.Documents.Tables;

/// <summary>The bead tray as a table, a line for each kind. What is written can be read again by <see cref="TrayReading"/>: nothing is changed then.</summary>
/// <remarks>The heads are the promised names of <see cref="TrayColumns"/>, in both forms and every language.</remarks>
public static class TrayList
{
    private static readonly string[] Heads = [.. TrayColumns.All.Select(c => c.Name)];

    /// <summary>Comma-separated values: <see cref="TableFile.Csv"/>.</summary>
    public static byte[] Csv(IEnumerable<TrayKind> kinds) => TableFile.Csv(Heads, kinds.Select(Cells));

    /// <summary>An Office Open XML workbook of one sheet: <see cref="TableFile.Xlsx"/>. Texts are texts there, whatever they begin with.</summary>
    public static byte[] Xlsx(IEnumerable<TrayKind> kinds) => TableFile.Xlsx(Heads, kinds.Select(Cells), "tray");

    private static object?[] Cells(TrayKind kind) => [.. TrayColumns.All.Select(c => c.Of(kind))];
}
