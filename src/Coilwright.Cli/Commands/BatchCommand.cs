using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Batches;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Documents.Batches;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Pages;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>batch</c>: several of a piece alike: trays, wire, time, and a sheet to tick off.</summary>
internal static class BatchCommand
{
    private const int UsualCount = 10;

    public static Command Make(Output output)
    {
        var words = output.Language.Batch;
        var piece = new Argument<string>("PIECE") { Description = output.Language.Help.Piece };
        var count = new Option<string?>("--count") { Description = words.CountOption, HelpName = "N" };
        var wells = new Option<string?>("--wells") { Description = output.Language.Fill(words.WellsOption, ("usual", CountingTray.Usual.Wells)), HelpName = "N" };
        var rounds = new Option<string?>("--rounds") { Description = output.Language.Fill(words.RoundsOption, ("usual", CountingTray.Usual.Rounds)), HelpName = "N" };
        var costs = new Option<string?>("--costs") { Description = words.CostsOption, HelpName = "FILE" };
        var wire = new Option<string?>("--wire") { Description = output.Language.Quote.WireOption, HelpName = "FILE" };
        var folder = new Option<string?>("--out") { Description = words.OutOption, HelpName = "DIR" };
        var setup = new SetupOptions(output.Language);
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("batch", words.Verb) { piece, count, wells, rounds, costs, wire, folder, language, json };
        setup.AddTo(command);

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new Request(parsed.GetRequiredValue(piece), CountOption.ReadWhole(parsed, count, CuttingRules.MostPieces, faults) ?? UsualCount,
                new CountingTray(CountOption.ReadWhole(parsed, wells, CountingTray.Most, faults) ?? CountingTray.Usual.Wells, CountOption.ReadWhole(parsed, rounds, CountingTray.Most, faults) ?? CountingTray.Usual.Rounds),
                parsed.GetValue(costs), parsed.GetValue(wire), parsed.GetValue(folder), setup.Read(parsed, faults));
            LanguageOption.Check(parsed, language, faults);
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => Plan(request, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Plan is not { } plan) return output.Fail(made.Faults, made.File);
            var code = plan.Reckoned.Fit.Fits && made.Wire is not { ComesOut: false } ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson ? output.Answer(BatchJson.Of(plan, made.Wire, output.Language, made.Written), code) : output.Answer(BatchText.Of(plan, made.Wire, output.Language, made.Written), code);
        });
        return command;
    }

    private static Made Plan(Request request, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var read = PieceFile.ReadFrom(request.Piece, known);
        if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Piece);
        var sheet = request.Costs is { } file ? CostsFile.ReadFrom(file) : null;
        if (sheet is { Costs: null }) return new Made(null, sheet.Faults, request.Costs);
        var plan = BatchPlan.Of(Reckoning.Of(piece, known, null, cancel), request.Count, request.Tray, sheet?.Costs?.Sheet ?? CostSheet.Empty);
        CuttingPlan? cutting = null;
        if (request.Wire is { } hand)
        {
            var (wire, unread) = WireFile.ReadFrom(hand, known);
            if (wire is null) return new Made(null, unread, hand);
            cutting = WireCutting.Of([WireDemand.Of(plan.Reckoned, request.Count)], wire.Lots, wire.Rules, known.Choices, cancel: cancel);
        }
        var made = request.Out is { } target ? Write(plan, cutting, target, request.Setup, language, cancel) : new Made(plan, [], null);
        return made with { Wire = cutting };
    }

    // All are drawn before anything is written.
    private static Made Write(BatchPlan plan, CuttingPlan? wire, string target, PageSetup setup, Language language, CancellationToken cancel)
    {
        (string Name, PageDocument Document)[] documents = [("batch", BatchDocuments.Plan(plan, wire, language)), ("tick-sheet", BatchDocuments.TickSheet(plan.Reckoned, language))];
        IDocumentCanvas[] canvases = [new PdfCanvas(), new HtmlCanvas()];
        (string Name, DrawnDocument Drawn)[] files = [.. documents.SelectMany(d => canvases.Select(c => (d.Name + c.Ending, c.Draw(d.Document, setup))))];
        cancel.ThrowIfCancellationRequested();
        if (files.SelectMany(f => f.Drawn.Faults).DistinctBy(f => f.Value).Select(f => f with { Field = "" }).ToArray() is { Length: > 0 } unprintable) return new Made(null, unprintable, null);
        var written = FolderFiles.Write(target, files.Select(f => (f.Name, f.Drawn.Bytes)), cancel);
        return written.Fault is { } fault ? new Made(null, [fault], written.At) : new Made(plan, [], null) { Written = written.Places };
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string Piece, int Count, CountingTray Tray, string? Costs, string? Wire, string? Out, PageSetup Setup);

    /// <summary>What came of it: the plan, or what is wrong and with which file.</summary>
    private sealed record Made(BatchPlan? Plan, IReadOnlyList<Fault> Faults, string? File)
    {
        /// <summary>How the wire at hand is cut; null when nobody said what is there.</summary>
        public CuttingPlan? Wire { get; init; }

        /// <summary>The files that were written.</summary>
        public ImmutableArray<string> Written { get; init; } = [];
    }
}
