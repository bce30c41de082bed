using System.Globalization;
using Coilwright.Core.Stringing.Notation;
using static Coilwright.Core.Tests.Stringing.OrderTexts;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>Texts that mean harm, or come from a slip of a generator: refused clearly, at once, and without filling memory or stack.</summary>
public class OrderHostileTests
{
    private static string Repeated(string text, int times) => string.Concat(Enumerable.Repeat(text, times));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    [Fact]
    public void Text_of_the_longest_length_is_read()
    {
        var text = "round # " + new string('x', OrderLimits.TextLength - 8);
        Assert.Equal(OrderLimits.TextLength, text.Length);
        Assert.Equal("round", Strung(text));
        Assert.Equal(["1:1 order.too-long '1000001' max=1000000"], FaultsOf(text + "x"));
    }

    [Fact]
    public void Ten_megabytes_are_refused_without_being_looked_at()
    {
        var read = OrderNotation.Read(new string('(', 10_000_000), BeadIds);
        Assert.Equal(["1:1 order.too-long '10000000' max=1000000"], read.Faults.Select(Shown));
        Assert.Null(read.Tree);
        Assert.Throws<ArgumentException>(() => OrderTree.Of(new string('(', 10_000_000)));
    }

    [Fact]
    public void Brackets_stand_fifty_deep_and_no_deeper()
    {
        Assert.Equal("chip", Strung(Repeated("(", 50) + "chip" + Repeated(")", 50)));
        Assert.Equal(["1:51 order.too-deep '(' max=50"], FaultsOf(Repeated("(", 51) + "chip" + Repeated(")", 51)));
        Assert.Equal(["1:51 order.too-deep '(' max=50"], FaultsOf(Repeated("(", 490_000) + "chip" + Repeated(")", 490_000)));
        Assert.Equal(["1:51 order.too-deep '(' max=50"], FaultsOf(Repeated("(", 1_000_000)));
        // Reading goes on behind what was too deep.
        Assert.Equal(["1:51 order.too-deep '(' max=50", "1:108 order.unknown-name 'chp' nearest=chip"],
            FaultsOf(Repeated("(", 51) + "chip" + Repeated(")", 51) + ",chp"));
    }

    [Fact]
    public void Middles_of_mirrors_stand_fifty_deep_and_no_deeper()
    {
        Assert.Equal(99, Order(Repeated("mirror (chip) around ", 49) + "chip").Count);
        Assert.Equal(["1:1058 order.too-deep '(' max=50"], FaultsOf(Repeated("mirror (chip) around ", 45_000) + "chip"));
    }

    [Fact]
    public void Groups_stand_fifty_deep_and_no_deeper()
    {
        Assert.Equal(50, Order(Chain(50, "") + "\ng50").Groups.Length);
        Assert.Equal(["51:1 order.too-deep 'g51' max=50"], FaultsOf(Chain(51, "") + "\ng51"));
        Assert.Equal(["51:1 order.too-deep 'g51' max=50"], FaultsOf(Chain(120, "") + "\ng120, 2 (g110, g115)"));
        // Brackets and groups count together.
        Assert.Equal(["50:1 order.too-deep '2 (g49, (chip, g49))' max=50"], FaultsOf(Chain(49, "") + "\n2 (g49, (chip, g49))"));
    }

    [Fact]
    public void Sixty_groups_each_twice_the_one_before_are_refused_at_once() =>
        Assert.Equal(["51:1 order.too-deep 'g51' max=50", "61:1 order.too-many '' max=200000"], FaultsOf(Chain(60, "2 ") + "\ng60"));

    [Theory]
    [InlineData("2 ", "50:1 order.too-many '562949953421312' max=200000")] // 2^49
    [InlineData("200000 ", "50:1 order.too-many '' max=200000")] // 2e5 to the 49th: no number is shown for more than a million milliards
    public void Counts_that_multiply_are_refused_without_being_strung(string count, string expected) =>
        Assert.Equal([expected], FaultsOf(Chain(49, count).Replace("g1 = " + count, "g1 = ", StringComparison.Ordinal) + "\n" + count + "g49"));

    [Theory]
    [InlineData("200000 (200000 (200000 chip))", "1:1 order.too-many '' max=200000")]
    [InlineData("200000 chip, disc", "1:14 order.too-many '200001' max=200000")]
    [InlineData("chip, 100000 (chip, chip)\ndisc, 2 disc", "1:7 order.too-many '200004' max=200000")]
    [InlineData("2 chip with 200000 disc between", "1:1 order.too-many '200002' max=200000")]
    [InlineData("mirror (100000 chip) around 1 disc", "1:1 order.too-many '200001' max=200000")]
    [InlineData("mirror (mirror (mirror (50000 chip)))", "1:1 order.too-many '400000' max=200000")]
    public void More_than_two_hundred_thousand_beads_are_refused_where_they_pass_it(string text, string expected) => Assert.Equal([expected], FaultsOf(text));

