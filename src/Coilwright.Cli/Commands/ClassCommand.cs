using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Classes;
using Coilwright.Core.Faults;
using Coilwright.Core.Kits;
using Coilwright.Core.Pricing;
using Coilwright.Core.Shopping;
using Coilwright.Documents;
using Coilwright.Documents.Classes;
using Coilwright.Documents.Pages;
using Coilwright.Solvers;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>class</c>: a class on a piece: kits, tools, every step by the clock, what a place costs.</summary>
internal static class ClassCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Class;
        var piece = new Argument<string>("PIECE") { Description = output.Language.Help.Piece };
        var participants = new Option<string?>("--participants") { Description = words.ParticipantsOption, HelpName = "N" };
        var spareKits = new Option<string?>("--spare-kits") { Description = words.SpareKitsOption, HelpName = "N" };
        var spares = new Option<string[]>("--spares") { Description = output.Language.Kit.SparesOption, HelpName = "[BEAD=]N%|N" };
        var factor = new Option<string?>("--factor") { Description = words.FactorOption, HelpName = "N" };
        var start = new Option<string?>("--start") { Description = words.StartOption, HelpName = "HH:MM" };
        var end = new Option<string?>("--end") { Description = words.EndOption, HelpName = "HH:MM" };
        var pause = new Option<string[]>("--break") { Description = words.BreakOption, HelpName = "HH:MM+MIN" };
        var places = new Option<string?>("--places") { Description = words.PlacesOption, HelpName = "N" };
        var share = new Option<string[]>("--share") { Description = output.Language.Fill(words.ShareOption, ("known", ClassOptions.ToolWords)), HelpName = "TOOL=N" };
        var minutes = new Option<string[]>("--minutes") { Description = output.Language.Fill(words.MinutesOption, ("known", ClassOptions.ActionWords)), HelpName = "STEP=MIN" };
        var beforehand = new Option<string[]>("--beforehand") { Description = words.BeforehandOption, HelpName = "STEP" };
        var around = new Option<string?>("--around") { Description = words.AroundOption, HelpName = "MIN" };
        var room = new Option<string?>("--room") { Description = words.RoomOption, HelpName = "AMOUNT" };
        var costs = new Option<string?>("--costs") { Description = output.Language.Price.CostsOption, HelpName = "FILE" };
        var rule = new Option<string?>("--rule") { Description = words.RuleOption, HelpName = "RULE" };
        var prices = new Option<string?>("--prices") { Description = output.Language.Shop.PricesOption, HelpName = "FILE" };
        var home = new Option<string[]>("--home") { Description = output.Language.Kit.HomeOption, HelpName = "BEAD=N" };
        var shelf = new Option<string?>("--shelf") { Description = output.Language.Kit.ShelfOption, HelpName = "DIR" };
        var lots = new Option<string?>("--lots") { Description = words.LotsOption, HelpName = "average|first-in" };
        var folder = new Option<string?>("--out") { Description = words.OutOption, HelpName = "DIR" };
        var setup = new SetupOptions(output.Language);
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("class", words.Verb)
        {
            piece, participants, spareKits, spares, factor, start, end, pause, places, share, minutes, beforehand, around, room, costs, rule, prices, home, shelf, lots, folder, language, json,
        };
        setup.AddTo(command);

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            if (parsed.GetValue(participants) is null) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", participants.Name, ("verb", command.Name)));
            var request = new Request(parsed.GetRequiredValue(piece), parsed.GetValue(costs), parsed.GetValue(prices), SparesOption.Read(parsed, spares, faults), SparesOption.ReadHome(parsed, home, faults),
                parsed.GetValue(shelf), parsed.GetValue(lots) is null ? null : LotsOption.Read(parsed, lots, shelf, faults), parsed.GetValue(folder), setup.Read(parsed, faults));
            var ask = new ClassAsk
            {
                Participants = CountOption.ReadWhole(parsed, participants, ClassAsk.MostParticipants, faults) ?? 1,
                SpareKits = CountOption.ReadWhole(parsed, spareKits, ClassAsk.MostParticipants, faults) ?? 0,
                Factor = ClassOptions.ReadFactor(parsed, factor, faults),
                Start = ClassOptions.ReadTime(parsed, start, faults),
                End = ClassOptions.ReadTime(parsed, end, faults),
                Breaks = ClassOptions.ReadBreaks(parsed, pause, faults),
                Places = CountOption.ReadWhole(parsed, places, ClassAsk.MostParticipants, faults),
                Shared = ClassOptions.ReadShared(parsed, share, faults),
                Minutes = ClassOptions.ReadMinutes(parsed, minutes, faults),
                Beforehand = [.. (parsed.GetValue(beforehand) ?? []).Distinct()],
                AroundMinutes = CountOption.ReadWhole(parsed, around, ClassAsk.MostMinutes, faults) ?? 0,
                Room = AmountOption.Read(parsed, room, faults) ?? 0,
                Rule = parsed.GetValue(rule),
            };
            // Without the file there are no rules to choose from.
            if (ask.Rule is not null && request.Costs is null) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", costs.Name, ("verb", command.Name)));
            LanguageOption.Check(parsed, language, faults);
            if (request.Shelf is not null && parsed.GetValue(home) is { Length: > 0 } both) faults.Add(Fault.Of(UsageCodes.NotBoth, home.Name, both[0], ("other", shelf.Name)));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => PlanAsync(request, ask, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Plan is not { } plan) return output.Fail(made.Faults, made.File);
            var code = plan.CanBeHeld ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson ? output.Answer(ClassJson.Of(plan, output.Language, made.Written), code) : output.Answer(ClassText.Of(plan, output.Language, made.Written), code);
        });
        return command;
    }

    private static async Task<Made> PlanAsync(Request request, ClassAsk ask, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var read = PieceFile.ReadFrom(request.Piece, known);
        if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Piece);
        if (SparesOption.Unknown([piece], request.Spares, request.Home) is { Length: > 0 } unknown) return new Made(null, unknown, null);

        var sources = new ClassSources { Spares = request.Spares, Home = request.Home.Count > 0 ? new HomeStock(request.Home, ImmutableDictionary<string, ImmutableArray<string>>.Empty) : null };
        CostsRead? sheet = null;
        if (request.Costs is { } costs)
        {
            sheet = CostsFile.ReadFrom(costs);
            if (sheet.Costs is null) return new Made(null, sheet.Faults, costs);
            sources = sources with { Costs = sheet.Costs };
        }
        if (request.Prices is { } prices)
        {
            var priced = PricesFile.ReadFrom(prices);
            if (priced.Prices is null) return new Made(null, priced.Faults, prices);
            sources = sources with { Prices = priced.Prices };
        }
        if (request.Shelf is { } folder)
        {
            var (drawers, why) = await ShelfStock.DrawersAsync(folder, known, cancel).ConfigureAwait(false);
            if (drawers is null) return new Made(null, [why!], folder);
            sources = sources with { Home = drawers };
            if (request.Lots is { } way)
            {
                var (lots, unread) = await ShelfStock.LotCostsAsync(folder, way, known, cancel).ConfigureAwait(false);
                if (lots is null) return new Made(null, [unread!], folder);
                sources = sources with { Lots = lots };
            }
        }
        if (!ClassPlan.TryMake(piece, known, ask, sources, new CheapestBuyer(), out var plan, out var faults, cancel))
            return new Made(null, [.. faults.Select(f => Options.TryGetValue(f.Field, out var asked) ? f with { Field = asked } : sheet?.Placed(f) ?? f)], faults.All(f => Options.ContainsKey(f.Field)) ? null : request.Costs);
        return request.Out is { } target ? Write(plan!, target, request.Setup, language, cancel) : new Made(plan, [], null);
    }

    private static readonly ImmutableDictionary<string, string> Options = ImmutableDictionary.CreateRange(StringComparer.Ordinal,
        new[] { ("rule", "--rule"), ("beforehand", "--beforehand"), ("share", "--share"), ("start", "--start"), ("end", "--end"), ("breaks", "--break") }.Select(o => KeyValuePair.Create(o.Item1, o.Item2)));

    // All are drawn before anything is written.
    private static Made Write(ClassPlan plan, string target, PageSetup setup, Language language, CancellationToken cancel)
    {
        DocumentFile[] drawn = [.. DocumentFiles.Of("class", ClassDocuments.Teacher(plan, language), setup), .. DocumentFiles.Of("participant", ClassDocuments.Participant(plan, language), setup)];
        cancel.ThrowIfCancellationRequested();
        if (drawn.SelectMany(f => f.Faults).DistinctBy(f => f.Value).Select(f => f with { Field = "" }).ToArray() is { Length: > 0 } unprintable) return new Made(null, unprintable, null);
        var written = FolderFiles.Write(target, drawn.Select(f => (f.Name, f.Bytes)), cancel);
        return written.Fault is { } fault ? new Made(null, [fault], written.At) : new Made(plan, [], null) { Written = written.Places };
    }

    /// <summary>What was asked for beside the class itself.</summary>
    private sealed record Request(string Piece, string? Costs, string? Prices, Spares Spares, Dictionary<string, int> Home, string? Shelf, LotWay? Lots, string? Out, PageSetup Setup);

    /// <summary>What came of it: the plan, or what is wrong and with which file.</summary>
    private sealed record Made(ClassPlan? Plan, IReadOnlyList<Fault> Faults, string? File)
    {
        /// <summary>The files that were written.</summary>
        public ImmutableArray<string> Written { get; init; } = [];
    }
}
