using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using Coilwright.Core.Tests.Tray;
using Coilwright.Core.Tray;
using Coilwright.Documents.Tables;
using Coilwright.Storage;
using Coilwright.Storage.Tray;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.Tables;

/// <summary>The bead tray as values and as a workbook, read back by ourselves and by another program.</summary>
public class TrayListTests
{
    private static readonly TrayKind[] Kinds = [.. GeneratedTray.Of(400, seed: 5)];

    private static TrayImport ReadAgain(byte[] file, IEnumerable<TrayKind> there)
    {
        var table = TrayFile.Read(file).Table!;
        return TrayReading.Read(table, TrayMatching.Of(table.Heads, TrayVocabulary.All), there.ToDictionary(k => k.Key, StringComparer.Ordinal), TrayVocabulary.All, DataFiles.LoadDefault().Data!);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_list_that_was_saved_and_is_brought_in_again_changes_nothing_and_fills_an_empty_tray(bool workbook)
    {
        var file = workbook ? TrayList.Xlsx(Kinds) : TrayList.Csv(Kinds);
        Assert.All(ReadAgain(file, Kinds).Rows, r => Assert.Equal(TrayRowDoes.Nothing, r.Does));
        var anew = ReadAgain(file, []);
        Assert.True(anew.IsSound, string.Join('\n', anew.Rows.SelectMany(r => r.Faults)));
        Assert.Equal(file, workbook ? file : TrayList.Csv(anew.Rows.Select(r => r.Kind!)));
        Assert.Equal(TrayList.Csv(Kinds), TrayList.Csv(anew.Rows.Select(r => r.Kind!)));
    }

    [Fact]
    public void A_workbook_has_no_formula_whatever_its_texts_begin_with()
    {
        using var zip = new ZipArchive(new MemoryStream(TrayList.Xlsx(Kinds)));
        var sheet = XDocument.Load(zip.GetEntry("xl/worksheets/sheet1.xml")!.Open());
        Assert.Contains(sheet.Descendants(), e => e.Value == "=SUM(A1)");
        Assert.DoesNotContain(sheet.Descendants(), e => e.Name.LocalName == "f");
    }

    // Opened by LibreOffice, which writes it as values of its own: the same cells as in ours, but for the apostrophe before what begins like a formula, which values alone need.
    [Fact]
    public async Task A_workbook_is_opened_by_another_program_with_every_cell_in_its_place()
    {
        var folder = Directory.CreateTempSubdirectory("coilwright-tray-");
        try
        {
            var file = Path.Combine(folder.FullName, "tray.xlsx");
            await File.WriteAllBytesAsync(file, TrayList.Xlsx(Kinds));
            // 44, 34, 76: a comma between, texts in quotes, UTF-8; the last but one: numbers as they are, not as they are shown.
            using var office = Process.Start(new ProcessStartInfo("soffice",
                [$"-env:UserInstallation=file://{folder.FullName}/profile", "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false", "--outdir", folder.FullName, file])
            { RedirectStandardOutput = true, RedirectStandardError = true })!;
            await office.WaitForExitAsync();
            Assert.Equal(0, office.ExitCode);
            var theirs = TrayFile.Read(await File.ReadAllBytesAsync(Path.Combine(folder.FullName, "tray.csv"))).Table!;
            Assert.Equal(TrayColumns.All.Select(c => c.Name), theirs.Heads);
            Assert.Equal(Kinds.Length, theirs.Lines.Length);
            Assert.All(Kinds.Zip(theirs.Lines), pair =>
            {
                foreach (var (column, cell) in TrayColumns.All.Zip(pair.Second.Cells))
                    // A number comes back to fifteen figures, which is what such programs keep.
                    if (column.Of(pair.First) is double number) Assert.Equal(number, double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture), 1e-9);
                    else Assert.Equal(column.TextOf(pair.First), cell);
            });
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Values_are_written_by_the_standard()
    {
        var text = Encoding.UTF8.GetString(TrayList.Csv(Kinds));
        // RFC 4180: lines end with CR LF, the last one too; a text with a comma, a quote or a line end stands in quotes, its quotes doubled.
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.Contains("\"\"best\"\"\nof all\"", text, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?<!\r)\n(?!of all)", text);
        Assert.Contains("'=SUM(A1)", text, StringComparison.Ordinal);
    }
}
