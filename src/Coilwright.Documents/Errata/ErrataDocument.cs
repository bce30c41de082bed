using System.Collections.Immutable;
using Coilwright.Core.Making;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Wording;

namespace Coilwright.Documents.Errata;

/// <summary>The corrections to a pattern, to print and to send: what is wrong in the earlier version, and what stands in the new one.</summary>
public static class ErrataDocument
{
    /// <summary>Describes the note. Where nothing differs it says so.</summary>
    public static PageDocument Of(PatternChanges changes, Language language)
    {
        var (words, said) = (language.Errata, new ErrataSentences(changes, language, KeyedText.Mark, KeyedText.Own));
        return new PageDocument
        {
            Title = said.Title,
            Language = language.Code,
            Words = new PageWords
            {
                PageOf = (page, pages) => language.Fill(language.Sheet.PageOf, ("page", page), ("pages", pages)),
                JoinAt = letter => language.Fill(language.Sheet.JoinAt, ("letter", letter)),
            },
            Blocks =
            [
                new Block.Heading(1, said.Title),
                new Block.Paragraph(said.IsEmpty ? words.Nothing : words.Lead, ParagraphLook.Lead),
                .. said.IsRenamed ? [new Block.Paragraph(said.Renamed)] : Array.Empty<Block>(),
                .. MindFirst(said, words),
                .. Table(words.Beads, language.Sheet.Bead, said.Kinds(), words),
                .. Table(words.Figures, words.FigureColumn, said.Figures(), words),
                .. Table(words.Steps, words.StepColumn, said.Steps(), words),
                .. Table(words.Checks, words.StepColumn, said.Checks(), words, words.ChecksNote),
                .. Settled(said, words),
            ],
        };
    }

    private static IEnumerable<Block> MindFirst(ErrataSentences said, ErrataWords words)
    {
        RichText[] all = [.. said.MindFirst().Select(KeyedText.Rich)];
        if (all.Length > 0) yield return new Block.Note(words.MindFirst, [new Block.List(ListKind.Bulleted, [.. all])]);
    }

    private static IEnumerable<Block> Table(string heading, string what, IEnumerable<Correction> corrections, ErrataWords words, string? note = null)
    {
        ImmutableArray<ImmutableArray<TableCell>> rows = [.. corrections.Select(c => (ImmutableArray<TableCell>)[c.What, KeyedText.Rich(c.Old), KeyedText.Rich(c.New)])];
        if (rows.IsEmpty) yield break;
        yield return new Block.Heading(2, heading);
        if (note is not null) yield return new Block.Paragraph(note) { StaysWithNext = true };
        yield return new Block.Table([new(what), new(words.OldColumn), new(words.NewColumn)], rows) { Name = heading, RowsHaveHeads = true };
    }

    private static IEnumerable<Block> Settled(ErrataSentences said, ErrataWords words)
    {
        RichText[] all = [.. said.Settled().Select(s => (RichText)s)];
        if (all.Length == 0) yield break;
        yield return new Block.Heading(2, words.Settled);
        yield return new Block.List(ListKind.Bulleted, [.. all]);
    }
}