    [Fact]
    public void Two_hundred_thousand_beads_are_strung()
    {
        Assert.Equal(200_000, Order("200000 chip").Count);
        Assert.Equal(200_000, Order("mirror (100000 chip)").Count);
        Assert.Equal(200_000, Order("g = 2 chip\n100000 g").Count);
        Assert.Equal(200_000, Order(Repeated("disc\n", 200_000)[..^1]).Count);
        Assert.Equal(200_000, Order(Repeated("(", 49) + "200000 (chip)" + Repeated(")", 49)).Count);
    }

    [Fact]
    public void A_group_too_large_but_never_strung_does_no_harm() => Assert.Equal("chip", Strung("g = 200000 (200000 chip)\nchip"));

    [Fact]
    public void Stringings_of_groups_are_limited_too()
    {
        Assert.Equal(200_000, Order("g = chip\n200000 g").Groups.Length);
        // Forty groups of one bead, one in another, five thousand and one times: few beads, many stringings.
        Assert.Equal(["41:7 order.too-many-groups '200040' max=200000"], FaultsOf(Chain(40, "") + "\nchip, 5001 g40"));
    }

    [Fact]
    public void A_hundred_thousand_groups_in_a_chain_do_not_overflow_the_stack()
    {
        var chain = Chain(60_000, "");
        Assert.Equal(["51:1 order.too-deep 'g51' max=50"], FaultsOf(chain + "\ng60000"));
        var ring = "g0 = g60000\n" + chain.Replace("g1 = chip", "g1 = g0", StringComparison.Ordinal);
        Assert.Equal(["1:6 order.group-in-itself 'g0' path=g0 > g60000 > g59999 > g59998 > g59997 > g59996 > g59995 > g59994 > g59993 > g59992 > … > g0",
            "52:1 order.too-deep 'g51' max=50"],
            FaultsOf(ring + "\ng7"));
    }

    [Fact]
    public void Groups_that_all_hold_each_other_are_told_and_nothing_hangs()
    {
        var names = Enumerable.Range(0, 300).Select(i => "g" + Number(i)).ToArray();
        var text = string.Join('\n', names.Select(n => n + " = " + string.Join(", ", names)));
        Assert.Equal(OrderLimits.FaultsTold, FaultsOf(text).Length);
    }

    [Theory]
    [InlineData("\0", "1:1 order.expected '\uFFFD' expected=item")]
    [InlineData("round\0", "1:6 order.expected '\uFFFD' expected=comma-or-line-end")]
    [InlineData("\ufeffround", "1:1 order.expected '\ufeff' expected=item")]
    [InlineData("кольцо", "1:1 order.name-form 'кольцо'")]
    [InlineData("chip, ３", "1:7 order.name-form '３'")] // a full-width digit is no count
    [InlineData("ro\u0301und", "1:1 order.name-form 'ro\u0301und' nearest=round")] // a letter and its accent as two characters
    [InlineData("\u202eround", "1:1 order.expected '\u202e' expected=item")] // a sign that turns the direction of writing
    public void Characters_from_elsewhere_are_told(string text, string expected) => Assert.Equal([expected], FaultsOf(text));

    [Fact]
    public void Half_a_pair_of_surrogates_is_told()
    {
        Assert.Equal(["1:1 order.expected '\uFFFD' expected=item"], FaultsOf("\ud834"));
        Assert.Equal(["1:1 order.expected '\uFFFD\uFFFD' expected=item", "1:5 order.unknown-name 'rond' nearest=round"], FaultsOf("\udd1e\ud834, rond"));
    }

    [Fact]
    public void Many_long_unknown_names_among_many_groups_are_told_in_time()
    {
        // A nearest name costs about the product of the two lengths; without bounds this text asks for 5,000 x 5,000 of them.
        var groups = Enumerable.Range(0, 5_000).Select(i => $"{new string('a', 45)}{Number(i)} = chip");
        var uses = Enumerable.Range(0, 5_000).Select(i => $"{new string('b', 45)}{Number(i)}");
        Assert.Equal(OrderLimits.FaultsTold, FaultsOf(string.Join('\n', groups.Concat(uses))).Length);
    }

    /// <summary>Groups g1 to gN, each so many of the one before, the first one chip.</summary>
    private static string Chain(int length, string count) =>
        string.Join('\n', Enumerable.Range(1, length).Select(i => $"g{Number(i)} = {count}{(i == 1 ? "chip" : "g" + Number(i - 1))}"));
}
