using System.Globalization;
using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>Short ways to write down what an order strings and what is wrong with one.</summary>
internal static class OrderTexts
{
    public static readonly string[] BeadIds = ["round", "disc", "chip", "tube", "bar", "stone"];

    /// <summary>What a text strings, as <c>round cluster[chip disc] round</c>. Fails when the text has faults.</summary>
    public static string Strung(string text) => Shown(Order(text), BeadIds);

    public static StringingOrder Order(string text)
    {
        var read = OrderNotation.Read(text, BeadIds);
        Assert.Empty(read.Faults.Select(Shown));
        Assert.NotNull(read.Order);
        return read.Order;
    }

    /// <summary>Beads by id, with square brackets where groups start and end.</summary>
    public static string Shown(StringingOrder order, IReadOnlyList<string> beadIds)
    {
        var text = new StringBuilder();
        var open = new Stack<GroupRun>();
        var next = 0;
        for (var i = 0; i < order.Count; i++)
        {
            if (i > 0) text.Append(' ');
            for (; next < order.Groups.Length && order.Groups[next].First == i; next++)
            {
                open.Push(order.Groups[next]);
                text.Append(order.Groups[next].Name).Append('[');
            }
            text.Append(beadIds[order.Kinds[i]]);
            for (; open.Count > 0 && open.Peek().End == i + 1; open.Pop()) text.Append(']');
        }
        Assert.Empty(open);
        Assert.Equal(order.Groups.Length, next);
        return text.ToString();
    }

    /// <summary>The faults of a text, as <c>1:5 order.unknown-name 'rond' nearest=round</c>.</summary>
    public static string[] FaultsOf(string text) => [.. OrderNotation.Read(text, BeadIds).Faults.Select(Shown)];

    public static string Shown(Fault fault)
    {
        var place = fault.Field.Length > 0 ? fault.Field : string.Create(CultureInfo.InvariantCulture, $"{fault.Line}:{fault.Column}");
        return string.Join(' ', (string[])[place, fault.Code, $"'{fault.Value}'", .. fault.Values.Select(pair => $"{pair.Key}={pair.Value}")]);
    }

    public static void AssertSame(StringingOrder expected, StringingOrder? found)
    {
        Assert.NotNull(found);
        if (expected.Kinds.SequenceEqual(found.Kinds) && expected.Groups.SequenceEqual(found.Groups)) return;
        // Slow, but says where they part.
        Assert.Equal(expected.Kinds.AsEnumerable(), found.Kinds.AsEnumerable());
        Assert.Equal(expected.Groups.AsEnumerable(), found.Groups.AsEnumerable());
    }
}
