using Coilwright.Documents.Pages;
using Coilwright.Documents.Tables;
using Coilwright.Documents.Tray;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Hosting;

/// <summary>The bead tray as a table to keep, by name, and labels for its drawers.</summary>
internal static class TrayFiles
{
    /// <summary>Adds the addresses.</summary>
    public static void MapTrayFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/tray/tray.csv", async (TrayDesk desk, CancellationToken cancel) =>
            Results.File(TrayList.Csv((await desk.NowAsync(cancel)).Index.Kinds), "text/csv; charset=utf-8", "tray.csv"));
        routes.MapGet("/tray/tray.xlsx", async (TrayDesk desk, CancellationToken cancel) =>
            Results.File(TrayList.Xlsx((await desk.NowAsync(cancel)).Index.Kinds), "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "tray.xlsx"));
        // What cannot be made is told on the page that asks for it; here it is simply not there.
        routes.MapGet("/tray/drawers.pdf", async (HttpContext http, TrayDesk desk, KitDesk kits, CancellationToken cancel) =>
        {
            var (labels, kinds) = ((await kits.LabelsAsync(cancel)).Labels, (await desk.NowAsync(cancel)).Index.Kinds);
            var drawn = await Task.Run(() => DrawerLabels.Pdf(kinds, labels.Grid, new PageSetup { Paper = labels.Paper }, Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Speech), cancel);
            return drawn.Faults.IsEmpty ? Results.Bytes(drawn.Bytes, "application/pdf", "drawers.pdf") : Results.NotFound();
        });
    }
}
