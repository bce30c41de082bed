using System.Text;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.TurnRows;
using Coilwright.Storage;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;
using Coilwright.Wording;

namespace Coilwright.Web.Hosting;

/// <summary>What a piece gives as a file of its own: the piece itself to keep, a small picture of its rows, the photos of its trials and the picture of its cover.</summary>
internal static class PieceFiles
{
    /// <summary>Adds the addresses.</summary>
    public static void MapPieceFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/piece/{id:guid}/file", PieceAsync);
        routes.MapGet("/piece/{id:guid}/rows/{revision:long}.svg", RowsAsync);
        routes.MapGet("/trial/{id:guid}/photo", PhotoAsync);
        routes.MapGet("/piece/{id:guid}/cover/{cover:guid}", CoverAsync);
    }

    private static async Task<IResult> PieceAsync(Guid id, IPieceShelf shelf, CancellationToken cancel) =>
        await shelf.OpenAsync(id, cancel) is { } shelved
            ? Results.File(PieceFile.Write(shelved.Piece), "application/json", FileName(shelved.Piece.Title) + ".piece.json")
            : Results.NotFound();

    // A state never changes, so its picture may be kept for good, in each language by its own address.
    private static async Task<IResult> RowsAsync(Guid id, long revision, string? language, HttpContext http, IPieceShelf shelf, Reckoner reckoner, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, revision, cancel) is not { } piece) return Results.NotFound();
        var reckoned = await Task.Run(() => reckoner.Reckon(new ShelvedPiece(id, revision, piece), piece.Wearer.WristMm), cancel);
        var picture = TurnRowsDrawing.Of(reckoned, new TurnRowsOptions { RowsAlone = true, Close = true, Paper = false, WidthMm = 130, Language = Languages.Find(language ?? "") ?? Languages.English });
        http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Text(SvgCanvas.Write(picture, new SvgOptions { Fluid = true }), "image/svg+xml", Encoding.UTF8);
    }

    // A trial's photo never changes either. It is sent as what its bytes were found to be, and the browser is told to believe that.
    private static async Task<IResult> PhotoAsync(Guid id, HttpContext http, ITrialLog log, CancellationToken cancel)
    {
        if (await log.PhotoAsync(id, cancel) is not { } photo || !TrialRules.Of(photo).IsEmpty) return Results.NotFound();
        http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(photo.Bytes, photo.MediaType);
    }

    // Another cover has another address.
    private static async Task<IResult> CoverAsync(Guid id, Guid cover, HttpContext http, ICovers covers, CancellationToken cancel)
    {
        if (await covers.CoverAsync(id, cancel) is not { } kept || kept.Id != cover || !CoverRules.Of(kept.Photo).IsEmpty) return Results.NotFound();
        http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(kept.Photo.Bytes, kept.Photo.MediaType);
    }

    /// <summary>A title as the name of a file on any system: no path, no signs that some system keeps for itself, not too long.</summary>
    internal static string FileName(string title)
    {
        var name = new StringBuilder();
        foreach (var rune in title.EnumerateRunes())
        {
            var keep = Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '-' or '_' or ',' or '\'' or '(' or ')';
            if (keep) name.Append(rune);
            else if (name.Length > 0 && name[^1] != '-') name.Append('-');
            if (name.Length >= 60) break;
        }
        var trimmed = name.ToString().Trim(' ', '-', ',');
        return trimmed.Length == 0 ? "piece" : trimmed;
    }
}
