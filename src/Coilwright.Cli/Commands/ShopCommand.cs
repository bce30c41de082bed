using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Documents.Tables;
using Coilwright.Solvers;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>shop</c>: what to buy for several pieces, from whom, and what is left over.</summary>
internal static class ShopCommand
{
    private const string Csv = ".csv", Xlsx = ".xlsx";

    public static Command Make(Output output)
    {
        var words = output.Language.Shop;
        var pieces = new Argument<string[]>("PIECE...") { Description = output.Language.Cut.Pieces, Arity = ArgumentArity.OneOrMore };
        var count = new Option<string[]>("--count") { Description = output.Language.Cut.Count, HelpName = "NAME=N" };
        var spares = new Option<string[]>("--spares") { Description = words.SparesOption, HelpName = "[BEAD=]N%|N" };
        var home = new Option<string[]>("--home") { Description = words.HomeOption, HelpName = "BEAD=N" };
        var shelf = new Option<string?>("--shelf") { Description = words.ShelfOption, HelpName = "DIR" };
        var prices = new Option<string?>("--prices") { Description = words.PricesOption, HelpName = "FILE" };
        var wire = new Option<string?>("--wire") { Description = words.WireOption, HelpName = "FILE" };
        var more = new Option<string?>("--more") { Description = words.MoreOption, HelpName = "N" };
        var on = new Option<string?>("--on") { Description = words.OnOption, HelpName = "DAY" };
        var file = new Option<string?>("--out") { Description = words.OutOption, HelpName = "FILE" };
        var effort = new Option<string?>("--effort") { Description = words.EffortOption, HelpName = "N" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("shop", words.Verb) { pieces, count, spares, home, shelf, prices, wire, more, effort, on, file, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var paths = parsed.GetRequiredValue(pieces);
            var names = CountOption.NamesOf(paths);
            var request = new Request(paths, names, CountOption.Read(parsed, count, names, faults), SparesOption.Read(parsed, spares, faults), SparesOption.ReadHome(parsed, home, faults),
                parsed.GetValue(shelf), parsed.GetValue(prices), parsed.GetValue(wire), CountOption.ReadWhole(parsed, more, BreakPoints.Most, faults), EffortOption.Read(parsed, effort, 1, faults), DayOption.Read(parsed, on, faults));
            LanguageOption.Check(parsed, language, faults);
            if (request.Shelf is not null && request.Home.Count > 0) faults.Add(Fault.Of(UsageCodes.NotBoth, home.Name, "", ("other", shelf.Name)));
            var target = parsed.GetValue(file);
            if (target is not null && KindOf(target) is null) faults.Add(Fault.Of(UsageCodes.TableKind, file.Name, target));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => PlanAsync(request, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Shopped is not { } shopped) return output.Fail(made.Faults, made.File);
            if (target is not null && SafeFile.Write(target, KindOf(target) == Csv ? ShopTable.Csv(shopped.Plan, output.Language) : ShopTable.Xlsx(shopped.Plan, output.Language)) is { } unwritable)
                return output.Fail([unwritable], target);
            var code = shopped.ComesOut ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson ? output.Answer(ShopJson.Of(shopped, output.Language, target), code) : output.Answer(ShopText.Of(shopped, output.Language, target), code);
        });
        return command;
    }

    private static string? KindOf(string path) => new[] { Csv, Xlsx }.FirstOrDefault(end => path.EndsWith(end, StringComparison.OrdinalIgnoreCase));

    private static async Task<Made> PlanAsync(Request request, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var pieces = new List<ShoppingPiece>();
        for (var p = 0; p < request.Paths.Length; p++)
        {
            var read = PieceFile.ReadFrom(request.Paths[p], known);
            if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Paths[p]);
            pieces.Add(new ShoppingPiece(request.Names[p], piece, request.Counts[p]));
        }
        var unknown = SparesOption.Unknown(pieces.Select(p => p.Piece), request.Spares, request.Home);
        if (unknown.Length > 0) return new Made(null, unknown, null);

        var prices = PriceList.Empty;
        if (request.Prices is { } path)
        {
            var read = PricesFile.ReadFrom(path);
            if (read.Prices is null) return new Made(null, read.Faults, path);
            prices = read.Prices;
        }
        var home = request.Home;
        if (request.Shelf is { } folder)
        {
            var (free, why) = await ShelfStock.FreeAsync(folder, known, cancel).ConfigureAwait(false);
            if (free is null) return new Made(null, [why!], folder);
            home = free;
        }
        if (!ShoppingList.TryMake(pieces, request.Spares, home, prices, out var list, out var faults)) return new Made(null, faults, null);
        var buyer = new CheapestBuyer(request.Effort);
        var plan = new ShoppingPlan(list!, buyer.Find(list!.Buying, null, cancel));
        ImmutableArray<BreakPoint> points = request.More is not { } most ? [] : [.. Enumerable.Range(0, pieces.Count).SelectMany(p => BreakPoints.Of(plan, p, most, buyer, cancel))];
        var shopped = new Shopped(plan, points, request.More) { On = request.On };
        return request.Wire is { } wire ? Wire(shopped, wire, pieces, known, cancel) : new Made(shopped, [], null);
    }

    private static Made Wire(Shopped shopped, string path, List<ShoppingPiece> pieces, ReckoningData data, CancellationToken cancel)
    {
        var (wire, faults) = WireFile.ReadFrom(path, data);
        if (wire is null) return new Made(null, faults, path);
        var lengths = pieces.Sum(p => (long)p.Count);
        if (lengths > CuttingRules.MostPieces)
            return new Made(null, [Fault.Of(UsageCodes.TooManyPieces, "", Language.PlainNumber(lengths, 0), ("max", Language.PlainNumber(CuttingRules.MostPieces, 0)))], null);
        var demands = pieces.ConvertAll(p => WireDemand.Of(Reckoning.Of(p.Piece, data, null, cancel), p.Count, p.Name));
        return new Made(shopped with { Wire = WireCutting.Of(demands, wire.Lots, wire.Rules, data.Choices, cancel: cancel) }, [], null);
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string[] Paths, string[] Names, int[] Counts, Spares Spares, Dictionary<string, int> Home, string? Shelf, string? Prices, string? Wire, int? More, int Effort, DateOnly? On);

    /// <summary>What came of it: the plan, or what is wrong and with which file.</summary>
    private sealed record Made(Shopped? Shopped, IReadOnlyList<Fault> Faults, string? File);
}
