using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Shopping;
using Coilwright.Documents.Tables;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Hosting;

/// <summary>A shopping list as a table to keep. What is asked for stands in the address, so that it can be asked for again.</summary>
internal static class ShopFiles
{
    /// <summary>The address of a list, without its ending.</summary>
    public static string Query(ShopQuestion question) =>
        $"?pieces={string.Join(',', question.Pieces.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Piece:D}*{p.Count}")))}" +
        string.Create(CultureInfo.InvariantCulture, $"&percent={question.Spares.Usual.Percent}&each={question.Spares.Usual.PerPiece}&stock={(question.UseStock ? 1 : 0)}");

    /// <summary>Adds the addresses.</summary>
    public static void MapShopFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/shop/list.csv", async (HttpContext http, ShopDesk desk, CancellationToken cancel) =>
            await PlanAsync(http, desk, cancel) is { } plan ? Results.File(ShopTable.Csv(plan, Language(http)), "text/csv; charset=utf-8", "shopping.csv") : Results.NotFound());
        routes.MapGet("/shop/list.xlsx", async (HttpContext http, ShopDesk desk, CancellationToken cancel) =>
            await PlanAsync(http, desk, cancel) is { } plan ? Results.File(ShopTable.Xlsx(plan, Language(http)), "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "shopping.xlsx") : Results.NotFound());
    }

    private static Wording.Language Language(HttpContext http) => Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Language;

    private static async Task<ShoppingPlan?> PlanAsync(HttpContext http, ShopDesk desk, CancellationToken cancel) =>
        Read(http.Request.Query) is { } question ? (await Task.Run(() => desk.PlanAsync(question, cancel), cancel)).Shopped?.Plan : null;

    // Null when it is no question that the page would ask.
    internal static ShopQuestion? Read(IQueryCollection query)
    {
        var pieces = ImmutableArray.CreateBuilder<(Guid, int)>();
        foreach (var piece in query["pieces"].ToString().Split(',', StringSplitOptions.RemoveEmptyEntries))
        {
            if (piece.Split('*') is not [var id, var count] || !Guid.TryParseExact(id, "D", out var guid) || Whole(count) is not (>= 1 and <= Basket.Most and var n)) return null;
            pieces.Add((guid, n));
        }
        return Whole(query["percent"].ToString()) is <= 100 and var percent && Whole(query["each"].ToString()) is <= 100 and var each
            ? new ShopQuestion(pieces.ToImmutable(), new Spares(new SparesRule(percent, each), Spares.None.ByBead), query["stock"] == "1") : null;
    }

    private static int? Whole(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
