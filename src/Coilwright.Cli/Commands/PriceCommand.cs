using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Storage;

namespace Coilwright.Cli.Commands;

/// <summary><c>price</c>: what a piece costs, line by line, and what the maker's own rules ask for it.</summary>
internal static class PriceCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Price;
        var piece = new Argument<string>("PIECE") { Description = output.Language.Help.Piece };
        var costs = new Option<string?>("--costs") { Description = words.CostsOption, HelpName = "FILE" };
        var prices = new Option<string?>("--prices") { Description = words.PricesOption, HelpName = "FILE" };
        var count = new Option<string?>("--count") { Description = words.CountOption, HelpName = "N" };
        var at = new Option<string?>("--at") { Description = words.AtOption, HelpName = "AMOUNT" };
        var shelf = new Option<string?>("--shelf") { Description = words.ShelfOption, HelpName = "DIR" };
        var lots = new Option<string?>("--lots") { Description = words.LotsOption, HelpName = "average|first-in" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("price", words.Verb) { piece, costs, prices, count, at, shelf, lots, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new Request(parsed.GetRequiredValue(piece), parsed.GetValue(costs), parsed.GetValue(prices), CountOption.ReadWhole(parsed, count, CuttingRules.MostPieces, faults) ?? 1,
                AmountOption.Read(parsed, at, faults), parsed.GetValue(shelf), LotsOption.Read(parsed, lots, shelf, faults));
            LanguageOption.Check(parsed, language, faults);
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => PlanAsync(request, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Plan is not { } plan) return output.Fail(made.Faults, made.File);
            var code = plan.NothingIsLost ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson ? output.Answer(PriceJson.Of(plan, output.Language), code) : output.Answer(PriceText.Of(plan, output.Language), code);
        });
        return command;
    }

    private static async Task<Made> PlanAsync(Request request, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var read = PieceFile.ReadFrom(request.Piece, known);
        if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Piece);
        var prices = PriceList.Empty;
        if (request.Prices is { } path)
        {
            var priced = PricesFile.ReadFrom(path);
            if (priced.Prices is null) return new Made(null, priced.Faults, path);
            prices = priced.Prices;
        }
        var sheet = request.Costs is { } file ? CostsFile.ReadFrom(file) : null;
        if (sheet is { Costs: null }) return new Made(null, sheet.Faults, request.Costs);
        var one = new ShoppingPiece(FileStem.Of(request.Piece), piece, request.Count);
        if (!ShoppingList.TryMake([one], Spares.None, new Dictionary<string, int>(), prices, out var list, out var faults)) return new Made(null, faults, request.Piece);
        var wire = WireUse.Of(WireDemand.Of(Reckoning.Of(piece, known, null, cancel), request.Count));
        LotCosts? lots = null;
        if (request.Shelf is { } folder)
        {
            var (costs, why) = await ShelfStock.LotCostsAsync(folder, request.Lots, known, cancel).ConfigureAwait(false);
            if (costs is null) return new Made(null, [why!], folder);
            lots = costs;
        }
        return PricePlan.TryMake(sheet?.Costs ?? Costs.Empty, list!, wire, lots, request.At, out var plan, out faults) ? new Made(plan, [], null)
            : new Made(null, [.. faults.Select(f => sheet?.Placed(f) ?? f)], request.Costs);
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string Piece, string? Costs, string? Prices, int Count, decimal? At, string? Shelf, LotWay Lots);

    /// <summary>What came of it: the plan, or what is wrong and with which file.</summary>
    private sealed record Made(PricePlan? Plan, IReadOnlyList<Fault> Faults, string? File);
}
