using System.Globalization;
using Coilwright.Core.Listings;
using Coilwright.Core.Settle;
using Coilwright.Documents;
using Coilwright.Documents.Patterns;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;
using Coilwright.Web.Papers;

namespace Coilwright.Web.Hosting;

/// <summary>A piece's documents as files: to look at in the page, and to save.</summary>
internal static class PaperFiles
{
    /// <summary>What a document to look at may do: show itself inside a page of ours. It brings its own style and letters, and no script.</summary>
    internal const string PreviewPolicy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; frame-ancestors 'self'; sandbox";

    // What makes a document from a request; null where there is no such piece. With it the piece's title, for the name of what is saved.
    private delegate Task<(string Title, MadePaper Made)?> Making(Guid id, HttpContext http, CancellationToken cancel);

    /// <summary>Adds the addresses.</summary>
    public static void MapPaperFiles(this IEndpointRouteBuilder routes)
    {
        foreach (var kind in DocumentKinds.All.Select(k => k.Name))
        {
            routes.MapPaper($"/piece/{{id:guid}}/{kind}", kind, (id, http, cancel) => MadeAsync(kind, id, http, cancel));
            routes.MapGet($"/piece/{{id:guid}}/{kind}/publish.zip", PackAsync);
        }
        routes.MapPaper("/piece/{id:guid}/pattern/errata", "errata", ErrataAsync);
    }

    private static void MapPaper(this IEndpointRouteBuilder routes, string at, string name, Making making)
    {
        routes.MapGet(at + "/look.html", async (Guid id, HttpContext http, CancellationToken cancel) =>
        {
            if ((await making(id, http, cancel))?.Made.Find(".html") is not { } file) return Results.NotFound();
            http.Response.Headers.ContentSecurityPolicy = PreviewPolicy;
            http.Response.Headers.XFrameOptions = "SAMEORIGIN";
            return Results.Bytes(file.Bytes, "text/html; charset=utf-8");
        });
        foreach (var (ending, type) in (IEnumerable<(string, string)>)[(".pdf", "application/pdf"), (".html", "text/html; charset=utf-8")])
            routes.MapGet($"{at}/{name}{ending}", async (Guid id, HttpContext http, CancellationToken cancel) =>
                await making(id, http, cancel) is var (title, made) && made.Find(ending) is { } file
                    ? Results.Bytes(file.Bytes, type, $"{PieceFiles.FileName(title)}-{name}{ending}")
                    : Results.NotFound());
    }

    // What cannot be made is told on the page that asks for it; here it is simply not there.
    private static async Task<(string Title, MadePaper Made)?> MadeAsync(string kind, Guid id, HttpContext http, CancellationToken cancel)
    {
        if (await Get<IPieceShelf>(http).OpenAsync(id, cancel) is not { } shelved) return null;
        var choice = SheetChoice.Read(http.Request.Query, shelved.Piece.Wearer.WristMm);
        var colourways = await Get<Colourways>(http).NamedAsync(shelved.Piece, choice.Colourways, cancel);
        var (choiceNow, cover) = await CoveredAsync(id, choice, http, cancel);
        return (shelved.Piece.Title, await Get<SheetMaker>(http).OfAsync(DocumentKinds.Sold(colourways, cover).Single(k => k.Name == kind), shelved, choiceNow, cancel));
    }

    // The cover that the piece has now, whichever one the address names: it may be another since.
    private static async Task<(SheetChoice Choice, CoverPicture? Cover)> CoveredAsync(Guid id, SheetChoice choice, HttpContext http, CancellationToken cancel)
    {
        if (choice.Cover is null) return (choice, null);
        var cover = await Get<ICovers>(http).CoverAsync(id, cancel);
        return (choice with { Cover = cover?.Id }, await Get<CoverDesk>(http).PictureAsync(cover, cancel));
    }

    private static async Task<(string Title, MadePaper Made)?> ErrataAsync(Guid id, HttpContext http, CancellationToken cancel)
    {
        if (State(http, "old") is not { } old || State(http, "new") is not { } now || await Get<IPieceShelf>(http).OpenAsync(id, cancel) is not { } shelved) return null;
        var made = await Get<ErrataMaker>(http).OfAsync(id, old, now, SheetChoice.Read(http.Request.Query, shelved.Piece.Wearer.WristMm), cancel);
        return made is null ? null : (shelved.Piece.Title, made);
    }

    /// <summary>Asks for a pack whose model stands as the piece sits; which arm it sits on is asked beside it (<see cref="CoilFiles.ArmOf"/>).</summary>
    public const string ModelAsItSits = "model=sits";

    private static async Task<IResult> PackAsync(Guid id, HttpContext http, IPieceShelf shelf, SheetMaker maker, SettledPieces sits, Colourways colourways, CautionData cautions, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return Results.NotFound();
        var choice = SheetChoice.Read(http.Request.Query, shelved.Piece.Wearer.WristMm);
        var (_, cover) = await CoveredAsync(id, choice, http, cancel);
        Settled? settled = null;
        if (http.Request.Query["model"] == "sits")
        {
            // The page offers it where a rest was found.
            string? Told(string name) => http.Request.Query[name] is [{ } text, ..] ? text : null;
            if (CoilFiles.Read(shelved.Piece.Wearer.WristMm, Told("arm"), Told("aspect"), Told("taper")) is not { } request) return Results.NotFound();
            settled = await Task.Run(() => sits.Settle(shelved, request, cancel), cancel);
            if (settled.Lie is null) return Results.NotFound();
        }
        var made = await maker.PackAsync(shelved, await colourways.NamedAsync(shelved.Piece, choice.Colourways, cancel), cover, settled, choice, cautions, cancel);
        return made.Faults.IsEmpty ? Results.Bytes(made.Zip, "application/zip", PieceFiles.FileName(shelved.Piece.Title) + ".zip") : Results.NotFound();
    }

    private static long? State(HttpContext http, string name) => long.TryParse(http.Request.Query[name], NumberStyles.None, CultureInfo.InvariantCulture, out var state) && state > 0 ? state : null;

    private static T Get<T>(HttpContext http) where T : notnull => http.RequestServices.GetRequiredService<T>();
}
