using System.Globalization;
using System.IO.Compression;
using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Core.Tray;
using Coilwright.Storage.Tray;
using MiniExcelLibs;

namespace Coilwright.Storage.Tests.Tray;

/// <summary>Lists of beads as files, as makers save them.</summary>
public class TrayFileTests
{
    private static TrayTable Table(string text) => TrayFile.Read(Encoding.UTF8.GetBytes(text)).Table!;

    private static string Lines(TrayTable table) => string.Join('\n', table.Lines.Select(l => $"{l.Line}:{string.Join('|', l.Cells)}").Prepend(string.Join('|', table.Heads)));

    // What separated values are, SeparatedValuesTests say.
    [Fact]
    public void The_first_line_is_the_heads_and_the_others_keep_their_lines() =>
        Assert.Equal("name|length, mm, along\n3:Dot|4,5", Lines(Table("name;\"length, mm, along\"\n\nDot;4,5\n")));

    [Fact]
    public void A_quote_without_its_other_is_told_with_its_line()
    {
        var fault = TrayFile.Read("name,b\nDot,\"open\nDash,4\n"u8.ToArray()).Fault!;
        Assert.Equal((FaultCodes.TableBroken, 2), (fault.Code, fault.Line));
    }

    [Fact]
    public void What_is_no_list_is_one_clear_fault()
    {
        Assert.Equal(FaultCodes.TableNoRows, TrayFile.Read(Array.Empty<byte>()).Fault!.Code);
        Assert.Equal(FaultCodes.TableNoRows, TrayFile.Read("\r\n ; ;\r\n"u8.ToArray()).Fault!.Code);
        Assert.Equal(FaultCodes.FileNotUtf8, TrayFile.Read((byte[])[(byte)'n', 0xE4, (byte)'m', (byte)'e', (byte)'\n']).Fault!.Code);
        Assert.Equal(FaultCodes.WorkbookBroken, TrayFile.Read((byte[])[0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1]).Fault!.Code);
        Assert.Equal(FaultCodes.WorkbookBroken, TrayFile.Read("PK\u0003\u0004 and then nothing"u8.ToArray()).Fault!.Code);
        Assert.Equal(FaultCodes.FileTooLarge, TrayFile.Read(new byte[TrayFile.MaxBytes + 1]).Fault!.Code);
    }

    [Fact]
    public void A_list_that_is_too_large_where_it_lies_is_told_with_the_limit_of_lists()
    {
        using var folder = new TempFolder();
        using (var file = File.Create(folder.File("large.csv"))) file.SetLength(TrayFile.MaxBytes + 1L);
        var fault = TrayFile.ReadFrom(folder.File("large.csv")).Fault!;
        Assert.Equal((FaultCodes.FileTooLarge, "64 MB"), (fault.Code, fault.Values["max"]));
    }

    [Fact]
    public void A_zip_that_is_no_workbook_and_a_workbook_that_is_cut_off_are_told()
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        using (var writer = new StreamWriter(zip.CreateEntry("readme.txt").Open())) writer.Write("hello");
        Assert.Equal(FaultCodes.WorkbookBroken, TrayFile.Read(bytes.ToArray()).Fault!.Code);
        var book = Workbook([["name", "lengthMm"], ["Dot", 4.5]]);
        for (var length = 5; length < book.Length; length += 37) Assert.Equal(FaultCodes.WorkbookBroken, TrayFile.Read(book.AsMemory(0, length)).Fault!.Code);
        // A sheet that is no XML.
        using var broken = new MemoryStream();
        broken.Write(book);
        using (var zip = new ZipArchive(broken, ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.GetEntry("xl/worksheets/sheet1.xml")!.Delete();
            using var writer = new StreamWriter(zip.CreateEntry("xl/worksheets/sheet1.xml").Open());
            writer.Write("<worksheet><sheetData><row r=\"x\"><c r=");
        }
        Assert.Equal(FaultCodes.WorkbookBroken, TrayFile.Read(broken.ToArray()).Fault!.Code);
    }

    [Fact]
    public void A_workbook_is_read_cell_by_cell_whatever_the_machine_writes_numbers_like()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        try
        {
            var table = TrayFile.Read(Workbook([["name", "lengthMm", "matched", "empty"], ["Dot; \"red\"\nround", 4.5, true, null], ["=1+2", 1.0 / 3, false, ""]])).Table!;
            Assert.Equal("name|lengthMm|matched|empty\n2:Dot; \"red\"\nround|4.5|yes|\n3:=1+2|0.3333333333333333|no|", Lines(table));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_hundred_thousand_lines_are_read_and_one_more_is_told()
    {
        var text = new StringBuilder("name;shape;lengthMm\n");
        for (var i = 0; i < TrayTable.MostLines; i++) text.Append(CultureInfo.InvariantCulture, $"bead {i};round;{i % 20 + 1},5\n");
        var table = Table(text.ToString());
        Assert.Equal(TrayTable.MostLines, table.Lines.Length);
        var import = TrayReading.Read(table, new TrayMatching(["name", "shape", "lengthMm"]), new Dictionary<string, TrayKind>(), new TrayWords([], [], [], []), TestData.Data);
        Assert.True(import.IsSound);
        Assert.Equal(TrayTable.MostLines, import.Edits.Length);
        var fault = TrayFile.Read(Encoding.UTF8.GetBytes(text.Append("one more;round;4\n").ToString())).Fault!;
        Assert.Equal((FaultCodes.TableTooLong, TrayTable.MostLines + 2), (fault.Code, fault.Line));
    }

    private static byte[] Workbook(object?[][] rows)
    {
        using var bytes = new MemoryStream();
        bytes.SaveAs(rows.Select(row => row.Select((cell, i) => (Key: ((char)('A' + i)).ToString(), cell)).ToDictionary(c => c.Key, c => c.cell)), printHeader: false);
        return bytes.ToArray();
    }
}
