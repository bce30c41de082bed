using Coilwright.Core.Faults;
using Coilwright.Core.Stringing.Notation;
using static Coilwright.Core.Tests.Stringing.OrderTexts;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>What is said of an order that cannot be read, and where: line, column, code, what was found, and the values for the sentence.</summary>
public class OrderFaultTests
{
    [Theory]
    // nothing strung
    [InlineData("", "1:1 order.empty ''")]
    [InlineData("  # only a thought", "1:19 order.empty ''")]
    [InlineData("g = chip\n", "2:1 order.empty ''")]
    // names
    [InlineData("rond", "1:1 order.unknown-name 'rond' nearest=round")]
    [InlineData("round, 2 dics", "1:10 order.unknown-name 'dics' nearest=disc")]
    [InlineData("cluster = chip\nround\n  3 clustre", "3:5 order.unknown-name 'clustre' nearest=cluster")]
    [InlineData("turquoise", "1:1 order.unknown-name 'turquoise'")]
    [InlineData("2 round with dis between", "1:14 order.unknown-name 'dis' nearest=disc")]
    [InlineData("mirror (chp) around sone", "1:9 order.unknown-name 'chp' nearest=chip", "1:21 order.unknown-name 'sone' nearest=stone")]
    [InlineData("g = chp\nround", "1:5 order.unknown-name 'chp' nearest=chip")]
    [InlineData("Round", "1:1 order.name-form 'Round' lower=round nearest=round")]
    [InlineData("2 CHIP, disc", "1:3 order.name-form 'CHIP' lower=chip nearest=chip")]
    [InlineData("round_8", "1:1 order.name-form 'round_8' nearest=round")]
    [InlineData("stöne", "1:1 order.name-form 'stöne' nearest=stone")]
    [InlineData("-chip", "1:1 order.name-form '-chip' nearest=chip")]
    [InlineData("3 X chip", "1:3 order.name-form 'X' lower=x nearest=x")]
    [InlineData("Mirror (chip) Around disc", "1:1 order.name-form 'Mirror' lower=mirror nearest=mirror",
        "1:15 order.name-form 'Around' lower=around nearest=around")]
    // group names
    [InlineData("Cluster = chip\ncluster", "1:1 order.name-form 'Cluster' lower=cluster")]
    [InlineData("x = chip", "1:1 order.name-reserved 'x' known=around, backwards, between, mirror, with, x")]
    [InlineData("mirror = chip", "1:1 order.name-reserved 'mirror' known=around, backwards, between, mirror, with, x")]
    [InlineData("between (chip)", "1:1 order.name-reserved 'between' known=around, backwards, between, mirror, with, x")]
    [InlineData("chip = disc\nround", "1:1 order.group-is-bead 'chip'")]
    [InlineData("round, chip (disc)", "1:8 order.group-is-bead 'chip'")]
    [InlineData("g = chip\ng = disc\ng", "2:1 order.group-twice 'g' firstColumn=1 firstLine=1")]
    [InlineData("  g (chip), g (chip)", "1:13 order.group-twice 'g' firstColumn=3 firstLine=1")]
    // groups inside themselves
    [InlineData("g = chip, g\ng", "1:11 order.group-in-itself 'g' path=g > g")]
    [InlineData("a = chip, b\nb = disc, a\na", "1:11 order.group-in-itself 'a' path=a > b > a")]
    [InlineData("a = b\nb = 2 c\nc = round, a\nround", "1:5 order.group-in-itself 'a' path=a > b > c > a")]
    [InlineData("a = b\nb = c\nc = b\nround", "2:5 order.group-in-itself 'b' path=b > c > b")]
    [InlineData("g (chip, h (g))", "1:10 order.group-in-itself 'g' path=g > h > g")]
    [InlineData("mirror (g (chip, backwards g))", "1:28 order.group-in-itself 'g' path=g > g")]
    [InlineData("g = 2 chip with g between\nround", "1:17 order.group-in-itself 'g' path=g > g")]
    [InlineData("a = a, b\nb = a\nround", "1:5 order.group-in-itself 'a' path=a > a", "1:8 order.group-in-itself 'a' path=a > b > a")]
    // counts
    [InlineData("0 chip", "1:1 order.count '0' max=200000")]
    [InlineData("200001 chip", "1:1 order.count '200001' max=200000")]
    [InlineData("99999999999999999999 chip", "1:1 order.count '99999999999999999999' max=200000")]
    [InlineData("2 chip with 0 disc between", "1:13 order.count '0' max=200000")]
    // something else was expected
    [InlineData("3", "1:2 order.expected '' expected=part")]
    [InlineData("3, disc", "1:2 order.expected ',' expected=part")]
    [InlineData("3\ndisc", "1:2 order.expected '' expected=part")]
    [InlineData("3 x x chip", "1:5 order.expected 'x' expected=part")]
    [InlineData("3.5 chip", "1:2 order.expected '.' expected=part")]
    [InlineData("2 3 chip", "1:3 order.expected '3' expected=part")]
    [InlineData("x chip", "1:1 order.expected 'x' expected=item")]
    [InlineData(", round", "1:1 order.expected ',' expected=item")]
    [InlineData("round,, disc", "1:7 order.expected ',' expected=item")]
    [InlineData("round\n, disc", "2:1 order.expected ',' expected=item")]
    [InlineData("()", "1:2 order.expected ')' expected=item")]
    [InlineData("g ()", "1:4 order.expected ')' expected=item")]
    [InlineData("(,)", "1:2 order.expected ',' expected=item")]
    [InlineData("g =\nround", "1:4 order.expected '' expected=item")]
    [InlineData("g = # soon\nround", "1:11 order.expected '' expected=item")]
    [InlineData("round, g = chip", "1:10 order.expected '=' expected=line-of-its-own")]
    [InlineData("(g = chip)", "1:4 order.expected '=' expected=line-of-its-own")]
    [InlineData("= chip", "1:1 order.expected '=' expected=item")]
    [InlineData("mirror chip", "1:8 order.expected 'chip' expected=opening-bracket")]
    [InlineData("mirror\n(chip)", "1:7 order.expected '' expected=opening-bracket")]
    [InlineData("mirror (chip) around, disc", "1:21 order.expected ',' expected=item")]
    [InlineData("backwards mirror (chip), disc", "1:11 order.expected 'mirror' expected=name-or-bracket")]
    [InlineData("backwards backwards chip", "1:11 order.expected 'backwards' expected=name-or-bracket")]
    [InlineData("backwards 2 chip", "1:11 order.expected '2' expected=name-or-bracket")]
    [InlineData("5 round with disc", "1:18 order.expected '' expected=between")]
    [InlineData("5 round with disc, chip between", "1:18 order.expected ',' expected=between", "1:25 order.expected 'between' expected=comma-or-line-end")]
    [InlineData("5 round with between", "1:14 order.expected 'between' expected=item")]
    [InlineData("5 round with disc with chip between", "1:19 order.expected 'with' expected=between")]
    [InlineData("round disc", "1:7 order.expected 'disc' expected=comma-or-line-end")]
    [InlineData("(round disc)", "1:8 order.expected 'disc' expected=comma-or-closing-bracket")]
    [InlineData("g = round disc\ng", "1:11 order.expected 'disc' expected=comma-or-line-end")]
    [InlineData("round; disc", "1:6 order.expected ';' expected=comma-or-line-end")]
    [InlineData("round)", "1:6 order.expected ')' expected=comma-or-line-end")]
    [InlineData("round, ), disc", "1:8 order.expected ')' expected=item")]
    [InlineData("[round]", "1:1 order.expected '[' expected=item")]
    // brackets
    [InlineData("2 (round, disc", "1:15 order.unclosed '' openColumn=3 openLine=1")]
    [InlineData("g (round, 2 (disc, chip)\n", "2:1 order.unclosed '' openColumn=3 openLine=1")]
    [InlineData("mirror (round, (disc", "1:21 order.unclosed '' openColumn=16 openLine=1", "1:21 order.unclosed '' openColumn=8 openLine=1")]
    [InlineData("2 (round, disc\ng = chip\ng", "2:1 order.unclosed 'g' openColumn=3 openLine=1")]
    [InlineData("h = (round\ng = chip\ng, h", "2:1 order.unclosed 'g' openColumn=5 openLine=1")]
    public void Fault_is_told_once_with_its_place(string text, params string[] expected) => Assert.Equal(expected, FaultsOf(text));

