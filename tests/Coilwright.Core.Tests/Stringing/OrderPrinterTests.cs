using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;
using static Coilwright.Core.Tests.Stringing.OrderTexts;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>What printed notation looks like, and what cannot be printed.</summary>
public class OrderPrinterTests
{
    [Theory]
    [InlineData("round,round , round", "3 round")]
    [InlineData("round, disc, round, disc, round", "2 (round, disc), round")]
    [InlineData("round, disc, round", "round, disc, round")]
    [InlineData("2 (3 chip, disc), bar", "2 (3 chip, disc), bar")]
    [InlineData("4 (2 (round, disc), bar)", "4 (2 (round, disc), bar)")]
    [InlineData("g = 2 chip, disc\ng, tube, 2 g", "g (2 chip, disc), tube, 2 g")]
    [InlineData("3 (g (chip, disc), bar)", "3 (g (chip, disc), bar)")]
    [InlineData("mirror (g (chip, disc))", "g (chip, disc), backwards g")]
    [InlineData("mirror (g (chip, disc, chip))", "2 g (chip, disc, chip)")]
    [InlineData("outer (inner (chip, disc), bar), inner, backwards outer", "outer (inner (chip, disc), bar), inner, backwards outer")]
    public void An_order_is_counted_out(string text, string expected) => Assert.Equal(expected + "\n", OrderPrinter.Print(Order(text), BeadIds));

    [Theory]
    [InlineData("3x chip # three\n 2 ( round,disc ) ", "3 chip\n2 (round, disc)\n")]
    [InlineData("\n\nchip,disc\n\n\nbar,\n", "chip, disc\nbar\n")]
    [InlineData("g  =  chip,\ng(", "")]
    [InlineData("1 chip", "chip\n")]
    [InlineData("mirror(chip,2×disc)around 1 stone", "mirror (chip, 2 disc) around stone\n")]
    [InlineData("g=2chip,disc,\r\n5 g with 2 bar between\r\nbackwards g", "g = 2 chip, disc\n5 g with 2 bar between\nbackwards g\n")]
    [InlineData("2 h(\n  chip # a\n  disc # b\n)", "2 h (chip, disc)\n")]
    public void A_tree_is_printed_with_its_own_lines_and_counts(string text, string expected)
    {
        var tree = OrderTree.Of(text);
        if (expected.Length > 0) Assert.Equal(expected, OrderPrinter.Print(tree));
        else Assert.Throws<ArgumentException>(() => OrderPrinter.Print(tree));
    }

    [Fact]
    public void Long_lines_are_broken_after_a_comma()
    {
        var order = Order(string.Join('\n', Enumerable.Range(0, 200).Select(i => BeadIds[i * i % 7 % 6])));
        var lines = OrderPrinter.Print(order, BeadIds).TrimEnd('\n').Split('\n');
        Assert.All(lines, line => Assert.InRange(line.Length, 1, 100));
    }

    [Fact]
    public void A_name_for_different_beads_cannot_be_printed() =>
        AssertNotPrinted(new StringingOrder([0, 1, 2], [new("g", 0, 1), new("g", 1, 2)]));

    [Fact]
    public void Groups_that_overlap_or_leave_the_order_cannot_be_printed()
    {
        AssertNotPrinted(new StringingOrder([0, 1, 2], [new("g", 0, 2), new("h", 1, 2)]));
        AssertNotPrinted(new StringingOrder([0, 1], [new("g", 1, 2)]));
        AssertNotPrinted(new StringingOrder([0, 1], [new("g", 1, 0)]));
        AssertNotPrinted(new StringingOrder([0, 1], [new("h", 0, 1), new("g", 0, 2)]));
    }

    [Fact]
    public void Groups_with_names_that_notation_does_not_take_cannot_be_printed()
    {
        foreach (var name in (string[])["chip", "mirror", "Cluster", ""]) AssertNotPrinted(new StringingOrder([0, 1], [new(name, 0, 2)]));
        AssertNotPrinted(new StringingOrder([0, 1], [new("g", 0, 2), new("g", 0, 1)]));
        Assert.False(OrderPrinter.TryPrint(new StringingOrder([0], []), ["Round"], out _));
        Assert.False(OrderPrinter.TryPrint(new StringingOrder([0], []), ["round", "round"], out _));
    }

    [Fact]
    public void Orders_above_the_limits_cannot_be_printed()
    {
        AssertNotPrinted(new StringingOrder([.. Enumerable.Repeat(0, OrderLimits.Beads + 1)], []));
        AssertNotPrinted(new StringingOrder([0], [.. Enumerable.Range(0, OrderLimits.Depth + 1).Select(i => new GroupRun($"g{i}", 0, 1))]));
        // 200,000 beads with long names and no repeats are a text of more than a million characters.
        string[] ids = ["a" + new string('b', 30), "a" + new string('c', 30)];
        var state = 1u;
        var kinds = Enumerable.Range(0, OrderLimits.Beads).Select(_ => (int)((state = (state * 1664525) + 1013904223) >> 31));
        Assert.False(OrderPrinter.TryPrint(new StringingOrder([.. kinds], []), ids, out _));
    }

    [Fact]
    public void Groups_fifty_deep_print_and_read_back()
    {
        var groups = Enumerable.Range(0, 50).Select(i => new GroupRun($"g{i}", 0, 6)).Concat(Enumerable.Range(0, 50).Select(i => new GroupRun($"g{i}", 6, 6)));
        var order = new StringingOrder([0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1], [.. groups]);
        AssertSame(order, Order(OrderPrinter.Print(order, BeadIds)));
    }

    // Sixteen groups, each twice the one before and a chip, are 196,606 beads; one more would be too many. Groups around them up to the depth at
    // which repeats still get brackets: 33 groups and 16 brackets come to 49, and one group more would do without the brackets.
    [Theory]
    [InlineData(33, true)]
    [InlineData(34, false)]
    public void Repeats_in_groups_in_repeats_print_within_the_depth_that_reads_back(int groups, bool brackets)
    {
        var lines = Enumerable.Range(1, 16).Select(i => $"g{i} = 2 ({(i == 1 ? "disc" : $"g{i - 1}")}, chip)")
            .Concat(Enumerable.Range(17, groups - 16).Select(i => $"g{i} = g{i - 1}"));
        var order = Order(string.Join('\n', lines) + $"\ng{groups}");
        Assert.Equal(196_606, order.Count);
        var printed = OrderPrinter.Print(order, BeadIds);
        Assert.Equal(brackets, System.Text.RegularExpressions.Regex.IsMatch(printed, @"(^|[ (])2 \("));
        AssertSame(order, Order(printed));
    }

    private static void AssertNotPrinted(StringingOrder order)
    {
        Assert.False(OrderPrinter.TryPrint(order, BeadIds, out var text));
        Assert.Null(text);
        Assert.Throws<ArgumentException>(() => OrderPrinter.Print(order, BeadIds));
    }
}
