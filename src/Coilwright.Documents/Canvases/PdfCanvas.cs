using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Pages.Composition;
using Coilwright.Documents.Typefaces;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Coilwright.Documents.Canvases;

/// <summary>Writes a document as PDF, ready for the printer and for a screen reader.</summary>
/// <remarks>
/// <para>Tagged: headings, paragraphs, lists, tables with heading cells, figures with what they show, in reading order; the foot, fine lines and
/// heading rows that are repeated on a later page are marked as decoration. Language and title are set. Faces are embedded in part.</para>
/// <para>Letters that the typeface lacks are a fault (<see cref="FaultCodes.DocumentGlyphsMissing"/>), one for each text that has some, at most
/// <see cref="MostFaults"/>; then nothing is written.</para>
/// <para>No claim is made that a file keeps to PDF/UA or PDF/A: no checker of those is part of the tests.</para>
/// </remarks>
public sealed class PdfCanvas : IDocumentCanvas
{
    /// <summary>Faults reported at most: enough to see that a whole script is missing.</summary>
    public const int MostFaults = 20;

    /// <inheritdoc/>
    public string Ending => ".pdf";

    /// <inheritdoc/>
    public DrawnDocument Draw(PageDocument document, PageSetup setup) => Draw(document, DocumentTexts.Of(document), () => Composer.Compose(Pictured.For(document, setup), setup), setup.Greyscale);

    /// <summary>Writes pages on which everything has its place already.</summary>
    /// <param name="document">Title, language, author and date; its blocks are not looked at.</param>
    /// <param name="texts">Every text on the pages, with its place.</param>
    /// <param name="compose">Gives the pages, once all texts are known to be printable.</param>
    /// <param name="greyscale">Whether all colours become greys.</param>
    internal static DrawnDocument Draw(PageDocument document, IEnumerable<(string Place, string Text)> texts, Func<ImmutableArray<ComposedPage>> compose, bool greyscale)
    {
        ImmutableArray<Fault> faults = [.. texts.Select(t => PrintableText.Check(t.Text, t.Place)).OfType<Fault>().Take(MostFaults)];
        if (!faults.IsEmpty) return new DrawnDocument(default, faults);

        HouseFontResolver.Use();
        using var pdf = new PdfDocument();
        // Compressed page contents make qpdf --check warn about their ends; these files are small either way.
        pdf.Options.CompressContentStreams = false;
        pdf.Info.Title = document.Title;
        pdf.Info.Creator = "Coilwright";
        if (document.Author is { } author) pdf.Info.Author = author;
        var pages = compose();
        var hand = new PdfHand(pdf, greyscale);
        hand.MakeForms(pages);
        var tags = UAManager.ForDocument(pdf);
        tags.SetDocumentLanguage(document.Language);
        new PdfPageWriter(pdf, tags, hand).Write(pages);

        using var stream = new MemoryStream();
        pdf.Save(stream);
        return new DrawnDocument(RepeatablePdf.Of(stream.ToArray(), document), []);
    }
}
