using Coilwright.Core.Scenes;
using Coilwright.Core.Settle;
using Coilwright.Documents.Scenes;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Hosting;

/// <summary>A piece in space as a model: to look at in the page, and to keep for other programs.</summary>
internal static class CoilFiles
{
    /// <summary>Adds the addresses.</summary>
    public static void MapCoilFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/piece/{id:guid}/coil/worn.glb", (Guid id, IPieceShelf shelf, Reckoner reckoner, CancellationToken cancel) => ModelAsync(id, CoilPose.Worn, "-worn.glb", shelf, reckoner, cancel));
        routes.MapGet("/piece/{id:guid}/coil/at-rest.glb", (Guid id, IPieceShelf shelf, Reckoner reckoner, CancellationToken cancel) => ModelAsync(id, CoilPose.AtRest, "-at-rest.glb", shelf, reckoner, cancel));
        routes.MapGet("/piece/{id:guid}/coil/as-it-sits.glb", SettledModelAsync);
    }

    private static async Task<IResult> SettledModelAsync(Guid id, IPieceShelf shelf, Reckoner reckoner, SettledPieces sits, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return Results.NotFound();
        var wrist = shelved.Piece.Wearer.WristMm;
        var bytes = await Task.Run(() => sits.Settle(shelved, new SettleRequest(wrist), cancel) is { Lie: not null } settled ? CoilModel.Glb(CoilScene.Of(reckoner.Reckon(shelved, wrist), settled)) : null, cancel);
        // The page offers it where a rest was found.
        return bytes is null ? Results.NotFound() : Results.File(bytes, CoilModel.MediaType, PieceFiles.FileName(shelved.Piece.Title) + "-as-it-sits.glb");
    }

    private static async Task<IResult> ModelAsync(Guid id, CoilPose pose, string ending, IPieceShelf shelf, Reckoner reckoner, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return Results.NotFound();
        var bytes = await Task.Run(() => CoilModel.Glb(CoilScene.Of(reckoner.Reckon(shelved, shelved.Piece.Wearer.WristMm), pose)), cancel);
        return Results.File(bytes, CoilModel.MediaType, PieceFiles.FileName(shelved.Piece.Title) + ending);
    }
}
