using System.Collections.Immutable;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Pages;

/// <summary>One thing that stands in a document. A closed list: each is a nested record.</summary>
public abstract record Block
{
    private Block() { }

    /// <summary>A heading. Stays with what follows it.</summary>
    /// <param name="Level">1 for the document's title, 2 for a part, 3 for a part of that.</param>
    /// <param name="Text">Its words.</param>
    public sealed record Heading(int Level, string Text) : Block;

    /// <summary>A paragraph.</summary>
    /// <param name="Text">Its words.</param>
    /// <param name="Look">How it is set.</param>
    public sealed record Paragraph(RichText Text, ParagraphLook Look = ParagraphLook.Body) : Block
    {
        /// <summary>Whether it stays with what follows it: a sentence that leads up to a table.</summary>
        public bool StaysWithNext { get; init; }
    }

    /// <summary>Points in a row.</summary>
    /// <param name="Kind">What stands before each.</param>
    /// <param name="Items">The points.</param>
    public sealed record List(ListKind Kind, ImmutableArray<RichText> Items) : Block
    {
        /// <summary>Number of the first item of a numbered list.</summary>
        public int First { get; init; } = 1;

        /// <summary>Whether its end stays with what follows it. It may still be parted between its points.</summary>
        public bool StaysWithNext { get; init; }
    }

    /// <summary>A table. Its heading row, if any column has a heading, is repeated on every page that it runs on to; rows are kept whole where a page can hold them.</summary>
    /// <param name="Columns">Its columns.</param>
    /// <param name="Rows">Its rows; each has as many cells as there are columns.</param>
    public sealed record Table(ImmutableArray<TableColumn> Columns, ImmutableArray<ImmutableArray<TableCell>> Rows) : Block
    {
        /// <summary>What it lists, for someone who hears it; also its name in HTML.</summary>
        public required string Name { get; init; }

        /// <summary>Whether the first cell of each row heads its row.</summary>
        public bool RowsHaveHeads { get; init; }
    }

    /// <summary>A picture, at its own size or as wide as there is room. Never larger than its page.</summary>
    /// <param name="Picture">The picture.</param>
    /// <param name="Alt">What it shows, for someone who cannot see it; not empty.</param>
    public sealed record Figure(Picture Picture, string Alt) : Block
    {
        /// <summary>Words beneath it; empty for none.</summary>
        public RichText Caption { get; init; } = RichText.Empty;

        /// <summary>Whether the caption stands at the left of the picture's own foot, which is white there as high as a line of small text: else beneath the picture.</summary>
        public bool CaptionIsInside { get; init; }

        /// <summary>Whether it is drawn as wide as there is room.</summary>
        public bool FullWidth { get; init; }

        /// <summary>Whether it stands in the middle of its room, where it is narrower.</summary>
        public bool IsCentred { get; init; }

        /// <summary>Whether it is as narrow as any screen: a view of the whole, with no letters that must be read. Others are scrolled where they would become too small.</summary>
        public bool MayShrink { get; init; }
    }

    /// <summary>A picture that is printed at its true size, whatever the paper: never scaled, cut into lengths with marked joints if it is too long.</summary>
    /// <param name="Picture">The picture; its millimetres are millimetres of paper.</param>
    /// <param name="Alt">What it shows, for someone who cannot see it; not empty.</param>
    public sealed record Strip(Picture Picture, string Alt) : Block
    {
        /// <summary>Words above it; empty for none.</summary>
        public RichText Caption { get; init; } = RichText.Empty;
    }

    /// <summary>Text that runs through columns of equal width, about equally long.</summary>
    /// <param name="Count">How many, from 1.</param>
    /// <param name="Blocks">What runs through them.</param>
    public sealed record InColumns(int Count, ImmutableArray<Block> Blocks) : Block;

    /// <summary>Things side by side, kept on one page; one after the other where they are too tall for a page or the screen is narrow.</summary>
    /// <param name="Cells">The things, from left to right.</param>
    public sealed record Beside(ImmutableArray<BesideCell> Cells) : Block;