    [Fact]
    public void Several_faults_are_told_at_once_in_the_order_of_the_text() => Assert.Equal(
        [
            "1:3 order.unknown-name 'rond' nearest=round",
            "2:9 order.expected 'disc' expected=comma-or-closing-bracket",
            "3:1 order.count '0' max=200000",
            "3:9 order.unknown-name 'chp' nearest=chip",
            "5:1 order.group-is-bead 'tube'",
            "6:9 order.unknown-name 'b'",
            "6:10 order.unclosed '' openColumn=1 openLine=6",
        ],
        FaultsOf("2 rond, round\n2 (chip disc, stone), bar\n0 chip, chp\n\ntube = chip\n(round, b"));

    // What was passed over may have named a group; calling its uses unknown would be a second fault for one slip.
    [Theory]
    [InlineData("round disc, g\n3 3 g (chip), g", "1:7 order.expected 'disc' expected=comma-or-line-end", "2:3 order.expected '3' expected=part")]
    [InlineData("round, g = chip\ng", "1:10 order.expected '=' expected=line-of-its-own")]
    [InlineData("Group (chip), group", "1:1 order.name-form 'Group' lower=group")]
    public void Group_named_in_text_that_was_passed_over_is_not_called_unknown(string text, params string[] expected) =>
        Assert.Equal(expected, FaultsOf(text));

