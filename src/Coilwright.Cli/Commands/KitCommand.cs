using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Kits;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Kits;
using Coilwright.Documents.Pages;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>kit</c>: what lies in which bag for several pieces, what to fetch, how many kits what is at home makes, and labels.</summary>
internal static class KitCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Kit;
        var pieces = new Argument<string[]>("PIECE...") { Description = output.Language.Cut.Pieces, Arity = ArgumentArity.OneOrMore };
        var count = new Option<string[]>("--count") { Description = output.Language.Cut.Count, HelpName = "NAME=N" };
        var spares = new Option<string[]>("--spares") { Description = words.SparesOption, HelpName = "[BEAD=]N%|N" };
        var home = new Option<string[]>("--home") { Description = words.HomeOption, HelpName = "BEAD=N" };
        var shelf = new Option<string?>("--shelf") { Description = words.ShelfOption, HelpName = "DIR" };
        var prices = new Option<string?>("--prices") { Description = output.Language.Shop.PricesOption, HelpName = "FILE" };
        var folder = new Option<string?>("--out") { Description = words.OutOption, HelpName = "DIR" };
        var labels = new Option<string?>("--labels") { Description = output.Language.Fill(words.LabelsOption, ("usual", LabelsOption.Usual)), HelpName = "CxR,WxH[,LxT[,AxD]]" };
        var paper = new Option<string?>("--paper") { Description = output.Language.Help.SheetPaper, HelpName = "a4|letter" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("kit", words.Verb) { pieces, count, spares, home, shelf, prices, folder, labels, paper, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var paths = parsed.GetRequiredValue(pieces);
            var names = CountOption.NamesOf(paths);
            var request = new Request(paths, names, CountOption.Read(parsed, count, names, faults), SparesOption.Read(parsed, spares, faults), SparesOption.ReadHome(parsed, home, faults),
                parsed.GetValue(shelf), parsed.GetValue(prices), parsed.GetValue(folder), LabelsOption.Read(parsed, labels, faults), PaperOption.Read(parsed, paper, faults));
            LanguageOption.Check(parsed, language, faults);
            if (request.Shelf is not null && parsed.GetValue(home) is { Length: > 0 } both) faults.Add(Fault.Of(UsageCodes.NotBoth, home.Name, both[0], ("other", shelf.Name)));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => PackAsync(request, output.Language, labels.Name, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Plan is not { } plan) return output.Fail(made.Faults, made.File);
            var code = plan.Kits.Any(k => k.SaysStop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson ? output.Answer(KitJson.Of(plan, output.Language, made.Written), code) : output.Answer(KitText.Of(plan, output.Language, made.Written), code);
        });
        return command;
    }

    private static async Task<Made> PackAsync(Request request, Language language, string labels, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var pieces = new List<KitPiece>();
        for (var p = 0; p < request.Paths.Length; p++)
        {
            var read = PieceFile.ReadFrom(request.Paths[p], known);
            if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Paths[p]);
            pieces.Add(new KitPiece(new ShoppingPiece(request.Names[p], piece, request.Counts[p]), Reckoning.Of(piece, known, null, cancel)));
        }
        if (SparesOption.Unknown(pieces.Select(p => p.Of.Piece), request.Spares, request.Home) is { Length: > 0 } unknown) return new Made(null, unknown, null);

        var home = request.Home.Count > 0 ? new HomeStock(request.Home, ImmutableDictionary<string, ImmutableArray<string>>.Empty) : null;
        if (request.Shelf is { } folder)
        {
            var (drawers, why) = await ShelfStock.DrawersAsync(folder, known, cancel).ConfigureAwait(false);
            if (drawers is null) return new Made(null, [why!], folder);
            home = drawers;
        }
        var prices = PriceList.Empty;
        if (request.Prices is { } path)
        {
            var priced = PricesFile.ReadFrom(path);
            if (priced.Prices is null) return new Made(null, priced.Faults, path);
            prices = priced.Prices;
        }
        if (!KitPlan.TryMake(pieces, request.Spares, home, prices, out var plan, out var faults)) return new Made(null, faults, null);
        return request.Out is { } target ? Write(plan!, target, request, language, labels, cancel) : new Made(plan, [], null);
    }

    // Both are drawn before anything is written.
    private static Made Write(KitPlan plan, string target, Request request, Language language, string option, CancellationToken cancel)
    {
        var setup = new PageSetup { Paper = request.Paper };
        if (LabelSheet.Check(plan, request.Labels, setup.Paper, language) is { } misfit) return new Made(null, [misfit with { Field = option }], null);
        (string Name, DrawnDocument Drawn)[] files =
        [
            ("labels.pdf", LabelSheet.Pdf(plan, request.Labels, setup, language)),
            ("pick-list.pdf", new PdfCanvas().Draw(PickListDocument.Of(plan, language), setup)),
        ];
        cancel.ThrowIfCancellationRequested();
        if (files.SelectMany(f => f.Drawn.Faults).DistinctBy(f => f.Value).Select(f => f with { Field = "" }).ToArray() is { Length: > 0 } unprintable) return new Made(null, unprintable, null);
        var written = FolderFiles.Write(target, files.Select(f => (f.Name, f.Drawn.Bytes)), cancel);
        return written.Fault is { } fault ? new Made(null, [fault], written.At) : new Made(plan, [], null) { Written = written.Places };
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string[] Paths, string[] Names, int[] Counts, Spares Spares, Dictionary<string, int> Home, string? Shelf, string? Prices, string? Out, LabelGrid Labels, Paper Paper);

    /// <summary>What came of it: the plan, or what is wrong and with which file.</summary>
    private sealed record Made(KitPlan? Plan, IReadOnlyList<Fault> Faults, string? File)
    {
        /// <summary>The files that were written.</summary>
        public ImmutableArray<string> Written { get; init; } = [];
    }
}
