using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Pages;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>sheet</c>: the pattern sheet of a piece, as PDF, as HTML, and its drawings.</summary>
internal static class SheetCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var folder = new Option<string?>("--out") { Description = words.SheetOut, HelpName = "DIR" };
        var paper = new Option<string?>("--paper") { Description = words.SheetPaper, HelpName = "a4|letter" };
        var large = new Option<bool>("--large-print") { Description = words.SheetLargePrint };
        var grey = new Option<bool>("--greyscale") { Description = words.SheetGreyscale };
        var sizes = new Option<string?>("--sizes") { Description = words.SheetSizes, HelpName = "WRISTS" };
        var wrist = new Option<string?>("--wrist") { Description = words.Wrist, HelpName = "MM" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var command = new Command("sheet", words.Sheet) { piece, folder, paper, large, grey, sizes, wrist, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new ReckonRequest { WristMm = LengthOption.Read(parsed, wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults) };
            var setup = new PageSetup
            {
                Paper = PaperOption.Read(parsed, paper, faults),
                LargePrint = parsed.GetValue(large),
                Greyscale = parsed.GetValue(grey),
            };
            var asked = parsed.GetValue(sizes);
            var wrists = asked is null or UsualSizes ? ImmutableArray<double>.Empty : WristsOption.Read(parsed, sizes, faults);
            LanguageOption.Check(parsed, language, faults);
            if (parsed.GetValue(folder) is not { Length: > 0 } target)
            {
                faults.Add(Fault.Of(UsageCodes.OptionMissing, "", folder.Name, ("verb", command.Name)));
                target = "";
            }
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            var made = await Task.Run(() => DrawAsync(path, target, request, asked is null ? null : wrists, setup, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            if (!made.Faults.IsEmpty) return output.Fail(made.Faults, made.File);
            var code = made.Reckoned!.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(SheetJson.Of(made.Reckoned, setup, made.Written, output.Language), code)
                : output.Answer(string.Concat(made.Written.Select(f => output.Language.Fill(words.SheetWritten, ("file", f)) + "\n")), code);
        });
        return command;
    }

    // Stands for the wrists that nobody has to name.
    private const string UsualSizes = "usual";

    private static async Task<Made> DrawAsync(string path, string target, ReckonRequest request, ImmutableArray<double>? wrists, PageSetup setup, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made([.. data.Faults], null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new Made([.. read.Faults], path);
        // Sizes take longer than the rest: they are made beside it, and the drawings beside the pages.
        var sizing = Task.Run(() => wrists is { } of ? Grader.Of(piece, known, new SizesRequest(of.IsEmpty ? UsualWrists.Few(piece, known) : of), null, cancel) : null, cancel);
        var reckoned = Reckoning.Of(piece, known, request, cancel);
        var drawing = Task.Run(() => DocumentFiles.Drawings(DocumentKinds.PatternSheet, reckoned, setup, language).ToArray(), cancel);
        var sizes = await sizing.ConfigureAwait(false);
        cancel.ThrowIfCancellationRequested();

        // Everything is drawn before anything is written. A page whose letters cannot be printed is left out and said; the others are of use without it.
        var files = new List<DocumentFile>();
        foreach (var file in DocumentFiles.Pages(DocumentKinds.PatternSheet, reckoned, setup, language, sizes))
        {
            cancel.ThrowIfCancellationRequested();
            files.Add(file);
        }
        files.AddRange(await drawing.ConfigureAwait(false));
        if (SafeFile.MakeFolder(target) is { } refused) return new Made([refused], target);
        var written = ImmutableArray.CreateBuilder<string>();
        foreach (var file in files.Where(f => f.Faults.IsEmpty))
        {
            cancel.ThrowIfCancellationRequested();
            var place = Path.Combine(target, FileStem.Of(path) + "-" + file.Name);
            if (SafeFile.Write(place, file.Bytes.Span) is { } fault)
                return new Made([written.Count == 0 ? fault : fault with { Code = FaultCodes.FileUnwritableAfter, Values = fault.Values.Add("written", string.Join(", ", written)) }], place);
            written.Add(place);
        }
        // Where on the page such a text would have stood says nothing about the piece file.
        return new Made([.. files.SelectMany(f => f.Faults).Select(f => f with { Field = "" })], path) { Reckoned = reckoned, Written = written.ToImmutable() };
    }

    /// <summary>What came of it: the files that were written, and what is wrong and with which file.</summary>
    private sealed record Made(ImmutableArray<Fault> Faults, string? File)
    {
        public Reckoned? Reckoned { get; init; }

        public ImmutableArray<string> Written { get; init; } = [];
    }
}
