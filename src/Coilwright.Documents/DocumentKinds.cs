using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Patterns;
using Coilwright.Documents.PatternSheet;
using Coilwright.Wording;

namespace Coilwright.Documents;

/// <summary>A document that a piece can be printed as.</summary>
/// <param name="Name">Its name in file names, as <c>sheet</c>.</param>
/// <param name="Describe">Describes it from the readings, and from the sizes of the design where they were made.</param>
/// <param name="Drawings">Its drawings that are of use by themselves, by name.</param>
public sealed record DocumentKind(string Name, Func<Reckoned, Sizes?, PageSetup, Language, PageDocument> Describe,
    Func<Reckoned, Language, IEnumerable<(string Name, Picture Picture)>> Drawings);

/// <summary>Every document there is. A new one is a folder and a line here.</summary>
public static class DocumentKinds
{
    /// <summary>The pattern sheet.</summary>
    public static DocumentKind PatternSheet { get; } = new("sheet", PatternSheetDocument.Of, PatternSheetDocument.Drawings);

    /// <summary>The written pattern. Its drawings are those of the sheet, and made there.</summary>
    /// <param name="colourways">The same order in other colours.</param>
    public static DocumentKind Pattern(params ImmutableArray<Piece> colourways) => Pattern(colourways, null);

    /// <summary>The written pattern with a picture on its cover.</summary>
    /// <param name="colourways">The same order in other colours.</param>
    /// <param name="cover">The picture; null has the coil drawn there.</param>
    public static DocumentKind Pattern(ImmutableArray<Piece> colourways, CoverPicture? cover) =>
        new("pattern", (reckoned, sizes, setup, language) => PatternDocument.Of(reckoned, sizes, colourways, setup, language, cover), (_, _) => []);

    /// <summary>Those that are sold with a piece, in the order in which they are told.</summary>
    public static ImmutableArray<DocumentKind> All { get; } = Sold([]);

    /// <summary>The same, with the same order in other colours in the pattern.</summary>
    public static ImmutableArray<DocumentKind> Sold(ImmutableArray<Piece> colourways, CoverPicture? cover = null) => [Pattern(colourways, cover), PatternSheet];
}

/// <summary>One file of a document.</summary>
/// <param name="Name">What its name ends in, as <c>sheet.pdf</c>.</param>
/// <param name="Bytes">Its contents; empty when there are faults.</param>
/// <param name="Faults">Why it could not be made; empty when it was.</param>
public sealed record DocumentFile(string Name, ReadOnlyMemory<byte> Bytes, ImmutableArray<Fault> Faults);

/// <summary>A document on every canvas, with its drawings.</summary>
public static class DocumentFiles
{
    private static readonly ImmutableArray<IDocumentCanvas> Canvases = [new PdfCanvas(), new HtmlCanvas()];

    /// <summary>The files of a document: one for each canvas, then its drawings as SVG. The same piece, sizes and setup give the same bytes.</summary>
    public static IEnumerable<DocumentFile> Of(DocumentKind kind, Reckoned reckoned, PageSetup setup, Language language, Sizes? sizes = null) =>
        Pages(kind, reckoned, setup, language, sizes).Concat(Drawings(kind, reckoned, setup, language));

    /// <summary>The document itself, one file for each canvas.</summary>
    public static IEnumerable<DocumentFile> Pages(DocumentKind kind, Reckoned reckoned, PageSetup setup, Language language, Sizes? sizes = null) =>
        Of(kind.Name, kind.Describe(reckoned, sizes, setup, language), setup);

    /// <summary>A document that is described already, one file for each canvas.</summary>
    /// <param name="name">What the files' names begin with.</param>
    /// <param name="document">The document.</param>
    /// <param name="setup">How it is put on paper.</param>
    public static IEnumerable<DocumentFile> Of(string name, PageDocument document, PageSetup setup) => Canvases.Select(canvas =>
    {
        var drawn = canvas.Draw(document, setup);
        return new DocumentFile(name + canvas.Ending, drawn.Bytes, drawn.Faults);
    });

    /// <summary>Its drawings as SVG; they do not need the sizes.</summary>
    public static IEnumerable<DocumentFile> Drawings(DocumentKind kind, Reckoned reckoned, PageSetup setup, Language language)
    {
        foreach (var (name, picture) in kind.Drawings(reckoned, language))
        {
            var spared = setup.InkSaving ? picture.Spared() : picture;
            yield return new DocumentFile(name + ".svg", Encoding.UTF8.GetBytes(SvgCanvas.Write(setup.Greyscale ? spared.Greyed() : spared)), []);
        }
    }
}
