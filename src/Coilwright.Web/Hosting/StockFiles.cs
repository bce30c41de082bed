using Coilwright.Core.Stock;
using Coilwright.Documents.Tables;
using Coilwright.Storage.Stock;

namespace Coilwright.Web.Hosting;

/// <summary>The list of stock as a table to keep, as she sees it: what runs low first.</summary>
internal static class StockFiles
{
    /// <summary>Adds the addresses.</summary>
    public static void MapStockFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/stock/stock.csv", async (IStockLedger ledger, CancellationToken cancel) =>
            Results.File(StockTable.Csv(StockLine.LowFirst(await ledger.ListAsync(cancel))), "text/csv; charset=utf-8", "stock.csv"));
        routes.MapGet("/stock/stock.xlsx", async (HttpContext http, IStockLedger ledger, CancellationToken cancel) =>
            Results.File(StockTable.Xlsx(StockLine.LowFirst(await ledger.ListAsync(cancel)), Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Language),
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "stock.xlsx"));
    }
}
