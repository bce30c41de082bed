using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Beads;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Quotes;
using Coilwright.Core.Shopping;
using Coilwright.Core.Substitutes;
using Coilwright.Documents;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Quotes;
using Coilwright.Solvers;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>quote</c>: the answer to a custom order, for the customer and for the maker.</summary>
internal static class QuoteCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Quote;
        var piece = new Argument<string>("PIECE") { Description = output.Language.Help.Piece };
        var wrist = new Option<string?>("--wrist") { Description = words.WristOption, HelpName = "MM" };
        var count = new Option<string?>("--count") { Description = words.CountOption, HelpName = "N" };
        var customer = new Option<string?>("--for") { Description = words.ForOption, HelpName = "NAME" };
        var costs = new Option<string?>("--costs") { Description = output.Language.Price.CostsOption, HelpName = "FILE" };
        var rule = new Option<string?>("--rule") { Description = words.RuleOption, HelpName = "RULE" };
        var prices = new Option<string?>("--prices") { Description = output.Language.Shop.PricesOption, HelpName = "FILE" };
        var spares = new Option<string[]>("--spares") { Description = output.Language.Shop.SparesOption, HelpName = "[BEAD=]N%|N" };
        var home = new Option<string[]>("--home") { Description = output.Language.Shop.HomeOption, HelpName = "BEAD=N" };
        var shelf = new Option<string?>("--shelf") { Description = output.Language.Shop.ShelfOption, HelpName = "DIR" };
        var among = new Option<string[]>("--among") { Description = words.AmongOption, HelpName = "PIECE", AllowMultipleArgumentsPerToken = true };
        var swap = new Option<string[]>("--swap") { Description = words.SwapOption, HelpName = "BEAD=BEAD" };
        var wire = new Option<string?>("--wire") { Description = words.WireOption, HelpName = "FILE" };
        var deposit = new Option<string?>("--deposit") { Description = words.DepositOption, HelpName = "PERCENT" };
        var on = new Option<string?>("--on") { Description = words.OnOption, HelpName = "DAY" };
        var until = new Option<string?>("--until") { Description = words.UntilOption, HelpName = "DAY" };
        var folder = new Option<string?>("--out") { Description = words.OutOption, HelpName = "DIR" };
        var setup = new SetupOptions(output.Language);
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("quote", words.Verb) { piece, wrist, count, customer, costs, rule, prices, spares, home, shelf, among, swap, wire, deposit, on, until, folder, language, json };
        setup.AddTo(command);

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new Request(parsed.GetRequiredValue(piece), LengthOption.Read(parsed, wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults), parsed.GetValue(costs), parsed.GetValue(prices),
                SparesOption.Read(parsed, spares, faults), SparesOption.ReadHome(parsed, home, faults), parsed.GetValue(shelf), parsed.GetValue(among) ?? [], SwapOption.Read(parsed, swap, faults), parsed.GetValue(wire),
                parsed.GetValue(folder), setup.Read(parsed, faults));
            var ask = new QuoteAsk
            {
                WristMm = 0,
                On = DayOption.Read(parsed, on, faults) ?? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
                Count = CountOption.ReadWhole(parsed, count, CuttingRules.MostPieces, faults) ?? 1,
                For = parsed.GetValue(customer)?.Trim() ?? "",
                Until = DayOption.Read(parsed, until, faults),
                DepositPercent = AmountOption.Read(parsed, deposit, faults),
                Rule = parsed.GetValue(rule),
            };
            faults.AddRange(PieceRules.OfText(customer.Name, ask.For, mayBeEmpty: true));
            // Without the file there are no rules to choose from.
            if (ask.Rule is not null && request.Costs is null) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", costs.Name, ("verb", command.Name)));
            LanguageOption.Check(parsed, language, faults);
            if (request.Shelf is not null && parsed.GetValue(home) is { Length: > 0 } both) faults.Add(Fault.Of(UsageCodes.NotBoth, home.Name, both[0], ("other", shelf.Name)));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => QuoteAsync(request, ask, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Quoted is not { } quoted) return output.Fail(made.Faults, made.File);
            var code = quoted.Quote.CanBePromised ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson ? output.Answer(QuoteJson.Of(quoted, output.Language), code) : output.Answer(QuoteText.Of(quoted, output.Language), code);
        });
        return command;
    }

    private static async Task<Made> QuoteAsync(Request request, QuoteAsk ask, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var (cautions, broken) = DataFiles.LoadCautions(DataFiles.DefaultFolder);
        if (cautions is null) return new Made(null, broken, null);
        var read = PieceFile.ReadFrom(request.Piece, known);
        if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Piece);

        // The first description of a name counts, as when shopping.
        var others = new Dictionary<string, Bead>(StringComparer.Ordinal);
        foreach (var bead in piece.Beads) others.TryAdd(bead.Id, bead);
        foreach (var path in request.Among)
        {
            var other = PieceFile.ReadFrom(path, known);
            if (other.Piece is not { } from) return new Made(null, other.Faults, path);
            foreach (var bead in from.Beads) others.TryAdd(bead.Id, bead);
        }
        if (request.Home.Keys.Select(b => ("--home", b)).Concat(request.Swaps.Select(s => ("--swap", s.With))).FirstOrDefault(b => !others.ContainsKey(b.Item2)) is (string option, string unknown))
            return new Made(null, [Fault.Of(FaultCodes.WordUnknown, option, unknown, ("known", string.Join(", ", others.Keys)), ("nearest", NearestName.Of(unknown, others.Keys) ?? ""))], null);

        var sources = new QuoteSources { Home = request.Home, Spares = request.Spares };
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
        if (request.Wire is { } wire)
        {
            var (found, unread) = WireFile.ReadFrom(wire, known);
            if (found is null) return new Made(null, unread, wire);
            sources = sources with { Wire = found.Lots, Cutting = found.Rules };
        }
        if (request.Shelf is { } folder)
        {
            var (free, why) = await ShelfStock.FreeAsync(folder, known, cancel).ConfigureAwait(false);
            if (free is null) return new Made(null, [why!], folder);
            sources = sources with { Home = free };
        }
        sources = sources with { Others = [.. others.Values.Where(b => sources.Home.ContainsKey(b.Id)).Select(b => new Candidate(b, sources.Home[b.Id]))] };
        ask = ask with { WristMm = request.WristMm ?? piece.Wearer.WristMm, Swaps = [.. request.Swaps.Select(s => new Swap(s.Bead, others[s.With]))] };
        if (!Quote.TryMake(piece, known, ask, sources, new CheapestBuyer(), out var quote, out var faults, cancel))
            return new Made(null, [.. faults.Select(f => Options.TryGetValue(f.Field, out var asked) ? f with { Field = asked } : sheet?.Placed(f) ?? f)], faults.All(f => Options.ContainsKey(f.Field)) ? null : request.Costs);
        var quoted = new Quoted(quote!, Listing.Of(quote!.Size.Reckoned, cautions.SmallParts), []);
        return request.Out is { } target ? Write(quoted, target, request.Setup, language, cancel) : new Made(quoted, [], null);
    }

    private static readonly ImmutableDictionary<string, string> Options = ImmutableDictionary.CreateRange(StringComparer.Ordinal,
        [KeyValuePair.Create("rule", "--rule"), KeyValuePair.Create("until", "--until"), KeyValuePair.Create("deposit", "--deposit"), KeyValuePair.Create("swaps", "--swap")]);

    // All are drawn before anything is written. What cannot be promised makes no paper for the customer.
    private static Made Write(Quoted quoted, string target, PageSetup setup, Language language, CancellationToken cancel)
    {
        var said = quoted.Said(language);
        DocumentFile[] drawn = [.. quoted.Quote.CanBePromised ? DocumentFiles.Of("quote", QuoteDocuments.ForTheCustomer(said, language), setup) : [],
            .. DocumentFiles.Of("workings", QuoteDocuments.Workings(quoted.Quote, said, language), setup)];
        cancel.ThrowIfCancellationRequested();
        if (drawn.SelectMany(f => f.Faults).DistinctBy(f => f.Value).Select(f => f with { Field = "" }).ToArray() is { Length: > 0 } unprintable) return new Made(null, unprintable, null);
        (string, ReadOnlyMemory<byte>)[] text = quoted.Quote.CanBePromised ? [("quote.txt", Encoding.UTF8.GetBytes(said.Text() + "\n"))] : [];
        var written = FolderFiles.Write(target, drawn.Select(f => (f.Name, f.Bytes)).Concat(text), cancel);
        return written.Fault is { } fault ? new Made(null, [fault], written.At) : new Made(quoted with { Written = written.Places }, [], null);
    }

    /// <summary>What was asked for beside the order itself.</summary>
    private sealed record Request(string Piece, double? WristMm, string? Costs, string? Prices, Spares Spares, Dictionary<string, int> Home, string? Shelf, string[] Among, ImmutableArray<(string Bead, string With)> Swaps,
        string? Wire, string? Out, PageSetup Setup);

    /// <summary>What came of it: the quote, or what is wrong and with which file.</summary>
    private sealed record Made(Quoted? Quoted, IReadOnlyList<Fault> Faults, string? File);
}
