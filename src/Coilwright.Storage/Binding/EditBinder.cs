using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes an edit of its JSON, noting everything wrong with it. Whether it can be done is for whoever does it.</summary>
internal sealed class EditBinder(ReckoningData data, FaultList faults)
{
    private static readonly Limits Place = Limits.Between(0, OrderLimits.Beads, "");
    private static readonly Limits Count = Limits.Between(1, OrderLimits.Beads, "");

    public PieceEdit? Bind(JsonValue root)
    {
        var code = root.Under("edit");
        if (code == root)
        {
            faults.AddMissing(root, "edit", FaultCodes.FieldMissing);
            return null;
        }
        if (code.Kind != JsonKind.Text || !EditFields.ByCode.TryGetValue(code.Text, out var set))
        {
            faults.Add(code, FaultCodes.WordUnknown, ("known", string.Join(", ", EditFields.ByCode.Keys)),
                ("nearest", code.Kind == JsonKind.Text ? NearestName.Of(code.Text, EditFields.ByCode.Keys) ?? "" : ""));
            return null;
        }
        if (Fields.Of(root, set, faults) is not { } fields) return null;
        var edit = Edit(code.Text, fields);
        return faults.Count > 0 ? null
            : edit is OrderEdit order && set.Names.Contains("everyPass") ? order with { EveryPass = fields.YesOrNo("everyPass") ?? false }
            : edit;
    }

    // Values that were not there or wrong are noted as faults, and then no edit is given: what stands for them here is never seen.
    private PieceEdit? Edit(string code, Fields fields)
    {
        switch (code)
        {
            case "insert-beads":
                return new InsertBeads(Number(fields, "at", Place), Names(fields, "what"), Beside(fields));
            case "remove-beads":
                return new RemoveBeads(Where(fields));
            case "move-beads":
                return new MoveBeads(Where(fields), Number(fields, "to", Place), Beside(fields));
            case "replace-beads":
                return new ReplaceBeads(Where(fields), Text(fields, "with"));
            case "replace-everywhere":
                return new ReplaceEverywhere(Text(fields, "bead"), Text(fields, "with"));
            case "duplicate-beads":
                return new DuplicateBeads(Where(fields));
            case "repeat-beads":
                return new RepeatBeads(Where(fields), Number(fields, "times", Count));
            case "mirror-beads":
                return new MirrorBeads(Where(fields), Number(fields, "centre", Place));
            case "put-between":
                return new PutBetween(Where(fields), Names(fields, "what"));
            case "name-group":
                return new NameGroup(Where(fields), Text(fields, "name"));
            case "ungroup":
                return new Ungroup(Where(fields));
            case "set-runs":
                return new SetRuns(Runs(fields));
            case "restring":
                return new Restring(Swaps(fields), StandIns(fields), Runs(fields));
            case "set-order-text":
                return new SetOrderText(string.Join('\n', fields.Require("text") ? fields.Texts("text", OrderLimits.TextLength) : []));
            case "add-bead":
                return Bead(fields) is { } added ? new AddBead(added) : null;
            case "change-bead":
                return (Text(fields, "id"), Bead(fields)) is var (id, changed) && changed is not null ? new ChangeBead(id, changed) : null;
            case "remove-bead":
                return new RemoveBead(Text(fields, "id"));
            case "set-title":
                return new SetTitle(Text(fields, "title"));
            case "set-wire":
                return new PieceBinder(data, faults).Wire(fields, new MeasuredBinder(faults)) is { } wire ? new SetWire(wire) : null;
            case "set-ends":
                return PieceBinder.Ends(fields, new MeasuredBinder(faults)) is { } ends ? new SetEnds(ends) : null;
            case "set-wearer":
                return PieceBinder.Wearer(fields) is { } wearer ? new SetWearer(wearer) : null;
            case "set-wishes":
                return new PieceBinder(data, faults).Wishes(fields, null) is { } wishes ? new SetWishes(wishes) : null;
            case "set-pattern":
                return PatternBinder.Read(fields, faults) is { } pattern ? new SetPattern(pattern) : null;
            case "add-measured-row":
                return Row(fields) is { } row ? new AddMeasuredRow(row) : null;
            default:
                return new RemoveMeasuredRow(Number(fields, "index", Place));
        }
    }

