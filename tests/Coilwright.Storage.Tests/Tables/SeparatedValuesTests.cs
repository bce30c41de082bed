using System.Globalization;
using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Storage.Tables;
using CsCheck;

namespace Coilwright.Storage.Tests.Tables;

/// <summary>Tables of separated values as makers and their programs save them.</summary>
public class SeparatedValuesTests
{
    private static TableLines Read(string text, int most = 100) => SeparatedValues.Read(Encoding.UTF8.GetBytes(text), most);

    private static string Said(TableLines read)
    {
        Assert.Null(read.Fault);
        return string.Join('\n', read.Lines.Select(l => $"{l.Line}:{string.Join('|', l.Cells)}"));
    }

    // RFC 4180, section 2: rules 1 to 7, each with the standard's own cells; of rule 4 its spaces within a cell.
    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "1:aaa|bbb|ccc\n2:zzz|yyy|xxx")]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "1:aaa|bbb|ccc\n2:zzz|yyy|xxx")]
    [InlineData("field_name,field_name2\r\naaa,bbb\r\nzzz,yyy\r\n", "1:field_name|field_name2\n2:aaa|bbb\n3:zzz|yyy")]
    [InlineData("aaa,b b\r\nzzz,y  y\r\n", "1:aaa|b b\n2:zzz|y  y")]
    [InlineData("\"aaa\",\"bbb\"\r\nzzz,\"yyy\"\r\n", "1:aaa|bbb\n2:zzz|yyy")]
    [InlineData("a,b\r\n\"aaa\",\"b\r\nbb\"\r\nzzz,yyy\r\n", "1:a|b\n2:aaa|b\r\nbb\n4:zzz|yyy")]
    [InlineData("a,b\r\n\"aaa\",\"b\"\"bb\"\r\n", "1:a|b\n2:aaa|b\"bb")]
    public void Values_are_read_by_the_standard(string text, string expected) => Assert.Equal(expected, Said(Read(text)));

    [Theory]
    [InlineData("name;lengthMm\nDot;4,5\n", "1:name|lengthMm\n2:Dot|4,5")]
    [InlineData("name\tlengthMm\nDot, red\t4,5\n", "1:name|lengthMm\n2:Dot, red|4,5")]
    [InlineData("\uFEFFname,lengthMm\nDot,4.5\n", "1:name|lengthMm\n2:Dot|4.5")]
    [InlineData("name;\"length, mm, along\"\nDot;4,5\n", "1:name|length, mm, along\n2:Dot|4,5")]
    [InlineData("\n\nname,lengthMm\n,,\n\nDot,4.5\n", "3:name|lengthMm\n6:Dot|4.5")]
    [InlineData("name\nDot\n", "1:name\n2:Dot")]
    [InlineData("name;a,b\nDot;4\n", "1:name|a,b\n2:Dot|4")] // as often one as the other
    [InlineData("", "")]
    [InlineData("\r\n ; ;\r\n", "")]
    public void Semicolons_tabs_marks_and_empty_lines_are_taken_as_they_come(string text, string expected) => Assert.Equal(expected, Said(Read(text)));

    [Fact]
    public void Spaces_after_a_comma_are_none_of_the_cell_and_those_in_quotes_are() =>
        Assert.Equal("1:name|drawer\n2:Dot, red| B 3 ", Said(Read("name, drawer\n \"Dot, red\" ,\" B 3 \"\n")));

    [Fact]
    public void What_spreadsheets_save_as_unicode_text_is_read()
    {
        foreach (var encoding in (Encoding[])[Encoding.Unicode, Encoding.BigEndianUnicode])
            Assert.Equal("1:name|Fach\n2:Größe|Ü", Said(SeparatedValues.Read((byte[])[.. encoding.GetPreamble(), .. encoding.GetBytes("name\tFach\r\nGröße\tÜ\r\n")], 100)));
        Assert.Equal(FaultCodes.FileNotUtf8, SeparatedValues.Read((byte[])[(byte)'n', 0xE4, (byte)'m', (byte)'e', (byte)'\n'], 100).Fault!.Code);
    }

    [Theory]
    [InlineData("name,b\nDot,\"open\nDash,4\n", 2)]
    [InlineData("name,b\nDot,4\nDash,5\" wide\n", 3)]
    [InlineData("name,b\nDot,\"two\nlines\"\nDash,\"a\"b\n", 4)]
    [InlineData("name,b\nDot,\"two\nlines\"\nDash,\"open\nDot,4\n\n", 4)]
    [InlineData("name;\"b\nDot;4\n", 1)]
    [InlineData("name,b\nDot,4\n\n\nDash,5\" wide\n", 5)]
    [InlineData("name,b\r\n\r\nDot,\"open\r\nDash,4\r\n\r\n", 3)]
    public void A_quote_without_its_other_is_told_with_its_line(string text, int line)
    {
        var read = Read(text);
        Assert.Equal((FaultCodes.TableBroken, line, 0), (read.Fault!.Code, read.Fault.Line, read.Lines.Length));
    }

    [Fact]
    public void Too_many_lines_or_columns_and_a_cell_without_end_are_told_with_their_line()
    {
        Assert.Equal(3, Read("a\n1\n2\n", 2).Lines.Length);
        Assert.Equal((FaultCodes.TableTooLong, 4), Where(Read("a\n1\n2\n3\n", 2)));
        Assert.Null(Read("a\n" + new string(',', SeparatedValues.MostColumns - 1) + "b").Fault);
        Assert.Equal((FaultCodes.TableBroken, 2), Where(Read("a\n" + new string(',', SeparatedValues.MostColumns) + "b")));
        Assert.Equal((FaultCodes.TableBroken, 3), Where(Read("a\n\nb,\"" + new string('x', 2 * SeparatedValues.MostInCell) + "\"\n")));

        static (string, int) Where(TableLines read) => (read.Fault!.Code, read.Fault.Line);
    }

    // Whatever was written by the standard comes back as it was: the cells are quoted where they must be, by the rules themselves and not by the library.
    [Fact]
    public void Any_table_written_by_the_standard_comes_back() =>
        Gen.Select(Gen.Char[",;\t"], Gen.String[Gen.Char["ab \",;\t\r\n.ä"], 0, 6].Array[2, 4].Array[1, 6]).Sample((sign, rows) =>
        {
            // Heads without signs, so that it is clear which sign it is.
            string[][] table = [["a", "b"], .. rows];
            var text = string.Join("\r\n", table.Select(row => string.Join(sign, row.Select(cell => cell.Any("\",;\t\r\n ".Contains) ? "\"" + cell.Replace("\"", "\"\"") + "\"" : cell))));
            var read = Read(text);
            Assert.Null(read.Fault);
            Assert.Equal(table.Where(row => !row.All(string.IsNullOrWhiteSpace)).Select(row => string.Join('\0', row)), read.Lines.Select(l => string.Join('\0', l.Cells)));
        }, iter: 2000);

    [Fact]
    public void Any_text_comes_to_an_answer() => Gen.OneOf(Gen.String[Gen.Char["\",;\n\r\tab 1"], 0, 60], Gen.String).Sample(text =>
    {
        var read = Read(text, 5);
        var lines = text.Count(c => c is '\n' or '\r') + 1;
        if (read.Fault is { } fault) Assert.True(fault.Line >= 1 && fault.Line <= lines && read.Lines.IsEmpty, string.Create(CultureInfo.InvariantCulture, $"line {fault.Line} of {lines}"));
        else Assert.All(read.Lines, l => Assert.InRange(l.Line, 1, lines));
    }, iter: 2000);
}
