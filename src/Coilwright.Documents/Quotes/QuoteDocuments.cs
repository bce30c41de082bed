using System.Collections.Immutable;
using Coilwright.Core.Pricing;
using Coilwright.Core.Quotes;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Wording;

namespace Coilwright.Documents.Quotes;

/// <summary>The papers of a custom order: the quote, which goes to the customer, and its workings, which do not.</summary>
public static class QuoteDocuments
{
    /// <summary>What goes to the customer. Nothing in it tells what the piece costs the maker.</summary>
    public static PageDocument ForTheCustomer(QuoteSentences said, Language language) => Page(said.Title, language,
    [
        .. said.ForTheCustomer().SelectMany((part, i) => (Block[])
        [
            new Block.Heading(i == 0 ? 1 : 2, KeyedText.Own(part.Heading)),
            .. part.IsList ? [new Block.List(ListKind.Bulleted, [.. part.Lines.Select(Own)])]
                : part.Lines.Select(l => (Block)new Block.Paragraph(Own(l), i == 0 ? ParagraphLook.Lead : ParagraphLook.Body)),
        ]),
    ]);

    /// <summary>What every figure of the quote comes from.</summary>
    public static PageDocument Workings(Quote quote, QuoteSentences said, Language language)
    {
        var words = language.Quote;
        List<Block> blocks =
        [
            new Block.Heading(1, KeyedText.Own($"{words.WorkingsTitle}: {quote.Size.Piece.Title}")),
            new Block.Paragraph(words.WorkingsLead, ParagraphLook.Lead),
            .. Lines(said.Head()),
            new Block.Note(words.ReasonsHeading, [new Block.List(ListKind.Bulleted, [.. said.Reasons().Select(Own)])]),
            new Block.Heading(2, words.SizeHeading),
            .. Lines(said.Size()),
            new Block.Heading(2, words.BeadsHeading),
            Table(words.BeadsHeading, [language.Shop.BeadColumn, language.Shop.UseColumn, language.Shop.SpareColumn, language.Shop.HomeColumn, language.Shop.MissingColumn, words.HereColumn], said.Beads(), language),
            .. Points(said.From()),
            .. Lines(said.Buying()),
            .. Points(said.StandIns(), words.StandInsHeading),
            new Block.Heading(2, words.WireHeading),
            .. Lines(said.Wire()),
            new Block.Heading(2, words.HowHeading),
            .. Lines(said.How()),
        ];
        var prices = new PriceSentences(quote.Prices, language);
        blocks.Add(new Block.Heading(3, prices.HeadingOf(Sold.Piece)));
        blocks.Add(new Block.Table([new(RichText.Empty), new(RichText.Empty), new(RichText.Empty, CellAlign.Right) { IsWhole = true }],
            [.. prices.Lines(quote.Prices.Products[0]).Select(r => (ImmutableArray<TableCell>)[Own(r[0]), Own(r[1]), r[2]])])
        { Name = prices.HeadingOf(Sold.Piece) });
        blocks.AddRange([new Block.Heading(2, words.TimeHeading), .. Points(said.Steps()), new Block.Paragraph(RichText.Strong(said.Time()))]);
        return Page($"{words.WorkingsTitle}: {quote.Size.Piece.Title}", language, [.. blocks]);
    }

    private static RichText Own(string text) => KeyedText.Own(text);

    private static IEnumerable<Block> Lines(IEnumerable<string> sentences) => sentences.Select(s => new Block.Paragraph(Own(s)));

    private static IEnumerable<Block> Points(IEnumerable<string> sentences, string? heading = null)
    {
        RichText[] all = [.. sentences.Select(Own)];
        if (all.Length == 0) yield break;
        if (heading is not null) yield return new Block.Heading(3, heading);
        yield return new Block.List(ListKind.Bulleted, [.. all]);
    }

    // The first column and the last are words, the others counts.
    private static Block.Table Table(string name, string[] columns, IEnumerable<string[]> rows, Language language) => new(
        [.. columns.Select((c, i) => new TableColumn(language.Sentence(c), i == 0 ? CellAlign.Left : CellAlign.Right) { IsWhole = i > 0 })],
        [.. rows.Select(r => (ImmutableArray<TableCell>)[.. r.Select(c => new TableCell(Own(c)))])])
    { Name = name, RowsHaveHeads = true };

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
