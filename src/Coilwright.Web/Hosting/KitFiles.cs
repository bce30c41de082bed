using Coilwright.Core.Kits;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Kits;
using Coilwright.Documents.Pages;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Hosting;

/// <summary>Labels and the pick list of a batch of kits as files. What is asked for stands in the address, so that it can be asked for again.</summary>
internal static class KitFiles
{
    /// <summary>What follows the address.</summary>
    public static string Query(ShopQuestion question, LabelsInUse labels) => $"{ShopFiles.Query(question)}&labels={labels.Grid.Text}&paper={labels.Paper.Name}";

    /// <summary>Adds the addresses.</summary>
    public static void MapKitFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/kit/labels.pdf", (HttpContext http, KitDesk desk, CancellationToken cancel) => FileAsync(http, desk, "labels.pdf", LabelSheet.Pdf, cancel));
        routes.MapGet("/kit/pick-list.pdf", (HttpContext http, KitDesk desk, CancellationToken cancel) =>
            FileAsync(http, desk, "pick-list.pdf", (plan, _, setup, language) => new PdfCanvas().Draw(PickListDocument.Of(plan, language), setup), cancel));
    }

    // What cannot be made is told on the page that asks for it; here it is simply not there.
    private static async Task<IResult> FileAsync(HttpContext http, KitDesk desk, string name, Func<KitPlan, LabelGrid, PageSetup, Wording.Language, DrawnDocument> draw, CancellationToken cancel)
    {
        var query = http.Request.Query;
        if (ShopFiles.Read(query) is not { } question || LabelGrid.Read(query["labels"].ToString()) is not { } grid || LabelsInUse.PaperOf(query["paper"].ToString()) is not { } paper) return Results.NotFound();
        var language = Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Speech;
        if ((await Task.Run(() => desk.PlanAsync(question, cancel), cancel)).Plan is not { } plan) return Results.NotFound();
        var drawn = await Task.Run(() => draw(plan, grid, new PageSetup { Paper = paper }, language), cancel);
        return drawn.Faults.IsEmpty ? Results.Bytes(drawn.Bytes, "application/pdf", name) : Results.NotFound();
    }
}
