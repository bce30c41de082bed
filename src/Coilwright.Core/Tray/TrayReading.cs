using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Tray;

/// <summary>Reads a table against a tray: what each line would add or change, and everything that is wrong, line by line.</summary>
/// <remarks>
/// <para>A line is for the kind of its <c>id</c>, made a key by <see cref="TrayKey"/>; where no column is matched to it or its cell is empty, of its <c>name</c>. Two lines for one kind are
/// wrong. What no column is matched to stays as it is in the tray; an empty cell empties, but for shape and length, which no kind is without. Kinds that
/// the table does not name stay.</para>
/// <para>Numbers have a decimal point or a decimal comma and no sign for thousands; a unit of the field's own may stand behind. A size such as <c>4 x 6</c> is read the way the shape's labels
/// usually are.</para>
/// </remarks>
public static class TrayReading
{
    /// <summary>Reads it.</summary>
    /// <param name="table">The table.</param>
    /// <param name="matching">Which column is what, as many as the table has heads.</param>
    /// <param name="there">The tray by key.</param>
    /// <param name="words">Words for shapes and roles.</param>
    /// <param name="data">What beads are read with.</param>
    /// <param name="cancel">Gives up.</param>
    public static TrayImport Read(TrayTable table, TrayMatching matching, IReadOnlyDictionary<string, TrayKind> there, TrayWords words, ReckoningData data, CancellationToken cancel = default)
    {
        if (!matching.Columns.Any(c => c is "id" or "name")) return new TrayImport([], [Fault.Of(FaultCodes.FieldMissing, "name", "").At(1, 0)]);
        if (table.Lines.IsEmpty) return new TrayImport([], [Fault.Of(FaultCodes.TableNoRows, "", "")]);
        var rows = ImmutableArray.CreateBuilder<TrayRow>(table.Lines.Length);
        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        var places = matching.Columns.Select((column, at) => (column, at)).Where(c => c.column is not null).ToDictionary(c => c.column!, c => c.at, StringComparer.Ordinal);
        foreach (var line in table.Lines)
        {
            cancel.ThrowIfCancellationRequested();
            rows.Add(RowOf(line, places, there, first, words, data));
        }
        return new TrayImport(rows.MoveToImmutable(), []);
    }

    private static TrayRow RowOf(TrayLine line, Dictionary<string, int> places, IReadOnlyDictionary<string, TrayKind> there, Dictionary<string, int> first, TrayWords words, ReckoningData data)
    {
        var cells = new TrayCells(line, places);
        var written = cells.Text("id") ?? cells.Text("name");
        var key = TrayKey.Of(written ?? "");
        if (key.Length == 0) return Wrong(line, written ?? "", [Fault.Of(written is null ? FaultCodes.FieldMissing : FaultCodes.IdForm, cells.Text("id") is null ? "name" : "id", written ?? "")]);
        if (!first.TryAdd(key, line.Line))
            return Wrong(line, key, [Fault.Of(FaultCodes.IdTwice, "id", key, ("first", first[key].ToString(CultureInfo.InvariantCulture)))]);
        var before = there.GetValueOrDefault(key);
        var draft = new TrayDraft(cells, words, data);
        var description = draft.Describe(key, before?.Bead.Description);
        var drawer = cells.Has("drawer") ? cells.Text("drawer") : before?.Drawer;
        var faults = TrayKind.Check(description, drawer, data, out var kind);
        // What the core says of a field that could not even be read is said already.
        faults = [.. draft.Faults, .. faults.Where(f => !draft.IsWrong(f.Field)).Select(f => f with { Field = ColumnOf(f.Field) })];
        if (faults.Length > 0 || kind is null) return Wrong(line, key, faults);
        if (before is null) return new TrayRow(line.Line, key, TrayRowDoes.Adds, kind, [], []);
        ImmutableArray<TrayCellChange> changes = [.. TrayColumns.All.Select(c => new TrayCellChange(c.Name, c.TextOf(before), c.TextOf(kind))).Where(c => c.Before != c.After)];
        return new TrayRow(line.Line, key, changes.IsEmpty ? TrayRowDoes.Nothing : TrayRowDoes.Changes, kind, changes, []);
    }

    private static TrayRow Wrong(TrayLine line, string key, ImmutableArray<Fault> faults) =>
        new(line.Line, key.Length <= 60 ? key : key[..60] + "...", TrayRowDoes.IsWrong, null, [], [.. faults.Select(f => f.At(line.Line, 0))]);

    private static string ColumnOf(string field) => field switch
    {
        "lengthRangeMm[0]" or "lengthRangeMm" => "lengthMinMm",
        "lengthRangeMm[1]" => "lengthMaxMm",
        _ => field,
    };
}
