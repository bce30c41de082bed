using System.Globalization;
using Coilwright.Core.Made;
using Coilwright.Documents.Tables;
using Coilwright.Storage.Made;

namespace Coilwright.Web.Hosting;

/// <summary>What came in over a span of days, as a table to keep. Names only where she asked for them.</summary>
internal static class MadeFiles
{
    /// <summary>Adds the addresses. A day that is none is no bound.</summary>
    public static void MapMadeFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/made/accounts.csv", async (IMadeBook book, string? from, string? to, bool? names, CancellationToken cancel) =>
            Results.File(AccountsTable.Csv(await OfAsync(book, from, to, cancel), names ?? false), "text/csv; charset=utf-8", "accounts.csv"));
        routes.MapGet("/made/accounts.xlsx", async (HttpContext http, IMadeBook book, string? from, string? to, bool? names, CancellationToken cancel) =>
            Results.File(AccountsTable.Xlsx(await OfAsync(book, from, to, cancel), names ?? false, Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Language),
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "accounts.xlsx"));
    }

    private static async Task<Accounts> OfAsync(IMadeBook book, string? from, string? to, CancellationToken cancel) => Accounts.Of(await book.ListAsync(cancel), Day(from), Day(to));

    private static DateOnly? Day(string? text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
