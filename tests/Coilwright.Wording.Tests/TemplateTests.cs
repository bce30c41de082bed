namespace Coilwright.Wording.Tests;

public class TemplateTests
{
    private static readonly Language English = Languages.English;

    [Fact]
    public void A_value_stands_as_it_is_and_a_number_with_at_most_two_decimals() =>
        Assert.Equal("chips: 3 of 4.13", English.Fill("{name}: {n} of {x}", ("name", "chips"), ("n", 3), ("x", 4.1251)));

    [Theory]
    [InlineData(1, "1 bead")]
    [InlineData(0, "0 beads")]
    [InlineData(2, "2 beads")]
    [InlineData(21, "21 beads")]
    public void A_count_takes_its_own_form(int n, string expected) => Assert.Equal(expected, English.Fill("{n} {n:bead|beads}", ("n", n)));

    // The plural goes by what is printed: 0.999 is printed as 1.
    [Theory]
    [InlineData(1.0, "1 turn")]
    [InlineData(0.999, "1 turn")]
    [InlineData(3.94, "3.94 turns")]
    [InlineData(0.5, "0.5 turns")]
    public void A_measure_takes_the_form_of_what_is_printed(double turns, string expected) =>
        Assert.Equal(expected, English.Fill("{turns} {turns:turn|turns}", ("turns", turns)));

    [Fact]
    public void What_depends_on_a_missing_or_empty_value_is_left_out()
    {
        const string template = "It is wrong.{?nearest: Did you mean {nearest}?}";
        Assert.Equal("It is wrong. Did you mean chip?", English.Fill(template, ("nearest", "chip")));
        Assert.Equal("It is wrong.", English.Fill(template, ("nearest", "")));
        Assert.Equal("It is wrong.", English.Fill(template));
    }

    [Fact]
    public void A_sentence_begins_with_a_capital() => Assert.Equal("The hole is small.", English.Sentence("{what} is small.", ("what", "the hole")));

    [Fact]
    public void A_missing_value_shows_as_a_question_and_never_as_a_brace() => Assert.Equal("about (?) mm", English.Fill("about {x} mm"));

    [Theory]
    [InlineData("{open")]
    [InlineData("closed}")]
    public void A_torn_brace_is_refused(string template) => Assert.Throws<FormatException>(() => English.Fill(template, ("open", "")));

    [Fact]
    public void A_format_that_is_not_known_is_refused() => Assert.Throws<FormatException>(() => English.Fill("{x:furlong}", ("x", 1.0)));

    [Theory]
    [InlineData("length", -3.2, "-3.2 mm (-1/8 in)")]
    [InlineData("exact", 160.5, "160.5 mm (6 5/16 in)")]
    [InlineData("size", -3.2, "3.2 mm (1/8 in)")]
    [InlineData("mm", 6.55, "6.6 mm")]
    [InlineData("fine", 0.812, "0.81 mm")]
    [InlineData("cut", 812.01, "813 mm (32 in)")]
    [InlineData("deg", -23.6, "24°")]
    [InlineData("percent", 0.314, "31 %")]
    [InlineData("place", 90, "a quarter turn past the top")]
    public void Each_format_writes_its_number(string format, double value, string expected)
    {
        Assert.Contains(format, Template.Formats);
        Assert.Equal(expected, English.Fill($"x {{x:{format}}}", ("x", value))[2..]);
    }

    [Fact]
    public void Every_format_is_tried_above() =>
        Assert.Equal(9, Template.Formats.Count);
}