    /// <summary>Things that are not parted by a page's end, as far as a page can hold them.</summary>
    /// <param name="Blocks">The things.</param>
    public sealed record KeepTogether(ImmutableArray<Block> Blocks) : Block;

    /// <summary>A box for what must not be missed.</summary>
    /// <param name="Title">Its heading words; empty for none.</param>
    /// <param name="Blocks">What stands in it.</param>
    public sealed record Note(string Title, ImmutableArray<Block> Blocks) : Block;

    /// <summary>Empty room, in lines of running text.</summary>
    /// <param name="Lines">How much.</param>
    public sealed record Spacer(double Lines) : Block;

    /// <summary>A fine line across.</summary>
    public sealed record Rule : Block;

    /// <summary>A new page. Counts only where it does not stand inside another block.</summary>
    /// <param name="Turned">Whether the pages from here on lie on their long side.</param>
    public sealed record NewPage(bool Turned = false) : Block;
}

/// <summary>How a paragraph is set.</summary>
public enum ParagraphLook
{
    /// <summary>Running text.</summary>
    Body,

    /// <summary>A larger opening line under the title.</summary>
    Lead,

    /// <summary>Small and quiet.</summary>
    Small,
}

/// <summary>What stands before the items of a list.</summary>
public enum ListKind
{
    /// <summary>A dot.</summary>
    Bulleted,

    /// <summary>A number.</summary>
    Numbered,

    /// <summary>A box to tick off at the bench.</summary>
    Ticked,
}

/// <summary>Where text stands in its cell.</summary>
public enum CellAlign
{
    /// <summary>Along the left edge, for words.</summary>
    Left,

    /// <summary>Along the right edge, for numbers.</summary>
    Right,

    /// <summary>In the middle, for letters and marks.</summary>
    Centre,
}

/// <summary>A column of a table.</summary>
/// <param name="Head">Its heading; may be empty.</param>
/// <param name="Align">Where its texts stand.</param>
public sealed record TableColumn(RichText Head, CellAlign Align = CellAlign.Left)
{
    /// <summary>Whether its texts are parted only when nothing else can give way: sizes, amounts.</summary>
    public bool IsWhole { get; init; }

    /// <summary>On a screen too narrow for every column this one gives way, and its texts stand behind those of another; null where it stays. Paper keeps it.</summary>
    public FoldedColumn? Folded { get; init; }
}

/// <summary>Where the texts of a column go that gives way on a narrow screen.</summary>
/// <param name="Into">The column that takes them, from 0: one that stays.</param>
/// <param name="Join">What stands before each, as ", ".</param>
public sealed record FoldedColumn(int Into, string Join);

/// <summary>A cell of a table; may be empty.</summary>
/// <param name="Text">Its words.</param>
public sealed record TableCell(RichText Text)
{
    /// <summary>A small picture before the words, at its own size; null for none.</summary>
    public Picture? Picture { get; init; }

    /// <summary>Whether the picture is at its own size in large print too.</summary>
    public bool PictureIsTrueSize { get; init; }

    /// <summary>What the picture shows; null when the words say it already.</summary>
    public string? PictureAlt { get; init; }

    /// <summary>A plain string as a cell.</summary>
    public static implicit operator TableCell(string text) => new((RichText)text);

    /// <summary>Text as a cell.</summary>
    public static implicit operator TableCell(RichText text) => new(text);

    /// <summary>A plain string as a cell.</summary>
    public static TableCell FromString(string text) => text;

    /// <summary>Text as a cell.</summary>
    public static TableCell FromRichText(RichText text) => text;
}

/// <summary>One of several things side by side.</summary>
/// <param name="Share">Its share of the width, against the others' shares.</param>
/// <param name="Blocks">What stands in it.</param>
public sealed record BesideCell(double Share, ImmutableArray<Block> Blocks);
