using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Cutting;
using Coilwright.Core.Pieces;
using Coilwright.Core.Quotes;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Quotes;
using Coilwright.Web.Bench;
using Coilwright.Wording;

namespace Coilwright.Web.Hosting;

/// <summary>The papers of a custom order as files. What is asked for stands in the address, so that it can be asked for again.</summary>
internal static class QuoteFiles
{
    private const int MostSigns = 200;

    /// <summary>What follows the address.</summary>
    public static string Query(QuoteQuestion q) => string.Create(CultureInfo.InvariantCulture,
        $"?piece={q.Piece:D}&wrist={q.Ask.WristMm:R}&count={q.Ask.Count}&on={q.Ask.On:O}&until={q.Ask.Until:O}&deposit={q.Ask.DepositPercent}&rule={Uri.EscapeDataString(q.Ask.Rule ?? "")}&for={Uri.EscapeDataString(q.Ask.For)}")
        + string.Concat(q.Swaps.Select(s => $"&swap={Uri.EscapeDataString($"{s.Bead}={s.With}")}"));

    /// <summary>Adds the addresses.</summary>
    public static void MapQuoteFiles(this IEndpointRouteBuilder routes)
    {
        foreach (var ending in PaperAnswer.Endings)
        {
            routes.MapGet("/quote/quote" + ending, (HttpContext http, QuoteDesk desk, CancellationToken cancel) =>
                FileAsync(http, desk, "quote" + ending, (quoted, language) => quoted.Quote.CanBePromised ? QuoteDocuments.ForTheCustomer(quoted.Said(language), language) : null, cancel));
            routes.MapGet("/quote/workings" + ending, (HttpContext http, QuoteDesk desk, CancellationToken cancel) =>
                FileAsync(http, desk, "workings" + ending, (quoted, language) => QuoteDocuments.Workings(quoted.Quote, quoted.Said(language), language), cancel));
        }
    }

    // What cannot be made is told on the page that asks for it; here it is simply not there.
    private static async Task<IResult> FileAsync(HttpContext http, QuoteDesk desk, string name, Func<Quoted, Wording.Language, PageDocument?> describe, CancellationToken cancel)
    {
        if (Read(http.Request.Query) is not { } question) return Results.NotFound();
        var language = Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Speech;
        if ((await Task.Run(() => desk.MakeAsync(question, cancel), cancel)).Quoted is not { } quoted || describe(quoted, language) is not { } document) return Results.NotFound();
        return await PaperAnswer.OfAsync(http, name, document, cancel);
    }

    // Null when it is no question that the page would ask.
    private static QuoteQuestion? Read(IQueryCollection query)
    {
        if (!Guid.TryParseExact(query["piece"], "D", out var piece) || Day(query["on"].ToString()) is not { } on || query["for"].ToString().Length > MostSigns) return null;
        if (!double.TryParse(query["wrist"], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var wrist) || wrist is not (0 or >= Wearer.LeastWristMm and <= Wearer.MostWristMm)) return null;
        if (!int.TryParse(query["count"], NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > CuttingRules.MostPieces) return null;
        decimal? deposit = null;
        if (query["deposit"].ToString() is { Length: > 0 } percent)
        {
            if (!decimal.TryParse(percent, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var told)) return null;
            deposit = told;
        }
        var swaps = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (var swap in query["swap"])
            if (swap?.Split('=') is [{ Length: > 0 } bead, { Length: > 0 } with]) swaps.Add((bead, with));
            else return null;
        return new QuoteQuestion(piece, new QuoteAsk
        {
            WristMm = wrist,
            On = on,
            Count = count,
            For = query["for"].ToString(),
            Until = Day(query["until"].ToString()),
            DepositPercent = deposit,
            Rule = query["rule"].ToString() is { Length: > 0 } rule ? rule : null,
        })
        { Swaps = swaps.ToImmutable() };
    }

    private static DateOnly? Day(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= 1900 and <= 2999 ? day : null;
}
