using System.Diagnostics.CodeAnalysis;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>Writes orders as clean notation. What is written reads back as an equal order.</summary>
/// <remarks>For a text that is to be kept as its maker wrote it, use <see cref="OrderTree.ToText"/> and <see cref="OrderTree.Replace(TextSpan, string)"/>.</remarks>
public static class OrderPrinter
{
    /// <summary>Writes a tree: the maker's own counts, groups and lines, without her comments and blanks.</summary>
    /// <exception cref="ArgumentException">The tree is not whole.</exception>
    public static string Print(OrderTree tree)
    {
        if (!tree.IsWhole) throw new ArgumentException("A tree with faults cannot be printed.", nameof(tree));
        var writer = new OrderWriter();
        OrderEntry? before = null;
        foreach (var entry in tree.Entries)
        {
            if (before is not null)
            {
                var between = tree.Text.AsSpan(before.Span.End, entry.Span.Start - before.Span.End);
                if (between.IndexOfAny('\n', '\r') >= 0 || writer.IsLineLong) writer.LineEnd();
                else writer.Comma(mayBreak: false);
            }
            if (entry is OrderDefinition definition) Write(writer.Add(definition.Name.Text).Add(" = "), definition.Run, mayBreak: false);
            else if (entry is OrderItem item) Write(writer, item);
            before = entry;
        }
        if (before is not null) writer.LineEnd();
        return writer.ToString();
    }

    /// <summary>Writes an order: runs and repeats counted out, each group written where it is first strung and used by its name from then on.</summary>
    /// <param name="order">The order.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    /// <exception cref="ArgumentException">The order cannot be written so; see <see cref="TryPrint"/>.</exception>
    public static string Print(StringingOrder order, IReadOnlyList<string> beadIds) =>
        TryPrint(order, beadIds, out var text) ? text : throw new ArgumentException("The order cannot be written as notation.", nameof(order));

    /// <summary>Writes an order, where notation can say it.</summary>
    /// <remarks>It cannot when one group's name stands for different beads in different places, when a name is not one that the notation takes,
    /// when groups overlap or go deeper than <see cref="OrderLimits.Depth"/>, or when the order or its text is above the limits. Any order can
    /// be written as a list (<see cref="OrderList.Of"/>).</remarks>
    /// <param name="order">The order.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    /// <param name="text">The notation; null when it cannot be written.</param>
    public static bool TryPrint(StringingOrder order, IReadOnlyList<string> beadIds, [NotNullWhen(true)] out string? text)
    {
        text = StrungGroups.Of(order, beadIds) is { } groups ? new OrderCounter(groups, beadIds).Write() : null;
        if (text?.Length > OrderLimits.TextLength) text = null;
        return text is not null;
    }

    private static void Write(OrderWriter writer, OrderRun run, bool mayBreak)
    {
        for (var i = 0; i < run.Items.Length; i++)
        {
            if (i > 0) writer.Comma(mayBreak);
            Write(writer, run.Items[i]);
        }
    }

    private static void Write(OrderWriter writer, OrderItem item)
    {
        Write(writer.Count(item.Times), item.Part!);
        if (item.Separator is null) return;
        Write(writer.Add(" with "), item.Separator);
        writer.Add(" between");
    }

    private static void Write(OrderWriter writer, OrderPart part)
    {
        switch (part)
        {
            case OrderNameUse use:
                writer.Add(use.Name.Text);
                break;
            case OrderBracket bracket:
                if (bracket.Name is not null) writer.Add(bracket.Name.Text).Add(" ");
                WriteBracket(writer, bracket.Run);
                break;
            case OrderMirror mirror:
                WriteBracket(writer.Add("mirror "), mirror.Half);
                if (mirror.Centre is not null) Write(writer.Add(" around "), mirror.Centre);
                break;
            case OrderBackwards backwards:
                Write(writer.Add("backwards "), backwards.Part);
                break;
        }
    }

    private static void WriteBracket(OrderWriter writer, OrderRun run)
    {
        Write(writer.Add("("), run, mayBreak: true);
        writer.Add(")");
    }
}
