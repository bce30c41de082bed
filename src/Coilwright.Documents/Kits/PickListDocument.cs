using System.Collections.Immutable;
using Coilwright.Core.Kits;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Documents.Strips;
using Coilwright.Wording;

namespace Coilwright.Documents.Kits;

/// <summary>The pick list of a batch of kits: a sheet to tick off with a pencil, drawer by drawer, and what lies in each kit.</summary>
public static class PickListDocument
{
    private const double BoxMm = 4.2, EdgeMm = 0.35;

    // A box to tick, at a pencil's size.
    private static readonly Picture Box_ = new(BoxMm, BoxMm, "", "",
        [new Rectangle(Box.At(EdgeMm, EdgeMm, BoxMm - 2 * EdgeMm, BoxMm - 2 * EdgeMm), Paint.Lined(Palette.Colour.Ink, 0.3)) { CornerMm = 0.6 }]);

    /// <summary>Describes the list.</summary>
    public static PageDocument Of(KitPlan plan, Language language)
    {
        var (words, said) = (language.Kit, new KitSentences(plan, language));
        return new PageDocument
        {
            Title = words.PickHeading,
            Language = language.Code,
            Words = new PageWords
            {
                PageOf = (page, pages) => language.Fill(language.Sheet.PageOf, ("page", page), ("pages", pages)),
                JoinAt = letter => language.Fill(language.Sheet.JoinAt, ("letter", letter)),
            },
            Blocks =
            [
                new Block.Heading(1, words.PickHeading),
                new Block.Paragraph(KeyedText.Own(said.For()), ParagraphLook.Lead),
                .. said.Mind().Select(s => (Block)new Block.Paragraph(RichText.Strong(KeyedText.Own(s)))),
                .. said.PickNotes().Select(s => (Block)new Block.Paragraph(s)),
                Picks(plan, said, language),
                new Block.List(ListKind.Ticked, [.. said.CutAll().Select(s => (RichText)KeyedText.Own(s))]),
                .. plan.Kits.SelectMany(kit => Kit(kit, said, language)),
                new Block.Note(language.Cut.CautionsHeading, [new Block.List(ListKind.Bulleted, [.. said.Cautions().Select(c => (RichText)c)])]),
            ],
        };
    }

    private static Block.Table Picks(KitPlan plan, KitSentences said, Language language)
    {
        var words = language.Kit;
        var none = new TableCell(RichText.Empty);
        (TableColumn Column, Func<PickLine, TableCell> Cell, bool IsThere)[] all =
        [
            (new(RichText.Empty, CellAlign.Centre), _ => none with { Picture = Box_ }, true),
            (new(language.Sentence(words.DrawerColumn)), p => KeyedText.Own(KitSentences.Drawers(p)), plan.HasDrawers),
            (new(language.Sheet.TrueSize, CellAlign.Centre), p => p.Item.Bead is { } bead ? none with { Picture = Own(StripDrawing.Alone(bead), p.Item.Id), PictureIsTrueSize = true } : none, true),
            (new(language.Sheet.Bead), p => KeyedText.Own(said.NameOf(p.Item)), true),
            (new(language.Sentence(words.TakeColumn), CellAlign.Right) { IsWhole = true }, p => RichText.Strong(said.Count(p.All)), true),
            (new(language.Sentence(words.ShortColumn), CellAlign.Right) { IsWhole = true }, p => p.Item.Missing > 0 ? said.Count(p.Item.Missing) : "", plan.HomeIsKnown),
            (new(language.Sentence(words.IntoColumn)), p => KeyedText.Own(said.Into(p)), true),
        ];
        var columns = all.Where(c => c.IsThere).ToArray();
        return new Block.Table([.. columns.Select(c => c.Column)], [.. plan.Picks.Select(p => (ImmutableArray<TableCell>)[.. columns.Select(c => c.Cell(p))])]) { Name = words.PickHeading };
    }

    private static IEnumerable<Block> Kit(Kit kit, KitSentences said, Language language)
    {
        var words = language.Kit;
        yield return new Block.KeepTogether(
        [
            new Block.Heading(2, KeyedText.Own(said.Heading(kit))),
            new Block.Table(
                [new(language.Sheet.Key, CellAlign.Centre), new(language.Sheet.Bead), new(language.Sentence(language.Shop.UseColumn), CellAlign.Right), new(language.Sentence(language.Shop.SpareColumn), CellAlign.Right), new(language.Sentence(words.BagColumn), CellAlign.Right)],
                [.. kit.Bags.Select(b => (ImmutableArray<TableCell>)[b.Letter.Length == 0 ? RichText.Empty : RichText.Key(b.Letter), KeyedText.Own(said.NameOf(b)), said.Count(b.Use), said.Count(b.Spare), RichText.Strong(said.Count(b.Count))])])
            { Name = KeyedText.Own(said.Heading(kit)) },
            new Block.Paragraph(said.Wire(kit)),
        ]);
    }

    // Every picture of a page has symbols of its own names.
    private static Picture Own(Picture picture, string name) => picture with
    {
        Marks = [.. picture.Marks.Select(m => m is Stamp stamp ? stamp with { Symbol = stamp.Symbol with { Name = name } } : m)],
    };
}