    [Theory]
    [InlineData("𝄞𝄞 rond", 1, "1:1 order.expected '𝄞𝄞' expected=item")] // a pair of surrogates is one character
    [InlineData("\t\t  rond", 1, "1:5 order.unknown-name 'rond' nearest=round")]
    [InlineData("# 𝄞\r\n# two\r# three\n rond", 1, "4:2 order.unknown-name 'rond' nearest=round")]
    [InlineData("(𝄞, rond)", 2, "1:2 order.expected '𝄞' expected=item", "1:5 order.unknown-name 'rond' nearest=round")]
    public void Line_and_column_count_lines_and_characters_from_1(string text, int count, params string[] expected)
    {
        Assert.Equal(count, expected.Length);
        Assert.Equal(expected, FaultsOf(text));
    }

    [Fact]
    public void Fault_shows_no_more_than_a_screenful_and_nothing_that_a_screen_would_obey()
    {
        Assert.Equal(["1:1 order.unknown-name '" + new string('q', 40) + "…'"], FaultsOf(new string('q', 100_000)));
        Assert.Equal(["1:1 order.expected '\uFFFD[' expected=item"], FaultsOf("\u001b["));
    }

    [Fact]
    public void Faults_beyond_the_first_fifty_are_not_told()
    {
        var faults = OrderNotation.Read(string.Join('\n', Enumerable.Repeat("rond\nround disc", 1000)), BeadIds).Faults;
        Assert.Equal(OrderLimits.FaultsTold, faults.Length);
        Assert.Equal(Enumerable.Range(1, OrderLimits.FaultsTold), faults.Select(f => f.Line));
    }

    [Fact]
    public void Two_beads_of_one_id_read_as_the_first()
    {
        // The piece's own check tells of it; the order need not fail too.
        Assert.Equal([0], OrderNotation.Read("round", ["round", "round"]).Order!.Kinds);
    }

    [Fact]
    public void Nearest_name_may_be_a_bead_or_a_group()
    {
        Assert.Equal(FaultCodes.OrderUnknownName, OrderNotation.Read("petal = chip\npetel, dscs", BeadIds).Faults[0].Code);
        Assert.Equal(["petal", "disc"], OrderNotation.Read("petal = chip\npetel, dsc", BeadIds).Faults.Select(f => f.Values["nearest"]));
    }
}
