using Coilwright.Core.Listings;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Papers;

namespace Coilwright.Web.Hosting;

/// <summary>A piece's pattern sheet as files: to look at in the page, and to save.</summary>
internal static class SheetFiles
{
    /// <summary>What the sheet to look at may do: show itself inside a page of ours. It brings its own style and letters, and no script.</summary>
    internal const string PreviewPolicy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; frame-ancestors 'self'; sandbox";

    /// <summary>Adds the addresses.</summary>
    public static void MapSheetFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/piece/{id:guid}/sheet/look.html", LookAsync);
        routes.MapGet("/piece/{id:guid}/sheet/sheet.pdf", (Guid id, HttpContext http, IPieceShelf shelf, SheetMaker maker, CancellationToken cancel) =>
            SaveAsync(id, "application/pdf", ".pdf", http, shelf, maker, cancel));
        routes.MapGet("/piece/{id:guid}/sheet/sheet.html", (Guid id, HttpContext http, IPieceShelf shelf, SheetMaker maker, CancellationToken cancel) =>
            SaveAsync(id, "text/html; charset=utf-8", ".html", http, shelf, maker, cancel));
        routes.MapGet("/piece/{id:guid}/sheet/publish.zip", PackAsync);
    }

    private static async Task<IResult> LookAsync(Guid id, HttpContext http, IPieceShelf shelf, SheetMaker maker, CancellationToken cancel)
    {
        if (await MadeAsync(id, ".html", http, shelf, maker, cancel) is not var (_, bytes)) return Results.NotFound();
        http.Response.Headers.ContentSecurityPolicy = PreviewPolicy;
        http.Response.Headers.XFrameOptions = "SAMEORIGIN";
        return Results.Bytes(bytes, "text/html; charset=utf-8");
    }

    private static async Task<IResult> SaveAsync(Guid id, string type, string ending, HttpContext http, IPieceShelf shelf, SheetMaker maker, CancellationToken cancel) =>
        await MadeAsync(id, ending, http, shelf, maker, cancel) is var (title, bytes)
            ? Results.Bytes(bytes, type, PieceFiles.FileName(title) + "-sheet" + ending)
            : Results.NotFound();

    private static async Task<IResult> PackAsync(Guid id, HttpContext http, IPieceShelf shelf, SheetMaker maker, CautionData cautions, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return Results.NotFound();
        var made = await maker.PackAsync(shelved, SheetChoice.Read(http.Request.Query, shelved.Piece.Wearer.WristMm), cautions, cancel);
        return made.Faults.IsEmpty ? Results.Bytes(made.Zip, "application/zip", PieceFiles.FileName(shelved.Piece.Title) + ".zip") : Results.NotFound();
    }

    // What cannot be made is told on the page that asks for it; here it is simply not there.
    private static async Task<(string Title, ReadOnlyMemory<byte> Bytes)?> MadeAsync(Guid id, string ending, HttpContext http, IPieceShelf shelf, SheetMaker maker,
        CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return null;
        var made = await maker.OfAsync(shelved, SheetChoice.Read(http.Request.Query, shelved.Piece.Wearer.WristMm), cancel);
        var file = made.Files.FirstOrDefault(f => f.Name.EndsWith(ending, StringComparison.Ordinal) && f.Faults.IsEmpty);
        return file is null ? null : (shelved.Piece.Title, file.Bytes);
    }
}
