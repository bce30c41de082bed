using System.Globalization;
using Coilwright.Core.Scenes;
using Coilwright.Core.Settle;
using Coilwright.Documents.Scenes;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Hosting;

/// <summary>A piece in space as a model: to look at in the page, and to keep for other programs.</summary>
internal static class CoilFiles
{
    /// <summary>The file of a piece as it sits.</summary>
    public const string Settled = "as-it-sits.glb";

    /// <summary>The arm that a piece sits on, as its file is asked for it; the words and limits are those of the command line.</summary>
    public static string ArmOf(SettleRequest request) => string.Create(CultureInfo.InvariantCulture, $"arm={ArmPoses.Word(request.Pose)}&aspect={request.Aspect:R}&taper={request.Taper:R}");

    /// <summary>Reads the arm that a file is asked for on; what is not told is as usual. Null where something is not understood.</summary>
    public static SettleRequest? Read(double wristMm, string? arm, string? aspect, string? taper) =>
        (arm is null ? ArmPose.TopUp : ArmPoses.Of(arm)) is { } pose && Share(aspect, SettleRequest.UsualAspect, SettleRequest.LeastAspect, 1) is { } thick && Share(taper, 0, -SettleRequest.MostTaper, SettleRequest.MostTaper) is { } grows
            ? new SettleRequest(wristMm) { Pose = pose, Aspect = thick, Taper = grows }
            : null;

    /// <summary>Adds the addresses.</summary>
    public static void MapCoilFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/piece/{id:guid}/coil/worn.glb", (Guid id, IPieceShelf shelf, Reckoner reckoner, CancellationToken cancel) => ModelAsync(id, CoilPose.Worn, "-worn.glb", shelf, reckoner, cancel));
        routes.MapGet("/piece/{id:guid}/coil/at-rest.glb", (Guid id, IPieceShelf shelf, Reckoner reckoner, CancellationToken cancel) => ModelAsync(id, CoilPose.AtRest, "-at-rest.glb", shelf, reckoner, cancel));
        routes.MapGet("/piece/{id:guid}/coil/" + Settled, SettledModelAsync);
    }

    private static async Task<IResult> SettledModelAsync(Guid id, string? arm, string? aspect, string? taper, IPieceShelf shelf, Reckoner reckoner, SettledPieces sits, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return Results.NotFound();
        var wrist = shelved.Piece.Wearer.WristMm;
        if (Read(wrist, arm, aspect, taper) is not { } request) return Results.NotFound();
        var bytes = await Task.Run(() => sits.Settle(shelved, request, cancel) is { Lie: not null } settled ? CoilModel.Glb(CoilScene.Of(reckoner.Reckon(shelved, wrist), settled)) : null, cancel);
        // The page offers it where a rest was found.
        return bytes is null ? Results.NotFound() : Results.File(bytes, CoilModel.MediaType, PieceFiles.FileName(shelved.Piece.Title) + "-as-it-sits.glb");
    }

    private static double? Share(string? text, double usual, double least, double most) =>
        text is null ? usual : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var share) && share >= least && share <= most ? share : null;

    private static async Task<IResult> ModelAsync(Guid id, CoilPose pose, string ending, IPieceShelf shelf, Reckoner reckoner, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return Results.NotFound();
        var bytes = await Task.Run(() => CoilModel.Glb(CoilScene.Of(reckoner.Reckon(shelved, shelved.Piece.Wearer.WristMm), pose)), cancel);
        return Results.File(bytes, CoilModel.MediaType, PieceFiles.FileName(shelved.Piece.Title) + ending);
    }
}
