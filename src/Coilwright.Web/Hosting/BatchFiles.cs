using System.Globalization;
using Coilwright.Core.Batches;
using Coilwright.Core.Cutting;
using Coilwright.Documents.Batches;
using Coilwright.Documents.Pages;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Hosting;

/// <summary>The papers of several alike as files. What is asked for stands in the address, so that it can be asked for again.</summary>
internal static class BatchFiles
{
    /// <summary>What follows the address.</summary>
    public static string Query(BatchQuestion q) => string.Create(CultureInfo.InvariantCulture, $"?piece={q.Piece:D}&count={q.Count}&wells={q.Tray.Wells}&rounds={q.Tray.Rounds}");

    /// <summary>Adds the addresses.</summary>
    public static void MapBatchFiles(this IEndpointRouteBuilder routes)
    {
        foreach (var ending in PaperAnswer.Endings)
        {
            routes.MapGet("/batch/batch" + ending, (HttpContext http, BatchDesk desk, CancellationToken cancel) =>
                FileAsync(http, desk, "batch" + ending, (plan, wire, language) => BatchDocuments.Plan(plan, wire, language), cancel));
            routes.MapGet("/batch/tick-sheet" + ending, (HttpContext http, BatchDesk desk, CancellationToken cancel) =>
                FileAsync(http, desk, "tick-sheet" + ending, (plan, _, language) => BatchDocuments.TickSheet(plan.Reckoned, language), cancel));
        }
    }

    // What cannot be made is told on the page that asks for it; here it is simply not there.
    private static async Task<IResult> FileAsync(HttpContext http, BatchDesk desk, string name, Func<BatchPlan, CuttingPlan?, Wording.Language, PageDocument> describe, CancellationToken cancel)
    {
        var query = http.Request.Query;
        if (!Guid.TryParseExact(query["piece"], "D", out var piece) || Whole(query["count"], Basket.Most) is not { } count || Whole(query["wells"], CountingTray.Most) is not { } wells
            || Whole(query["rounds"], CountingTray.Most) is not { } rounds) return Results.NotFound();
        var language = Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Speech;
        var reply = await Task.Run(() => desk.PlanAsync(new BatchQuestion(piece, count, new CountingTray(wells, rounds)), cancel), cancel);
        return reply.Plan is { } plan ? await PaperAnswer.OfAsync(http, name, describe(plan, reply.Wire, language), cancel) : Results.NotFound();
    }

    private static int? Whole(string? text, int most) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= most ? number : null;
}
