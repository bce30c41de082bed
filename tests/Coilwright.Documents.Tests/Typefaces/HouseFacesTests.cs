using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Typefaces;
using CsCheck;
using PdfSharp.Drawing;

namespace Coilwright.Documents.Tests.Typefaces;

public class HouseFacesTests
{
    public static TheoryData<FaceStyle> Styles => [.. Enum.GetValues<FaceStyle>()];

    // Reference: advance widths in the hmtx tables of Atkinson Hyperlegible Next, version of npm package 0.4.1, thousandths of an em, read by a
    // separate script that shares no code with ours.
    [Theory]
    [InlineData(FaceStyle.Regular, 'A', 0.626)]
    [InlineData(FaceStyle.Regular, ' ', 0.28)]
    [InlineData(FaceStyle.Bold, 'A', 0.678)]
    [InlineData(FaceStyle.Italic, 'a', 0.525)]
    public void A_letter_is_as_wide_as_its_file_says(FaceStyle style, char letter, double em) =>
        Assert.Equal(em, HouseFaces.Of(style).WidthEm(new Rune(letter)), 1e-12);

    // Second way: PDFsharp reads the same file by its own reader and measures text when it draws.
    [Theory, MemberData(nameof(Styles))]
    public void Text_is_as_wide_as_the_program_that_draws_it_measures(FaceStyle style)
    {
        HouseFontResolver.Use();
        var font = new XFont(HouseFaces.Family, 100, style switch { FaceStyle.Bold => XFontStyleEx.Bold, FaceStyle.Italic => XFontStyleEx.Italic, _ => XFontStyleEx.Regular });
        using var measure = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
        Gen.String[Gen.Char["abcxyzABCWMil10 .,-–“”½×éøŁžőß"], 1, 30].Sample(text =>
        {
            var drawn = measure.MeasureString(text, font).Width;
            // Tolerance: PDFsharp keeps sizes as doubles; only summing differs.
            return Math.Abs(drawn - HouseFaces.Of(style).WidthEm(text) * 100) < 1e-6;
        }, iter: 500, threads: 1);
    }

    [Theory, MemberData(nameof(Styles))]
    public void Letters_that_are_mistaken_for_one_another_have_widths_or_forms_of_their_own(FaceStyle style)
    {
        // The reason for this face: one, small l and capital I are three shapes. Their widths alone tell them apart.
        var face = HouseFaces.Of(style);
        Assert.Equal(3, new[] { '1', 'l', 'I' }.Select(c => face.WidthEm(new Rune(c))).Distinct().Count());
    }

    [Fact]
    public void A_file_that_is_no_typeface_is_refused()
    {
        Assert.Throws<InvalidDataException>(() => TrueTypeFace.Read([]));
        Assert.Throws<InvalidDataException>(() => TrueTypeFace.Read(new byte[100]));
        Assert.Throws<InvalidDataException>(() => TrueTypeFace.Read(HouseFaces.Of(FaceStyle.Bold).File.ToArray()[..5000]));
    }

    [Theory]
    [InlineData("plain words, 6 mm", "plain words, 6 mm")]
    [InlineData("e\u0301te\u0301", "été")] // Accents written apart are joined to their letters.
    [InlineData("7 ⅛ in", "7 1⁄8 in")]
    [InlineData("6′ 2″", "6' 2\"")]
    [InlineData("one\ttwo\r\nthree", "one two  three")]
    [InlineData("a\u00adb\u200bc", "abc")]
    [InlineData("10\u202f000", "10\u00a0000")]
    public void Text_is_prepared_without_a_change_of_meaning(string text, string printed)
    {
        Assert.Equal(printed, PrintableText.Prepared(text));
        Assert.Empty(PrintableText.Missing(text));
    }

    [Theory]
    [InlineData("שלום", "ש (U+05E9), ל (U+05DC), ו (U+05D5), ם (U+05DD)")]
    [InlineData("珠子 8 mm", "珠 (U+73E0), 子 (U+5B50)")]
    [InlineData("pearls 🧿", "🧿 (U+1F9FF)")]
    [InlineData("x\u0304", "\u25cc\u0304 (U+0304)")] // An accent that no single letter carries would fall beside it.
    [InlineData("\ud83e", "\ufffd (U+FFFD)")] // Half of a pair.
    public void Characters_that_cannot_be_printed_are_named(string text, string characters)
    {
        var fault = PrintableText.Check(text, "blocks[0]");
        Assert.Equal(FaultCodes.DocumentGlyphsMissing, fault?.Code);
        Assert.Equal(characters, fault!.Values["characters"]);
        Assert.Equal("", fault.Values["more"]);
        Assert.Equal("blocks[0]", fault.Field);
    }

    [Fact]
    public void A_long_text_in_another_script_is_named_by_its_first_characters_and_a_count()
    {
        var fault = PrintableText.Check(new string([.. Enumerable.Range(0x4e00, 200).Select(c => (char)c)]), "title")!;
        Assert.Equal(10, fault.Values["characters"].Split(", ").Length);
        Assert.Equal("190", fault.Values["more"]);
        Assert.True(fault.Value.Length < 70);
    }

    [Fact]
    public void No_text_stops_the_check() =>
        Gen.String.Sample(text => PrintableText.Missing(PrintableText.Prepared(text)).SequenceEqual(PrintableText.Missing(text)));
}
