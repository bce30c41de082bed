using System.Collections.Concurrent;
using System.Globalization;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.PatternSheet;

/// <summary>What a sheet says of other sizes is what their orders string.</summary>
public sealed class SizesPartTests : IDisposable
{
    private static readonly ReckoningData Data = DataFiles.LoadDefault().Data!;
    private static readonly ConcurrentDictionary<string, Sizes> Made = new();

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    public static TheoryData<string, string, bool> Sheets()
    {
        var all = new TheoryData<string, string, bool>();
        foreach (var (name, _) in DrawnPieces.Examples())
            foreach (var language in Languages.All)
                foreach (var large in (bool[])[false, true]) all.Add(name, language.Code, large);
        return all;
    }

    private static Sizes Of(string name) => Made.GetOrAdd(name, _ =>
    {
        var piece = DrawnPieces.Examples().Single(e => e.Name == name).Piece;
        return Grader.Of(piece, Data, new SizesRequest(UsualWrists.Few(piece, Data), Effort: 1));
    });

    private static IEnumerable<Block.Table> Tables(IEnumerable<Block> blocks) => blocks.SelectMany(b => b is Block.KeepTogether t ? Tables(t.Blocks) : b is Block.Table table ? [table] : []);

    [Theory, MemberData(nameof(Sheets))]
    public void Beads_of_each_size_are_those_of_its_order(string name, string code, bool large)
    {
        var (sizes, language) = (Of(name), Languages.Find(code)!);
        var sheet = PatternSheetDocument.Of(sizes.Base, sizes, new PageSetup { LargePrint = large }, language);
        var table = Tables(sheet.Blocks).Single(t => t.Name == language.Sizes.Materials);
        var from = large ? 1 : 2;
        foreach (var (row, kind) in table.Rows.Zip(sizes.Base.Counts))
        {
            Assert.Equal(kind.Letter, Text(row[0]));
            Assert.Equal(sizes.All.Select(s => s.Piece.Order.Kinds.Count(k => k == kind.KindIndex)), row[from..(from + sizes.All.Length)].Select(Number));
            Assert.Equal(sizes.All.Max(s => s.Piece.Order.Kinds.Count(k => k == kind.KindIndex)), Number(row[^2]));
        }
        Assert.Equal(sizes.All.Sum(s => s.Piece.Order.Count), Number(table.Rows[^1][^1]));

        static string Text(TableCell cell) => string.Concat(cell.Text.Spans.Select(s => s.Text));
        static int Number(TableCell cell) => int.Parse(Text(cell), CultureInfo.InvariantCulture);
    }

    [Theory, MemberData(nameof(Sheets))]
    public void The_printed_page_is_sound_and_says_what_changes(string name, string code, bool large)
    {
        var (sizes, language) = (Of(name), Languages.Find(code)!);
        var file = DocumentFiles.Of(DocumentKinds.PatternSheet, sizes.Base, new PageSetup { LargePrint = large }, language, sizes).Single(f => f.Name == "sheet.pdf");
        Assert.Empty(file.Faults);
        var pdf = _place.File("sheet.pdf", file.Bytes);
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", pdf), StringComparison.Ordinal);
        // A key letter stands in a ring and so a little apart: blanks are left aside.
        var page = Bare(Programs.Output("pdftotext", "-raw", pdf, "-"));
        // By key letter, as the steps have it.
        var said = new SizesSentences(sizes, language, id => sizes.Base.Counts.Single(k => k.Bead.Id == id).Letter);
        foreach (var change in sizes.All.Select(said.Change)) Assert.Contains(Bare(change), page, StringComparison.Ordinal);
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