    private static int Number(Fields fields, string name, Limits limits) => (fields.Require(name) ? fields.Whole(name, limits) : null) ?? 0;

    private static string Text(Fields fields, string name) => (fields.Require(name) ? fields.Text(name, int.MaxValue) : null) ?? "";

    private static ImmutableArray<string> Names(Fields fields, string name) => fields.Require(name) ? fields.Texts(name, int.MaxValue) : [];

    private static Beside Beside(Fields fields) => fields.Word("beside", EditFields.Besides) ?? Core.Editing.Beside.Apart;

    private static BeadPlaces Where(Fields fields)
    {
        if (fields.OneOf("row", "each") == "each")
        {
            var places = ImmutableSortedSet.CreateBuilder<int>();
            foreach (var item in fields.List("each") ?? [])
                if (item.Kind == JsonKind.Number && item.Number is var number && Place.Check(number) is null && number == Math.Floor(number)) places.Add((int)number);
                else fields.ItemFault("each", item, FaultCodes.FieldType, ("expected", FaultTypes.WholeNumber), ("found", item.KindWord));
            return new BeadPlaces.Each(places.ToImmutable());
        }
        return fields.Inner("row", EditFields.Row) is { } row
            ? new BeadPlaces.Row(Number(row, "first", Place), Number(row, "count", Count))
            : new BeadPlaces.Each([]);
    }

    private ImmutableArray<RunCount> Runs(Fields fields)
    {
        var runs = ImmutableArray.CreateBuilder<RunCount>();
        foreach (var item in (fields.Require("runs") ? fields.List("runs") : null) ?? [])
            if (Fields.Of(item, EditFields.Run, faults) is { } run)
                runs.Add(new RunCount(Number(run, "first", Place), Number(run, "count", Count), Number(run, "to", Count)));
        return runs.ToImmutable();
    }

    private ImmutableArray<RowSwap> Swaps(Fields fields)
    {
        var swaps = ImmutableArray.CreateBuilder<RowSwap>();
        foreach (var item in (fields.Require("swaps") ? fields.List("swaps") : null) ?? [])
            if (Fields.Of(item, EditFields.Swap, faults) is { } swap)
                swaps.Add(new RowSwap(Number(swap, "first", Place), Number(swap, "count", Count), Number(swap, "otherFirst", Place), Number(swap, "otherCount", Count)));
        return swaps.ToImmutable();
    }

    private ImmutableArray<RowStandIn> StandIns(Fields fields)
    {
        var standIns = ImmutableArray.CreateBuilder<RowStandIn>();
        foreach (var item in (fields.Require("standIns") ? fields.List("standIns") : null) ?? [])
            if (Fields.Of(item, EditFields.StandIn, faults) is { } standIn)
                standIns.Add(new RowStandIn(Number(standIn, "first", Place), Number(standIn, "count", Count), Text(standIn, "bead"), Text(standIn, "with")));
        return standIns.ToImmutable();
    }

    private BeadDescription? Bead(Fields fields) =>
        fields.Require("bead") ? new BeadBinder(data, faults).Bind(fields["bead"]!.Value).Bead?.Description : null;

    private MeasuredRow? Row(Fields fields)
    {
        var measured = new MeasuredBinder(faults);
        if (fields.Require("measured")) measured.Read(fields);
        if (measured.Rows is [var row]) return row;
        if (faults.Count == 0) fields.Fault("measured", measured.Rows.IsEmpty ? FaultCodes.ValueAtLeast : FaultCodes.ValueAtMost, ("min", "1"), ("max", "1"), ("unit", ""));
        return null;
    }
}
