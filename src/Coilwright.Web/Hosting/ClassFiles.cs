using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Classes;
using Coilwright.Core.Making;
using Coilwright.Core.Shopping;
using Coilwright.Documents.Classes;
using Coilwright.Documents.Pages;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Hosting;

/// <summary>The papers of a class as files. What is asked for stands in the address, so that it can be asked for again.</summary>
internal static class ClassFiles
{
    /// <summary>What follows the address.</summary>
    public static string Query(ClassQuestion q)
    {
        var ask = q.Ask;
        (string Name, string Value)[] all =
        [
            ("piece", q.Piece.ToString("D")), ("n", Text(ask.Participants)), ("kits", Text(ask.SpareKits)), ("beads", Text(q.SpareBeads)), ("factor", Text(ask.Factor)), ("start", Time(ask.Start)), ("end", Time(ask.End)),
            ("breaks", string.Join(',', ask.Breaks.Select(b => $"{Time(b.At)}+{Text(b.Minutes)}"))), ("places", Text(ask.Places)), ("share", string.Join(',', ask.Shared.Select(s => $"{s.Key}={Text(s.Value)}"))),
            ("minutes", string.Join(',', ask.Minutes.Select(m => $"{m.Key}={Text(m.Value)}"))), ("around", Text(ask.AroundMinutes)), ("room", Text(ask.Room)), ("rule", ask.Rule ?? ""),
            .. ask.Beforehand.Select(b => ("before", b)),
        ];
        return "?" + string.Join('&', all.Where(a => a.Value.Length > 0).Select(a => $"{a.Name}={Uri.EscapeDataString(a.Value)}"));
    }

    /// <summary>Adds the addresses.</summary>
    public static void MapClassFiles(this IEndpointRouteBuilder routes)
    {
        foreach (var ending in PaperAnswer.Endings)
        {
            routes.MapGet("/class/class" + ending, (HttpContext http, ClassDesk desk, CancellationToken cancel) => FileAsync(http, desk, "class" + ending, ClassDocuments.Teacher, cancel));
            routes.MapGet("/class/participant" + ending, (HttpContext http, ClassDesk desk, CancellationToken cancel) => FileAsync(http, desk, "participant" + ending, ClassDocuments.Participant, cancel));
        }
    }

    // What cannot be made is told on the page that asks for it; here it is simply not there.
    private static async Task<IResult> FileAsync(HttpContext http, ClassDesk desk, string name, Func<ClassPlan, Wording.Language, PageDocument> describe, CancellationToken cancel)
    {
        if (Read(http.Request.Query) is not { } question) return Results.NotFound();
        var language = Preferences.Read(http.Request.Cookies[Preferences.CookieName]).Speech;
        if ((await Task.Run(() => desk.PlanAsync(question, cancel), cancel)).Plan is not { } plan) return Results.NotFound();
        return await PaperAnswer.OfAsync(http, name, describe(plan, language), cancel);
    }

    // Null when it is no question that the page would ask.
    internal static ClassQuestion? Read(IQueryCollection query)
    {
        var sound = true;
        var ask = new ClassAsk
        {
            Participants = Whole("n", 1, ClassAsk.MostParticipants) ?? 0,
            SpareKits = Whole("kits", 0, ClassAsk.MostParticipants) ?? 0,
            Factor = Number("factor", 1, ClassAsk.MostFactor),
            Start = TimeOf(query["start"].ToString()),
            End = TimeOf(query["end"].ToString()),
            Breaks = [.. Pairs("breaks", '+').Select(p => TimeOf(p.First) is { } at && Take(p.Second, 1, ClassAsk.MostMinutes) is { } minutes ? new ClassBreak(at, (int)minutes) : null).OfType<ClassBreak>()],
            Places = Whole("places", 1, ClassAsk.MostParticipants),
            Shared = Named<BenchTool>("share", 2, ClassAsk.MostParticipants).ToImmutableSortedDictionary(s => s.Key, s => (int)s.Value),
            Minutes = Named<StepAction>("minutes", 0.01m, ClassAsk.MostMinutes).ToImmutableSortedDictionary(s => s.Key, s => s.Value),
            AroundMinutes = Number("around", 0, ClassAsk.MostMinutes) ?? 0,
            Room = Number("room", 0, BuyingList.MostMoney) ?? 0,
            Rule = query["rule"].ToString() is { Length: > 0 } rule ? rule : null,
            Beforehand = [.. query["before"].OfType<string>()],
        };
        var beads = Whole("beads", 0, SparesRule.MostPerPiece) ?? 0;
        return Guid.TryParseExact(query["piece"], "D", out var piece) && ask.Participants > 0 && sound ? new ClassQuestion(piece, ask, beads) : null;

        int? Whole(string name, decimal least, decimal most) => Number(name, least, most) is { } number ? (int)number : null;

        decimal? Number(string name, decimal least, decimal most) => query[name].ToString() is { Length: > 0 } text ? Take(text, least, most) : null;

        decimal? Take(string text, decimal least, decimal most)
        {
            if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most) return number;
            sound = false;
            return null;
        }

        IEnumerable<(string First, string Second)> Pairs(string name, char between)
        {
            foreach (var text in query[name].ToString().Split(',', StringSplitOptions.RemoveEmptyEntries))
                if (text.Split(between) is [var first, var second]) yield return (first, second);
                else sound = false;
        }

        Dictionary<T, decimal> Named<T>(string name, decimal least, decimal most) where T : struct, Enum
        {
            var found = new Dictionary<T, decimal>();
            foreach (var (word, text) in Pairs(name, '='))
                if (!Enum.TryParse(word, out T key) || !Enum.IsDefined(key) || Take(text, least, most) is not { } number || !found.TryAdd(key, number)) sound = false;
            return found;
        }

        TimeOnly? TimeOf(string text)
        {
            if (text.Length == 0) return null;
            if (TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)) return time;
            sound = false;
            return null;
        }
    }

    private static string Time(TimeOnly? time) => time?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "";

    private static string Text(decimal? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
