using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>cut</c>: which coil is cut into what for several pieces, and the wire that is there afterwards.</summary>
internal static class CutCommand
{
    private const int MostLoops = 5_000, MostPacks = 100_000;
    private const double MostKeepMm = 10_000, MostLossMm = 20;

    public static Command Make(Output output)
    {
        var words = output.Language.Cut;
        var pieces = new Argument<string[]>("PIECE...") { Description = words.Pieces, Arity = ArgumentArity.OneOrMore };
        var count = new Option<string[]>("--count") { Description = words.Count, HelpName = "NAME=N" };
        var stock = new Option<string?>("--stock") { Description = words.Stock, HelpName = "FILE" };
        var loops = new Option<string?>("--loops") { Description = words.Loops, HelpName = "N" };
        var packs = new Option<string?>("--packs") { Description = words.Packs, HelpName = "M" };
        var keep = new Option<string?>("--keep") { Description = words.Keep, HelpName = "MM" };
        var loss = new Option<string?>("--loss") { Description = words.Loss, HelpName = "MM" };
        var file = new Option<string?>("--out") { Description = words.Out, HelpName = "FILE" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("cut", words.Verb) { pieces, count, stock, loops, packs, keep, loss, file, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var paths = parsed.GetRequiredValue(pieces);
            var names = CountOption.NamesOf(paths);
            var request = new Request(paths, names, CountOption.Read(parsed, count, names, faults), parsed.GetValue(stock),
                CountOption.ReadWhole(parsed, loops, MostLoops, faults), CountOption.ReadWhole(parsed, packs, MostPacks, faults),
                LengthOption.Read(parsed, keep, 0, MostKeepMm, faults), LengthOption.Read(parsed, loss, 0, MostLossMm, faults), parsed.GetValue(file));
            LanguageOption.Check(parsed, language, faults);
            if (request.Stock is null && parsed.GetValue(loops) is null) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", stock.Name, ("verb", command.Name)));
            foreach (var pack in new[] { loops, packs })
                if (request.Stock is not null && parsed.GetValue(pack) is { } both) faults.Add(Fault.Of(UsageCodes.NotBoth, pack.Name, both, ("other", stock.Name)));
            if (request.Counts.Sum(n => (long)n) is var lengths and > CuttingRules.MostPieces)
                faults.Add(Fault.Of(UsageCodes.TooManyPieces, "", lengths.ToString(CultureInfo.InvariantCulture), ("max", Language.PlainNumber(CuttingRules.MostPieces, 0))));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => Plan(request, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Plan is not { } plan) return output.Fail(made.Faults, made.File);
            if (request.Out is { } target && made.Afterwards is { } bytes && SafeFile.Write(target, bytes) is { } unwritable) return output.Fail([unwritable], target);
            var written = made.Afterwards is null ? null : request.Out;
            var code = plan.ComesOut && made.SayStop.IsEmpty ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson
                ? output.Answer(CutJson.Of(plan, made.SayStop, output.Language, written), code)
                : output.Answer(CutText.Of(plan, made.SayStop, output.Language, request.Out, written is not null), code);
        });
        return command;
    }

    private static Made Plan(Request request, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var demands = new List<WireDemand>();
        var stops = ImmutableArray.CreateBuilder<int>();
        for (var p = 0; p < request.Paths.Length; p++)
        {
            var read = PieceFile.ReadFrom(request.Paths[p], known);
            if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Paths[p]);
            var reckoned = Reckoning.Of(piece, known, null, cancel);
            if (reckoned.Notices.Any(n => n.Severity == Severity.Stop)) stops.Add(p);
            demands.Add(WireDemand.Of(reckoned, request.Counts[p], request.Names[p]));
        }

        WireAtHand wire;
        if (request.Stock is { } stock)
        {
            var (found, faults) = WireFile.ReadFrom(stock, known);
            if (found is null) return new Made(null, faults, stock);
            wire = found;
        }
        else
        {
            var own = demands[0].Wire;
            if (demands.Find(d => !WireKinds.Same(d.Wire, own, known.Choices)) is { } other)
                return new Made(null, [Fault.Of(UsageCodes.WiresDiffer, "--loops", "", ("first", demands[0].Name), ("second", other.Name))], null);
            var loops = request.Loops ?? 1;
            wire = new WireAtHand([new WireLot(language.Fill(language.Cut.PackOfLoops, ("loops", loops)), own, WireLot.LengthOfLoopsMm(own, loops), request.Packs, null, false)], new CuttingRules());
        }
        var rules = new CuttingRules(request.LossMm ?? wire.Rules.LossMm, request.KeepMm ?? wire.Rules.KeepFromMm);
        var plan = WireCutting.Of(demands, wire.Lots, rules, known.Choices, cancel: cancel);
        var after = plan.WireAfterwards();
        return new Made(plan, [], null) { SayStop = stops.ToImmutable(), Afterwards = after.IsEmpty ? null : WireFile.Write(new WireAtHand(after, rules)) };
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string[] Paths, string[] Names, int[] Counts, string? Stock, int? Loops, int? Packs, double? KeepMm, double? LossMm, string? Out);

    /// <summary>What came of it: the plan, or what is wrong and with which file.</summary>
    private sealed record Made(CuttingPlan? Plan, IReadOnlyList<Fault> Faults, string? File)
    {
        /// <summary>Pieces whose report says stop.</summary>
        public ImmutableArray<int> SayStop { get; init; } = [];

        /// <summary>The wire that is there afterwards, as a file; null when there is none.</summary>
        public byte[]? Afterwards { get; init; }
    }
}
