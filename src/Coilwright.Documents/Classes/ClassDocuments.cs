using System.Collections.Immutable;
using Coilwright.Core.Classes;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Wording;

namespace Coilwright.Documents.Classes;

/// <summary>The papers of a class: the teacher's sheet, and one for each participant, which tells nothing of money.</summary>
public static class ClassDocuments
{
    /// <summary>What the teacher needs: what stands against it, kits, tools, the clock, what is done beforehand, cautions, and what it costs.</summary>
    public static PageDocument Teacher(ClassPlan plan, Language language)
    {
        var (words, said) = (language.Class, new ClassSentences(plan, language, KeyedText.Mark, KeyedText.Own));
        List<Block> blocks =
        [
            new Block.Heading(1, said.Title),
            .. said.Head().Select(s => new Block.Paragraph(Rich(s), ParagraphLook.Lead)),
            new Block.Note(words.ReasonsHeading, [new Block.List(ListKind.Bulleted, [.. said.Reasons().Select(Rich)])]),
            new Block.Heading(2, words.TimetableHeading),
            Timetable(said, language),
            new Block.Paragraph(RichText.Strong(said.Takes())),
            new Block.Paragraph(words.Evenly, ParagraphLook.Small),
            new Block.KeepTogether([new Block.Heading(2, words.BeforehandHeading), new Block.List(ListKind.Ticked, [.. said.Beforehand().Select(Rich)]), .. said.CouldBeBeforehand().Select(s => new Block.Paragraph(Rich(s), ParagraphLook.Small))]),
            new Block.KeepTogether([new Block.Heading(2, words.KitsHeading), .. said.Kits().Select(s => new Block.Paragraph(Rich(s))), Bags(said, language)]),
            .. said.Buying().Append(said.Wire()).Select(s => new Block.Paragraph(Rich(s))),
            .. Points(said.Drawers()),
            new Block.KeepTogether(
            [
                new Block.Heading(2, words.ToolsHeading),
                new Block.Table([new(language.Sentence(words.ToolColumn)), new(language.Sentence(words.ShareColumn), CellAlign.Right) { IsWhole = true }, new(language.Sentence(words.ToolsColumn), CellAlign.Right) { IsWhole = true }],
                    [.. said.Tools().Select(r => (ImmutableArray<TableCell>)[r[0], r[1], RichText.Strong(r[2])])])
                { Name = words.ToolsHeading },
                new Block.Paragraph(words.ToolsNote, ParagraphLook.Small),
            ]),
            new Block.Note(language.Cut.CautionsHeading, [new Block.List(ListKind.Bulleted, [.. said.Cautions().Select(c => (RichText)c)])]),
            new Block.KeepTogether([new Block.Heading(2, words.CostHeading), Cost(said, language), .. Points(said.Gaps())]),
            new Block.Heading(2, words.PriceHeading),
            .. said.Price().Select(s => new Block.Paragraph(Rich(s))),
        ];
        return Page(said.Title, language, [.. blocks]);
    }

    /// <summary>What lies at each place: the kit to check, the tools, and every step to tick off with its cautions.</summary>
    public static PageDocument Participant(ClassPlan plan, Language language)
    {
        var (words, said) = (language.Class, new ClassSentences(plan, language, KeyedText.Mark, KeyedText.Own));
        var title = language.Fill(words.SheetTitle, ("name", KeyedText.Own(plan.Reckoned.Piece.Title)));
        var done = plan.Beforehand.ToHashSet();
        return Page(title, language,
        [
            new Block.Heading(1, title),
            new Block.Paragraph(words.SheetLead, ParagraphLook.Lead),
            new Block.KeepTogether(
            [
                new Block.Heading(2, words.SheetKit),
                new Block.Table([new(language.Sheet.Key, CellAlign.Centre), new(language.Sheet.Bead), new(language.Sentence(words.EachColumn), CellAlign.Right) { IsWhole = true }],
                    [.. said.Bags().Select(r => (ImmutableArray<TableCell>)[r[0].Length > 0 ? RichText.Key(r[0]) : RichText.Empty, Rich(r[1]), RichText.Strong(r[2])])])
                { Name = words.SheetKit },
                new Block.Paragraph(said.WireEach()),
            ]),
            new Block.KeepTogether([new Block.Heading(2, words.SheetTools), new Block.List(ListKind.Bulleted, [.. said.AtAPlace().Select(s => (RichText)s)])]),
            new Block.Note(language.Cut.CautionsHeading, [new Block.List(ListKind.Bulleted, [.. said.Cautions().Select(c => (RichText)c)])]),
            new Block.Heading(2, words.TimetableHeading),
            .. plan.Works.Where(done.Contains).Select(w => new Block.Paragraph(Rich(said.DoneAlready(w)))),
            new Block.List(ListKind.Ticked, [.. plan.Works.Where(w => !done.Contains(w)).Select(w => Rich(said.Check(w) is { Length: > 0 } check ? $"{said.Whole(w)} {check}" : said.Whole(w)))]),
        ]);
    }

    private static Block.Table Timetable(ClassSentences said, Language language)
    {
        var words = language.Class;
        return new Block.Table([new(language.Sentence(words.TimeColumn), CellAlign.Right) { IsWhole = true }, new(language.Sentence(words.MinutesColumn), CellAlign.Right) { IsWhole = true }, new(language.Sentence(words.StepColumn))],
            [.. said.Timetable().Select(s => (ImmutableArray<TableCell>)[RichText.Strong(s.Time), s.Minutes, Rich(s.What)])])
        { Name = words.TimetableHeading };
    }

    private static Block.Table Bags(ClassSentences said, Language language)
    {
        var words = language.Class;
        string[] counts = [words.EachColumn, words.AllColumn, language.Shop.HomeColumn, words.BuyColumn];
        return new Block.Table([new(language.Sheet.Key, CellAlign.Centre), new(language.Sheet.Bead), .. counts.Select(c => new TableColumn(language.Sentence(c), CellAlign.Right) { IsWhole = true })],
            [.. said.Bags().Select(r => (ImmutableArray<TableCell>)[r[0].Length > 0 ? RichText.Key(r[0]) : RichText.Empty, Rich(r[1]), RichText.Strong(r[2]), r[3], r[4], r[5]])])
        { Name = words.KitsHeading };
    }

    private static Block.Table Cost(ClassSentences said, Language language) => new([new(RichText.Empty), new(RichText.Empty, CellAlign.Right) { IsWhole = true }],
        [.. said.Cost().Select(l => (ImmutableArray<TableCell>)[l.IsSum ? RichText.Strong(language.Sentence(l.For)) : language.Sentence(l.For), l.IsSum ? RichText.Strong(l.Amount) : l.Amount])])
    { Name = language.Class.CostHeading };

    private static RichText Rich(string text) => KeyedText.Rich(text);

    private static IEnumerable<Block> Points(IEnumerable<string> sentences)
    {
        RichText[] all = [.. sentences.Select(Rich)];
        if (all.Length > 0) yield return new Block.List(ListKind.Bulleted, [.. all]);
    }

    private static PageDocument Page(string title, Language language, ImmutableArray<Block> blocks) => new()
    {
        Title = KeyedText.Own(title),
        Language = language.Code,
        Words = new PageWords
        {
            PageOf = (page, pages) => language.Fill(language.Sheet.PageOf, ("page", page), ("pages", pages)),
            JoinAt = letter => language.Fill(language.Sheet.JoinAt, ("letter", letter)),
        },
        Blocks = blocks,
    };
}
