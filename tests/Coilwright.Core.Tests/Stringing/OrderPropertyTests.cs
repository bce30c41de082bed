using Coilwright.Core.Stringing.Notation;
using CsCheck;
using static Coilwright.Core.Tests.Stringing.OrderTexts;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>What holds for every order, tried on random ones.</summary>
public class OrderPropertyTests
{
    private static readonly Gen<(NoteOrder Note, string Text)> Written =
        Gen.Select(NoteGen.Order, NoteGen.Style, (note, style) => (note, NoteWriter.Write(note, style)));

    [Fact]
    public void However_it_is_spaced_and_commented_an_order_strings_what_the_naive_way_strings() =>
        Written.Sample(written => AssertSame(NaiveStringing.Of(written.Note, BeadIds), Order(written.Text)), iter: 1000);

    [Fact]
    public void Random_orders_use_every_construct()
    {
        // Guards the tests here: a generator that stopped making mirrors would leave every one of them green and idle.
        var seen = new HashSet<string>();
        Written.Sample(written =>
        {
            lock (seen)
            {
                foreach (var node in OrderTree.Of(written.Text).Nodes())
                {
                    seen.Add(node switch
                    {
                        OrderMirror { Centre: null } => "mirror",
                        OrderMirror => "mirror around",
                        OrderBracket { Name: null } => "bracket",
                        OrderBracket => "named bracket",
                        OrderItem { Separator: { Times: > 1 } } => "with so many between",
                        OrderItem { Separator: not null } => "with between",
                        _ => node.GetType().Name,
                    });
                }
                if (Order(written.Text).Groups is var groups && groups.Zip(groups.Skip(1)).Any(pair => pair.Second.First < pair.First.End))
                    seen.Add("group in a group");
            }
        }, iter: 500);
        string[] expected = ["mirror", "mirror around", "bracket", "named bracket", "with so many between", "with between", "group in a group",
            nameof(OrderBackwards), nameof(OrderDefinition), nameof(OrderNameUse), nameof(OrderCount), nameof(OrderRun), nameof(OrderItem), nameof(OrderName)];
        Assert.Equal(expected.Order(StringComparer.Ordinal), seen.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_tree_gives_back_the_exact_text() => Written.Sample(written => AssertCovers(OrderTree.Of(written.Text), written.Text), iter: 1000);

    [Fact]
    public void A_printed_tree_reads_as_the_same_order_and_prints_the_same_again() => Written.Sample(written =>
    {
        var printed = OrderPrinter.Print(OrderTree.Of(written.Text));
        AssertSame(Order(written.Text), Order(printed));
        Assert.Equal(printed, OrderPrinter.Print(OrderTree.Of(printed)));
        Assert.DoesNotContain('#', printed);
    }, iter: 1000);

    [Fact]
    public void A_printed_order_reads_as_the_same_order() => Written.Sample(written =>
    {
        var order = Order(written.Text);
        AssertSame(order, Order(OrderPrinter.Print(order, BeadIds)));
    }, iter: 1000);

    [Fact]
    public void An_order_as_a_list_reads_as_the_same_order() => Written.Sample(written =>
    {
        var order = Order(written.Text);
        var read = OrderList.Read(OrderList.Of(order, BeadIds), BeadIds);
        Assert.Empty(read.Faults);
        AssertSame(order, read.Order);
    }, iter: 1000);

    [Fact]
    public void Backwards_strings_the_same_from_the_other_end() => Written.Sample(written =>
    {
        var order = Order(written.Text);
        var backwards = Order(Around("backwards (", written.Text, ")"));
        AssertSame(NaiveStringing.Flat(NaiveStringing.Reversed(NaiveStringing.Things(order, BeadIds)), BeadIds), backwards);
        AssertSame(order, Order(Around("backwards (backwards (", written.Text, "))")));
    }, iter: 1000);

    [Fact]
    public void A_mirror_is_its_own_reverse() => Written.Sample(written =>
    {
        foreach (var centre in (string[])["", " around stone", " around 3 bar", " around mirror (disc, chip)"])
        {
            var order = Order(Around("mirror (", written.Text, ")" + centre));
            AssertSame(order, NaiveStringing.Flat(NaiveStringing.Reversed(NaiveStringing.Things(order, BeadIds)), BeadIds));
        }
    }, iter: 500);

    [Fact]
    public void Half_a_mirror_is_the_half_alone() => Written.Sample(written =>
    {
        var half = Order(written.Text);
        var mirror = Order(Around("mirror (", written.Text, ") around stone"));
        Assert.Equal((2 * half.Count) + 1, mirror.Count);
        Assert.Equal(half.Kinds.AsEnumerable(), mirror.Kinds.Take(half.Count));
        Assert.Equal(half.Groups.AsEnumerable(), mirror.Groups.Take(half.Groups.Length));
        Assert.Equal(2 * half.Groups.Length, mirror.Groups.Length);
    }, iter: 500);

    [Fact]
    public void Nodes_lie_inside_one_another_in_the_order_of_the_text_and_have_their_own_ids() => Written.Sample(written =>
    {
        var tree = OrderTree.Of(written.Text);
        AssertNested(tree.Entries, new TextSpan(0, tree.Text.Length));
        Assert.Equal(tree.Nodes().Count(), tree.Nodes().Select(n => n.Id).Distinct().Count());
        foreach (var name in tree.Nodes().OfType<OrderName>()) Assert.Equal(name.Text, tree.TextOf(name.Span));
        foreach (var node in tree.Nodes().Where(n => n.Span.Length > 0)) Assert.Equal(tree.TextOf(node.Span), tree.TextOf(node.Span).Trim());
    }, iter: 1000);

    // Pieces of notation rather than letters alone: a soup of letters hardly ever gets past the first word.
    private static readonly string[] Pieces = ["(", ")", ",", "\n", "\r", "=", "x", "×", "with", "between", "around", "mirror", "backwards", "round",
        "disc", "Chip", "g", "h", "g = ", "h (", "0", "2", "13", "99999999999", " ", "\t", "# note", "\0", "ß", "𝄞", "\ud834", "\udd1e", "-", "_", ";", "\ufeff"];

    private static readonly Gen<string> Soup = Gen.Frequency(
        (3, NoteGen.OneOf(Pieces).Array[0, 40].Select(string.Concat)),
        (3, NoteGen.OneOf(Pieces).Array[0, 40].Select(pieces => string.Join(' ', pieces))),
        (1, Gen.String[0, 60]));

    // A sound text with one thing put in, taken out or changed.
    private static readonly Gen<string> Spoilt = Gen.Select(Written, Gen.Int[0, 1_000_000], Gen.Int[0, 3], NoteGen.OneOf(Pieces), (written, at, taken, put) =>
    {
        at %= written.Text.Length + 1;
        return string.Concat(written.Text.AsSpan(0, at), put, written.Text.AsSpan(Math.Min(written.Text.Length, at + taken)));
    });

    [Fact]
    public void Reading_never_throws_and_tells_faults_in_the_order_of_the_text() =>
        Gen.Frequency((1, Soup), (1, Spoilt)).Sample(text =>
        {
            var read = OrderNotation.Read(text, BeadIds);
            Assert.Equal(read.Faults.IsEmpty, read.Order is not null);
            Assert.InRange(read.Faults.Length, 0, OrderLimits.FaultsTold);
            AssertCovers(read.Tree!, text);
            AssertNested(read.Tree!.Entries, new TextSpan(0, text.Length));
            Assert.Equal(read.Faults.OrderBy(f => f.Line).ThenBy(f => f.Column), read.Faults);
            var lines = text.Split('\n').Length + text.Count(c => c == '\r');
            Assert.All(read.Faults, fault =>
            {
                Assert.InRange(fault.Line, 1, lines);
                Assert.InRange(fault.Column, 1, text.Length + 1);
                Assert.StartsWith("order.", fault.Code, StringComparison.Ordinal);
            });
            if (read.Order is not null) AssertSame(read.Order, Order(OrderPrinter.Print(read.Tree!)));
        }, iter: 3000);

    [Fact]
    public void An_edit_gives_what_reading_anew_gives_and_keeps_the_ids_of_what_it_does_not_touch() =>
        Gen.Select(Gen.Frequency((3, Written.Select(w => w.Text)), (1, Soup)), Gen.Int[0, 1_000_000], Gen.Int[0, 6], Soup).Sample((text, at, taken, put) =>
        {
            var old = OrderTree.Of(text);
            at %= text.Length + 1;
            var span = new TextSpan(at, Math.Min(taken, text.Length - at));
            var edited = old.Replace(span, put);
            var anew = OrderTree.Of(string.Concat(text.AsSpan(0, at), put, text.AsSpan(span.End)));
            Assert.Equal(anew.Text, edited.Text);
            Assert.Equal(anew.Nodes().Select(n => (n.GetType(), n.Span)), edited.Nodes().Select(n => (n.GetType(), n.Span)));
            Assert.Equal(edited.Nodes().Count(), edited.Nodes().Select(n => n.Id).Distinct().Count());
            var shift = put.Length - span.Length;
            var byPlace = edited.Nodes().ToLookup(n => (n.GetType(), n.Span));
            foreach (var node in old.Nodes())
            {
                var before = node.Span.End < span.Start;
                var after = node.Span.Start > span.End;
                if (!before && !after) continue;
                var there = byPlace[(node.GetType(), before ? node.Span : node.Span with { Start = node.Span.Start + shift })].ToList();
                if (there.Count > 0) Assert.Contains(node.Id, there.Select(n => n.Id));
            }
            var ids = old.Nodes().ToDictionary(n => n.Id, n => n.GetType());
            foreach (var node in edited.Nodes())
                if (ids.TryGetValue(node.Id, out var kind))
                    Assert.Equal(kind, node.GetType());
        }, iter: 1000);

    [Fact]
    public void Several_edits_at_once_give_what_one_after_another_gives() =>
        Gen.Select(Written.Select(w => w.Text), Gen.Int[0, 1_000_000].Array[2, 8], Soup.Array[4]).Sample((text, places, put) =>
        {
            var old = OrderTree.Of(text);
            var ordered = places.Select(place => place % (text.Length + 1)).Order().ToArray();
            TextChange[] changes = [.. Enumerable.Range(0, ordered.Length / 2).Select(i => new TextChange(TextSpan.Between(ordered[2 * i], ordered[2 * i + 1]), put[i]))
                .GroupBy(change => change.Span.Start).Select(same => same.First())];
            var atOnce = old.Replace(changes);
            var oneByOne = changes.Reverse().Aggregate(old, (tree, change) => tree.Replace(change.Span, change.With));
            Assert.Equal(oneByOne.Text, atOnce.Text);
            Assert.Equal(atOnce.Nodes().Count(), atOnce.Nodes().Select(n => n.Id).Distinct().Count());
            // Whatever lies apart from every change keeps its id.
            var there = atOnce.Nodes().ToLookup(n => (n.GetType(), n.Span));
            foreach (var node in old.Nodes().Where(node => changes.All(change => node.Span.End < change.Span.Start || node.Span.Start > change.Span.End)))
            {
                var shift = changes.Where(change => change.Span.End < node.Span.Start).Sum(change => change.With.Length - change.Span.Length);
                var now = there[(node.GetType(), node.Span with { Start = node.Span.Start + shift })].ToList();
                if (now.Count > 0) Assert.Contains(node.Id, now.Select(n => n.Id));
            }
        }, iter: 1000);

    /// <summary>A whole text inside a construct; groups written down on lines of their own stay outside it.</summary>
    private static string Around(string before, string text, string after)
    {
        var tree = OrderTree.Of(text);
        var outside = tree.Entries.OfType<OrderDefinition>().Select(d => tree.TextOf(d.Span) + "\n");
        var inside = tree.Entries.OfType<OrderItem>().Select(i => tree.TextOf(i.Span) + "\n");
        return string.Concat(outside) + before + string.Concat(inside) + after;
    }

    private static void AssertCovers(OrderTree tree, string text)
    {
        Assert.Equal(text, tree.ToText());
        var end = 0;
        foreach (var token in tree.Tokens)
        {
            Assert.Equal(end, token.Span.Start);
            Assert.True(token.Span.Length > 0);
            end = token.Span.End;
        }
        Assert.Equal(text.Length, end);
    }

    private static void AssertNested(IEnumerable<OrderNode> nodes, TextSpan within)
    {
        var end = within.Start;
        foreach (var node in nodes)
        {
            Assert.InRange(node.Span.Start, end, within.End);
            Assert.InRange(node.Span.End, node.Span.Start, within.End);
            end = node.Span.End;
            AssertNested(node.Children, node.Span);
        }
    }
}
