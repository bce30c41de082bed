using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Reads what the maker measured at the bench: rows on the wire, loops of the coil, practice end loops.</summary>
internal sealed class MeasuredBinder(FaultList faults)
{
    private static readonly Limits BeadNumber = Limits.Between(1, int.MaxValue, "");

    private readonly List<(JsonValue At, MeasuredRow Row)> _rows = [];
    private readonly Dictionary<WhichEnd, (JsonValue At, double WireMm)> _ends = [];
    private JsonValue? _loopAt;

    /// <summary>The rows measured on the wire.</summary>
    public ImmutableArray<MeasuredRow> Rows => [.. _rows.Select(r => r.Row)];

    /// <summary>Length of one loop as measured, mm; null when none was, or wrongly.</summary>
    public double? LoopMm { get; private set; }

    /// <summary>Whether a loop entry stands here, be it right or wrong.</summary>
    public bool MeasuresLoop => _loopAt is not null;

    /// <summary>Reads the list.</summary>
    public void Read(Fields piece)
    {
        foreach (var item in piece.List("measured") ?? [])
        {
            // What stands in an entry depends on what it measures, so that is read first, whatever the order of the fields.
            if (What(item) is not { } what) continue;
            switch (what)
            {
                case MeasuredWhat.Row:
                    Row(item);
                    break;
                case MeasuredWhat.Loop:
                    Loop(item);
                    break;
                default:
                    EndLoop(item);
                    break;
            }
        }
    }

    /// <summary>Checks the rows against the order and the beads.</summary>
    public void CheckRows(StringingOrder order, ImmutableArray<Bead> beads, double absurdShare)
    {
        foreach (var (at, row) in _rows)
            foreach (var fault in MeasuredRowCheck.Of(row, order, beads, absurdShare))
                faults.AddFrom(at, fault);
    }

    /// <summary>An end with the wire that a practice bend of it used.</summary>
    public WireEnd? Applied(WireEnd? end, WhichEnd which)
    {
        if (end is null || !_ends.TryGetValue(which, out var measured)) return end;
        if (end.IsTurned) return end with { MeasuredMm = measured.WireMm };
        faults.Add(measured.At.Under("end"), FaultCodes.FieldNotWith, ("other", PieceFields.Finishes.WordOf(end.Finish)),
            ("otherField", $"ends.{PieceFields.WhichEnds.WordOf(which)}.finish"));
        return end;
    }

    private MeasuredWhat? What(JsonValue item)
    {
        if (item.Kind != JsonKind.Fields)
        {
            faults.Add(item, FaultCodes.FieldType, ("expected", FaultTypes.Fields), ("found", item.KindWord));
            return null;
        }
        var what = item.Under("what");
        if (what == item)
        {
            faults.AddMissing(item, "what", FaultCodes.FieldMissing);
            return null;
        }
        if (what.Kind != JsonKind.Text)
        {
            faults.Add(what, FaultCodes.FieldType, ("expected", FaultTypes.Text), ("found", what.KindWord));
            return null;
        }
        var word = what.Text;
        if (PieceFields.MeasuredWhats.Find(word) is { } found) return found;
        faults.Add(what, FaultCodes.WordUnknown, ("known", PieceFields.MeasuredWhats.Listed), ("nearest", PieceFields.MeasuredWhats.Nearest(word)));
        return null;
    }

    private void Row(JsonValue item)
    {
        var fields = Fields.Of(item, PieceFields.MeasuredRow, faults)!;
        var first = fields.Has("firstBead") ? fields.Whole("firstBead", BeadNumber) : 1;
        var last = fields.Require("lastBead") ? fields.Whole("lastBead", BeadNumber) : null;
        var total = fields.Require("totalMm") ? fields.Number("totalMm", PieceRules.RowMm) : null;
        if (first is { } f && last is { } l && total is { } mm) _rows.Add((item, new MeasuredRow(f, l, mm)));
    }

    private void Loop(JsonValue item)
    {
        var fields = Fields.Of(item, PieceFields.MeasuredLoop, faults)!;
        if (Again(item.Under("what"), _loopAt)) return;
        _loopAt = item;
        var loops = fields.Require("loops") ? fields.Number("loops", Limits.Above0To(1000, "")) : null;
        var total = fields.Require("totalMm") ? fields.Number("totalMm", PieceRules.RowMm) : null;
        if (loops is not { } n || total is not { } mm) return;
        // The total is judged by the one loop it makes: 30 loops of 180 mm are no slip, one of 5400 mm is.
        if (PieceRules.LoopMm.Check(mm / n) is { } fault)
            faults.Add(item.Under("totalMm"), fault.Code, [.. fault.Values.Select(v => (v.Key, v.Key == "unit" ? v.Value : Scaled(v.Value, n)))]);
        else
            LoopMm = mm / n;
    }

    private void EndLoop(JsonValue item)
    {
        var fields = Fields.Of(item, PieceFields.MeasuredEndLoop, faults)!;
        var end = fields.Require("end") ? fields.Word("end", PieceFields.WhichEnds) : null;
        fields.Text("pliers");
        var wire = fields.Require("wireMm") ? fields.Number("wireMm", PieceRules.EndWireMm) : null;
        if (end is not { } which || wire is not { } mm) return;
        foreach (var one in which == WhichEnd.Both ? (ReadOnlySpan<WhichEnd>)[WhichEnd.Start, WhichEnd.Finish] : [which])
            if (!Again(item.Under("end"), _ends.TryGetValue(one, out var before) ? before.At : null))
                _ends.Add(one, (item, mm));
    }

    private bool Again(JsonValue at, JsonValue? first)
    {
        if (first is null) return false;
        faults.Add(at, FaultCodes.FieldTwice, ("firstLine", first.Value.Place.Line.ToString(CultureInfo.InvariantCulture)));
        return true;
    }

    private static string Scaled(string value, double by) =>
        (double.Parse(value, CultureInfo.InvariantCulture) * by).ToString("0.##", CultureInfo.InvariantCulture);
}
