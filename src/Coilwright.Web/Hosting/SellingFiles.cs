using System.Text;
using Coilwright.Core.Listings;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;
using Coilwright.Wording;

namespace Coilwright.Web.Hosting;

/// <summary>What is told of a piece to buyers, as files to keep.</summary>
internal static class SellingFiles
{
    /// <summary>Adds the addresses.</summary>
    public static void MapSellingFiles(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/selling/listing.txt", async (Guid piece, HttpContext http, IPieceShelf shelf, Reckoner reckoner, CautionData cautions, CancellationToken cancel) =>
        {
            if (await shelf.OpenAsync(piece, cancel) is not { } shelved) return Results.NotFound();
            var preferences = Preferences.Read(http.Request.Cookies[Preferences.CookieName]);
            var reckoned = await Task.Run(() => reckoner.Reckon(shelved, shelved.Piece.Wearer.WristMm), cancel);
            var text = new ListingSentences(Listing.Of(reckoned, cautions.SmallParts), preferences.Speech).Text();
            return Results.File(Encoding.UTF8.GetBytes(text + "\n"), "text/plain; charset=utf-8", PieceFiles.FileName(shelved.Piece.Title) + "-listing.txt");
        });
}
