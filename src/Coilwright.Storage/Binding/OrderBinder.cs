using System.Collections.Immutable;
using System.Text;
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
    /// <summary>The order and how it is written; no order, with faults noted, when it cannot be read, and no text when it was given as a list.</summary>
    public (StringingOrder? Order, OrderTree? Written) Read(Fields piece)
    {
        if (!piece.Require("order") || piece.Inner("order", PieceFields.Order) is not { } fields) return default;
        return fields.OneOf("text", "list") switch
        {
            "text" => FromText(fields),
            "list" => (FromList(fields), null),
            _ => default,
        };
    }

    private (StringingOrder? Order, OrderTree? Written) FromText(Fields fields)
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
        return read.Faults.IsEmpty ? (read.Order, read.Tree) : default;
    }

    private StringingOrder? FromList(Fields fields)
    {
        if (fields.List("list") is not { } items) return null;
        var before = faults.Count;
        var list = Taken(items);
        if (faults.Count > before) return null;
        var read = OrderList.Read(list, ids);
        foreach (var fault in read.Faults)
            if (Tells(fault.Code))
                faults.AddFrom(fields["list"]!.Value, fault);
        return read.Order;
    }

    private bool Tells(string code) => idsSound || code != FaultCodes.OrderUnknownName;

    private ImmutableArray<OrderListItem> Taken(IEnumerable<JsonValue> items)
    {
        var taken = ImmutableArray.CreateBuilder<OrderListItem>();
        foreach (var item in items)
        {
            if (faults.Full) break;
            if (item.Kind == JsonKind.Text)
                taken.Add(new OrderListItem.Bead(item.Text));
            else if (item.Kind != JsonKind.Fields)
                faults.Add(item, FaultCodes.FieldType, ("expected", FaultTypes.TextOrFields), ("found", item.KindWord));
            else if (Fields.Of(item, PieceFields.OrderGroup, faults) is { } fields)
            {
                var name = fields.Require("group") ? fields.Text("group", most: int.MaxValue) : null;
                var of = fields.Require("of") && fields.List("of") is { } inner ? Taken(inner) : [];
                taken.Add(new OrderListItem.Group(name ?? "", of));
            }
        }
        return taken.ToImmutable();
    }
}
