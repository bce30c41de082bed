using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Reads the stringing order: lines of notation, or the flat list.</summary>
/// <param name="ids">Ids of the beads as written, those of beads with other faults included.</param>
/// <param name="idsSound">Whether every bead has a sound id of its own. When one has not, a name unknown in the order may well be that bead's, and is
/// not told as a slip of its own.</param>
/// <param name="faults">Takes what is wrong.</param>
internal sealed class OrderBinder(List<string> ids, bool idsSound, FaultList faults)
{
    /// <summary>Largest order as a list: the core's own limit for the notation, so that one order can be written either way.</summary>
    private const int MaxBeads = 200_000;

    private readonly Dictionary<string, int> _kindById = ids.Select((id, i) => (id, i)).ToDictionary(p => p.id, p => p.i, StringComparer.Ordinal);
    private readonly ImmutableArray<int>.Builder _kinds = ImmutableArray.CreateBuilder<int>();
    private readonly List<GroupRun> _groups = [];

    /// <summary>The order and its text; no order, with faults noted, when it cannot be read, and no text when it was given as a list.</summary>
    public (StringingOrder? Order, string? Text) Read(Fields piece)
    {
        if (!piece.Require("order") || piece.Inner("order", PieceFields.Order) is not { } fields) return default;
        return fields.OneOf("text", "list") switch
        {
            "text" => FromText(fields),
            "list" => (FromList(fields), null),
            _ => default,
        };
    }

    private (StringingOrder? Order, string? Text) FromText(Fields fields)
    {
        if (fields.List("text") is not { } items) return default;
        var before = faults.Count;
        var whole = new StringBuilder();
        // For each line of the notation, the item it stands in and where in the item it starts: an item may hold several lines.
        var lines = new List<(JsonValue Item, int From)>();
        foreach (var item in items)
        {
            if (item.Kind != JsonKind.Text)
            {
                faults.Add(item, FaultCodes.FieldType, ("expected", FaultTypes.Text), ("found", item.KindWord));
                if (faults.Full) break;
                continue;
            }
            if (lines.Count > 0) whole.Append('\n');
            var text = item.Text;
            whole.Append(text);
            lines.Add((item, 0));
            for (var feed = text.IndexOf('\n', StringComparison.Ordinal); feed >= 0; feed = text.IndexOf('\n', feed + 1))
                lines.Add((item, feed + 1));
        }
        if (faults.Count > before) return default;
        var notation = whole.ToString();
        var read = OrderNotation.Read(notation, ids);
        foreach (var fault in read.Faults)
        {
            if (fault.Line < 1 || fault.Line > lines.Count)
            {
                faults.AddFrom(fields.At, fault with { Field = "text" });
                continue;
            }
            var (item, from) = lines[fault.Line - 1];
            var (line, column) = item.PlaceInText(from + Math.Max(fault.Column - 1, 0));
            if (Tells(fault.Code)) faults.Add(fault with { Field = item.Path, Line = line, Column = column });
        }
        return (read.Faults.IsEmpty ? read.Order : null, notation);
    }

    private StringingOrder? FromList(Fields fields)
    {
        if (fields.List("list") is not { } items) return null;
        var before = faults.Count;
        Take(items);
        if (faults.Count > before) return null;
        if (_kinds.Count > MaxBeads)
        {
            fields.Fault("list", FaultCodes.OrderTooMany, ("max", "200000"));
            return null;
        }
        if (_kinds.Count > 0) return new StringingOrder(_kinds.ToImmutable(), [.. _groups]);
        fields.Fault("list", FaultCodes.OrderEmpty);
        return null;
    }

    private void Take(IEnumerable<JsonValue> items)
    {
        foreach (var item in items)
        {
            if (faults.Full) return;
            if (item.Kind == JsonKind.Text) TakeBead(item);
            else if (item.Kind == JsonKind.Fields) TakeGroup(item);
            else faults.Add(item, FaultCodes.FieldType, ("expected", FaultTypes.TextOrFields), ("found", item.KindWord));
        }
    }

    private bool Tells(string code) => idsSound || code != FaultCodes.OrderUnknownName;

    private void TakeBead(JsonValue item)
    {
        var id = item.Text;
        if (_kindById.TryGetValue(id, out var kind)) _kinds.Add(kind);
        else if (Tells(FaultCodes.OrderUnknownName)) faults.Add(item, FaultCodes.OrderUnknownName, ("nearest", NearestName.Of(id, ids) ?? ""));
    }

    private void TakeGroup(JsonValue item)
    {
        if (Fields.Of(item, PieceFields.OrderGroup, faults) is not { } fields) return;
        var name = fields.Require("group") ? fields.Text("group", most: int.MaxValue) : null;
        if (name is not null)
        {
            foreach (var fault in Bead.CheckName("group", name)) faults.AddFrom(item, fault);
            if (_kindById.ContainsKey(name)) fields.Fault("group", FaultCodes.OrderGroupIsBead);
        }
        if (!fields.Require("of") || fields.List("of") is not { } items) return;
        // Outer before inner: the place in the list is kept before what is in the group is read.
        var place = _groups.Count;
        var first = _kinds.Count;
        _groups.Add(new GroupRun(name ?? "", first, 0));
        var before = faults.Count;
        Take(items);
        if (_kinds.Count == first && faults.Count == before) fields.Fault("of", FaultCodes.OrderEmpty);
        _groups[place] = new GroupRun(name ?? "", first, _kinds.Count - first);
    }
}
