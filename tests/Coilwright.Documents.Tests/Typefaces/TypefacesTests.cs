using Coilwright.Documents.Typefaces;
using CsCheck;

namespace Coilwright.Documents.Tests.Typefaces;

public class TypefacesTests
{
    private static readonly CautiousSans Face = CautiousSans.Instance;

    // Reference: advance widths in the hmtx tables of DejaVu Sans 2.37: a 1255, M 1767, space 651 of 2048 units; of Atkinson Hyperlegible (2020):
    // capital I 414 of 1000 units, which is wider than DejaVu's 604 of 2048.
    [Theory]
    [InlineData("a", 1255 / 2048.0)]
    [InlineData("M", 1767 / 2048.0)]
    [InlineData(" ", 651 / 2048.0)]
    [InlineData("I", 0.414)]
    public void A_character_is_as_wide_as_in_the_wider_face(string character, double em) =>
        // Tolerance: the table is rounded up to whole thousandths.
        Assert.InRange(Face.WidthEm(character, TextWeight.Regular), em, em + 0.001);

    [Fact]
    public void A_character_that_no_face_is_known_to_have_takes_a_full_em() => Assert.Equal(1, Face.WidthEm("珠", TextWeight.Regular));

    [Fact]
    public void Shortened_text_fits_and_is_a_start_of_the_whole() =>
        Gen.Select(Gen.String[Gen.Char["ab cdéW🧿"], 0, 60], Gen.Double[0, 60]).Sample((text, width) =>
        {
            var shown = Face.Shortened(text, 3, TextWeight.Regular, width);
            return Face.WidthEm(shown, TextWeight.Regular) * 3 <= width + 1e-9
                && (shown == text || shown.Length == 0 || shown.EndsWith('…') && text.StartsWith(shown[..^1], StringComparison.Ordinal));
        });

    [Fact]
    public void Lines_hold_every_letter_and_none_is_too_wide() =>
        Gen.Select(Gen.String[Gen.Char["abcdefgW  "], 0, 80], Gen.Double[4, 60]).Sample((text, width) =>
        {
            var lines = Face.Lines(text, 3, TextWeight.Bold, width);
            return string.Concat(lines).Replace(" ", "", StringComparison.Ordinal) == text.Replace(" ", "", StringComparison.Ordinal)
                && lines.All(l => Face.WidthEm(l, TextWeight.Bold) * 3 <= width);
        });

    [Fact]
    public void At_most_so_many_lines_and_the_last_says_that_there_is_more()
    {
        var lines = Face.Lines("one two three four five six seven eight", 3, TextWeight.Regular, 20, 2);
        Assert.Equal(2, lines.Length);
        Assert.EndsWith("…", lines[1], StringComparison.Ordinal);
    }
}
