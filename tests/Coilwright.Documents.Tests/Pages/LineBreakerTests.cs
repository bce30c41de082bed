using Coilwright.Documents.Pages;
using Coilwright.Documents.Pages.Composition;
using Coilwright.Documents.Typefaces;
using CsCheck;

namespace Coilwright.Documents.Tests.Pages;

public class LineBreakerTests
{
    private static readonly TextLook Look = new(10, 14, FaceStyle.Regular, PageInks.Ink);

    private static double Width(string text) => HouseFaces.Of(FaceStyle.Regular).WidthEm(text) * Look.Size;

    private static string[] Lines(RichText text, double width) =>
        [.. LineBreaker.Break(text, Look, width).Select(l => string.Concat(l.Runs.Select(r => r.Text)))];

    [Fact]
    public void A_line_takes_every_word_that_fits_exactly() =>
        Assert.Equal(["one two ", "three"], Lines("one two three", Width("one two")));

    [Fact]
    public void A_line_takes_no_word_that_does_not_fit() =>
        Assert.Equal(["one ", "two ", "three"], Lines("one two three", Width("one two") - 0.01));

    [Fact]
    public void No_text_is_no_line() => Assert.Empty(Lines(RichText.Empty, 100));

    [Fact]
    public void Spaces_at_a_lines_end_are_kept_for_readers_and_not_counted()
    {
        var line = LineBreaker.Break("one   two", Look, Width("one two"))[0];
        Assert.Equal("one   ", line.Runs[0].Text);
        Assert.Equal(Width("one"), line.Width, 1e-9);
    }

    [Theory]
    [InlineData("about 160 mm", "about ")] // The number goes down with its unit.
    [InlineData("string 12 AB", "string ")]
    [InlineData("wrist 6 1/2", "wrist ")]
    [InlineData("wrist 6 Zoll", "wrist ")]
    [InlineData("pebble 9 × 7", "pebble ")]
    public void A_number_stays_with_its_unit_or_key_letter(string text, string first) =>
        Assert.Equal(first, Lines(text, Width(text) - 1)[0]);

    [Fact]
    public void A_number_leaves_its_unit_when_nothing_else_can_give_way() =>
        Assert.Equal(["160 ", "mm"], Lines("160 mm", Width("160 m")));

    [Fact]
    public void Those_who_break_lines_themselves_get_hard_spaces_there() =>
        Assert.Equal("cut 3\u00a01/4 loops, 612\u00a0mm or 24\u00a01/8\u00a0in, 3 times", LineBreaker.WithHardSpaces("cut 3 1/4 loops, 612 mm or 24 1/8 in, 3 times"));

    [Theory]
    [InlineData("memory-wire", "memory-")]
    [InlineData("mauve–violet", "mauve–")]
    [InlineData("silver/gold", "silver/")]
    public void Joined_words_part_after_their_joint(string text, string first) => Assert.Equal(first, Lines(text, Width(text) - 1)[0]);

    [Theory]
    [InlineData("wide 3-4")]
    [InlineData("wide 1/2")]
    [InlineData("wide a\u00a0b")]
    public void Figures_and_hard_spaces_do_not_part(string text) => Assert.Equal("wide ", Lines(text, Width(text) - 0.5)[0]);

    [Fact]
    public void A_word_wider_than_the_line_is_parted_between_letters()
    {
        var lines = Lines(new string('m', 10), 3.5 * Width("m"));
        Assert.Equal(["mmm", "mmm", "mmm", "m"], lines);
    }

    [Fact]
    public void A_line_narrower_than_a_letter_still_takes_one() => Assert.Equal(["W", "W"], Lines("WW", 0.1));

    [Fact]
    public void A_key_letter_is_one_piece_with_its_ring()
    {
        var line = Assert.Single(LineBreaker.Break(RichText.Key("AB"), Look, 0.1));
        var run = Assert.Single(line.Runs);
        Assert.True(run.Ringed);
        Assert.True(run.Width > HouseFaces.Of(FaceStyle.Bold).WidthEm("AB") * Look.Size);
    }

    [Fact]
    public void Styles_follow_one_another_without_a_gap_or_overlap()
    {
        var line = Assert.Single(LineBreaker.Break("one " + RichText.Strong("two") + RichText.Emphasis(" three"), Look, 1000));
        Assert.Equal([FaceStyle.Regular, FaceStyle.Bold, FaceStyle.Italic], line.Runs.Select(r => r.Face));
        for (var i = 1; i < line.Runs.Length; i++) Assert.Equal(line.Runs[i - 1].X + line.Runs[i - 1].Width, line.Runs[i].X, 1e-9);
    }

    [Fact]
    public void Every_letter_is_set_once_and_in_order_and_no_line_is_too_wide() =>
        Gen.Select(Gen.String[Gen.Char["abcdeW1 2-/–é\u00a0"], 0, 80], Gen.Double[8, 200]).Sample((text, width) =>
        {
            var lines = LineBreaker.Break(text, Look, width);
            return string.Concat(lines.SelectMany(l => l.Runs).Select(r => r.Text)) == text
                && lines.All(l => l.Width <= width + 1e-6 || l.Runs.Sum(r => r.Text.Trim().Length) <= 1);
        });

    [Fact]
    public void The_widest_word_fits_a_line_of_its_own_width() =>
        Gen.String[Gen.Char["abcdeW1 2-é"], 1, 60].Sample(text =>
        {
            // At its width no line parts inside a word: every line but the last ends with a space or a joint.
            var lines = LineBreaker.Break(text, Look, LineBreaker.WidestWord(text, Look));
            return lines.Take(lines.Length - 1).All(l => l.Runs[^1].Text[^1] is ' ' or '-');
        });
}
