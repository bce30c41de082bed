using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Grading;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>The part of a sheet that tells what the design takes on other wrists: what changes, and how many beads of each kind.</summary>
internal sealed class SizesPart(PatternSheetModel model, Sizes sizes, PageSetup setup, Language language)
{
    // More places of gaps than these are a page of their own, and the gaps can be counted.
    private const int MostGaps = 12;

    private readonly SizesWords _words = language.Sizes;

    // By key letter, as the steps have it.
    private readonly SizesSentences _said = new(sizes, language, id => KeyedText.Mark(model.Reckoned.Counts.Single(k => k.Bead.Id == id).Letter));

    /// <summary>What every size keeps, and what changes in each.</summary>
    public IEnumerable<Block> Changes()
    {
        yield return new Block.Paragraph(string.Join(' ', _said.Keeps())) { StaysWithNext = true };
        // In large print there is no width for more than the wrist beside what changes.
        IEnumerable<(TableColumn Column, Func<Size, TableCell> Cell, bool IsWide)> all =
        [
            (new(_words.Wrist, CellAlign.Right) { IsWhole = true }, s => Wrist(s), false),
            (new(_words.Beads, CellAlign.Right) { IsWhole = true }, s => Whole(s.Piece.Order.Count), true),
            (new(_words.Coil) { IsWhole = true }, s => _said.Coil(s), true),
            (new(_words.ToCut) { IsWhole = true }, s => _said.Loops(s), true),
            (new(_words.Changes), Changes, false),
        ];
        var columns = all.Where(c => !(c.IsWide && setup.LargePrint)).ToArray();
        yield return new Block.Table([.. columns.Select(c => c.Column)], [.. sizes.All.Select(s => (ImmutableArray<TableCell>)[.. columns.Select(c => c.Cell(s))])])
        {
            Name = language.Sheet.OtherSizes,
            RowsHaveHeads = true,
        };
        if (_said.Gaps().ToArray() is not { Length: > 0 } gaps) yield break;
        var note = gaps.Length > MostGaps ? _words.GapsNote : _words.GapsNote + " " + string.Join("; ", gaps) + ".";
        yield return new Block.Paragraph(KeyedText.Rich(note), ParagraphLook.Small);
    }

    /// <summary>How many beads of each kind.</summary>
    public IEnumerable<Block> Beads()
    {
        var materials = sizes.Materials;
        IEnumerable<TableColumn> columns =
        [
            new(language.Sheet.Key, CellAlign.Centre), .. setup.LargePrint ? Array.Empty<TableColumn>() : [new(_words.Bead)],
            .. sizes.All.Select(s => new TableColumn(Wrist(s), CellAlign.Right) { IsWhole = true }), new(_words.Most, CellAlign.Right) { IsWhole = true }, new(_words.OneOfEach, CellAlign.Right),
        ];
        yield return new Block.Heading(3, _words.Materials);
        yield return new Block.Table([.. columns],
        [
            .. materials.Lines.Select(line => Row(RichText.Key(model.Letter(line.KindIndex)), KeyedText.Own(line.Bead.Name), line.Uses, Whole(line.Most), line.ForOneOfEach.Use)),
            Row(setup.LargePrint ? _words.All : RichText.Empty, _words.Together, materials.Beads, "", materials.Beads.Sum()),
        ])
        { Name = _words.Materials };
        yield return new Block.Paragraph(_words.MostNote, ParagraphLook.Small);

        ImmutableArray<TableCell> Row(RichText key, RichText name, ImmutableArray<int> uses, string most, int together) =>
        [
            key, .. setup.LargePrint ? Array.Empty<TableCell>() : [name],
            .. uses.Select(use => (TableCell)Whole(use)), most, Whole(together),
        ];
    }

    private TableCell Changes(Size size)
    {
        var text = KeyedText.Rich(_said.Change(size));
        foreach (var note in _said.Notes(size)) text += RichText.Quiet(" " + note);
        return text;
    }

    private string Wrist(Size size) => language.ShortLength(size.WristMm);

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
