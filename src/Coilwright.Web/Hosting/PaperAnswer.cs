using System.Collections.Immutable;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Pages;

namespace Coilwright.Web.Hosting;

/// <summary>A document given as a file: on which canvas its name tells, on which paper the address.</summary>
internal static class PaperAnswer
{
    private static readonly ImmutableArray<(IDocumentCanvas Canvas, string Type)> Canvases = [(new PdfCanvas(), "application/pdf"), (new HtmlCanvas(), "text/html; charset=utf-8")];

    /// <summary>The endings that a document's name can have.</summary>
    public static ImmutableArray<string> Endings { get; } = [.. Canvases.Select(c => c.Canvas.Ending)];

    /// <summary>Draws it.</summary>
    /// <param name="http">Who asks.</param>
    /// <param name="name">The file's name, with one of <see cref="Endings"/>.</param>
    /// <param name="document">The document.</param>
    /// <param name="cancel">Gives up before it is drawn.</param>
    public static async Task<IResult> OfAsync(HttpContext http, string name, PageDocument document, CancellationToken cancel)
    {
        var (canvas, type) = Canvases.First(c => name.EndsWith(c.Canvas.Ending, StringComparison.Ordinal));
        var setup = new PageSetup { Paper = string.Equals(http.Request.Query["paper"], Paper.Letter.Name, StringComparison.OrdinalIgnoreCase) ? Paper.Letter : Paper.A4 };
        var drawn = await Task.Run(() => canvas.Draw(document, setup), cancel);
        return drawn.Faults.IsEmpty ? Results.Bytes(drawn.Bytes, type, name) : Results.NotFound();
    }
}
