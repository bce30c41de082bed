using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Pages;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>pattern</c>: the written pattern of a piece, as PDF and as HTML, and what the proof-reader finds in its maker's own words.</summary>
internal static class PatternCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var folder = new Option<string?>("--out") { Description = words.SheetOut, HelpName = "DIR" };
        var paper = new Option<string?>("--paper") { Description = words.SheetPaper, HelpName = "a4|letter" };
        var large = new Option<bool>("--large-print") { Description = words.SheetLargePrint };
        var grey = new Option<bool>("--greyscale") { Description = words.SheetGreyscale };
        var spare = new Option<bool>("--ink-saving") { Description = words.PatternInkSaving };
        var sizes = new Option<string?>("--sizes") { Description = words.SheetSizes, HelpName = "WRISTS" };
        var colourway = new Option<string[]>("--colourway") { Description = words.PatternColourway, HelpName = "PIECE" };
        var wrist = new Option<string?>("--wrist") { Description = words.Wrist, HelpName = "MM" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var command = new Command("pattern", words.Pattern) { piece, folder, paper, large, grey, spare, sizes, colourway, wrist, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new ReckonRequest { WristMm = LengthOption.Read(parsed, wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults) };
            var setup = new PageSetup
            {
                Paper = PaperOption.Read(parsed, paper, faults),
                LargePrint = parsed.GetValue(large),
                Greyscale = parsed.GetValue(grey),
                InkSaving = parsed.GetValue(spare),
            };
            var asked = parsed.GetValue(sizes);
            var wrists = asked is null or DocumentWriting.UsualSizes ? ImmutableArray<double>.Empty : WristsOption.Read(parsed, sizes, faults);
            LanguageOption.Check(parsed, language, faults);
            if (parsed.GetValue(folder) is not { Length: > 0 } target)
            {
                faults.Add(Fault.Of(UsageCodes.OptionMissing, "", folder.Name, ("verb", command.Name)));
                target = "";
            }
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            var (others, wrong, file) = Colourways(path, parsed.GetValue(colourway) ?? []);
            if (!wrong.IsEmpty) return output.Fail(wrong, file);
            var made = await Task.Run(() => DocumentWriting.WriteAsync(DocumentKinds.Pattern(others), path, target, request, asked is null ? null : wrists, setup, output.Language, cancel), cancel)
                .WaitAsync(cancel).ConfigureAwait(false);
            if (!made.Faults.IsEmpty) return output.Fail(made.Faults, made.File);
            var reckoned = made.Reckoned!;
            var steps = PatternSteps.Of(reckoned);
            var texts = StepTexts.Match(steps, reckoned.Piece.Pattern.Words, reckoned.Piece);
            var found = StepProof.Read(steps, texts, reckoned.Piece.Pattern.Texts, reckoned, output.Language.Pattern.Proof);
            var code = reckoned.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(PatternJson.Of(reckoned, setup, made.Written, steps, texts, found, output.Language), code)
                : output.Answer(Said(reckoned, made.Written, found, output.Language), code);
        });
        return command;
    }

    private static (ImmutableArray<Piece> Pieces, ImmutableArray<Fault> Faults, string? File) Colourways(string path, string[] files)
    {
        if (files.Length == 0) return ([], [], null);
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return ([], [.. data.Faults], null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return ([], [.. read.Faults], path);
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        foreach (var file in files)
        {
            var other = PieceFile.ReadFrom(file, known);
            if (other.Piece is not { } colourway) return ([], [.. other.Faults], file);
            if (!colourway.Order.Kinds.SequenceEqual(piece.Order.Kinds) || colourway.Beads.Length != piece.Beads.Length)
                return ([], [Fault.Of(FaultCodes.ColourwayOther, "order", colourway.Title)], file);
            pieces.Add(colourway);
        }
        return (pieces.ToImmutable(), [], null);
    }

    private static string Said(Reckoned reckoned, ImmutableArray<string> written, ImmutableArray<ProofOfText> found, Language language)
    {
        var words = language.Help;
        var lines = written.Select(f => language.Fill(words.SheetWritten, ("file", f))).ToList();
        if (!found.IsEmpty) lines.Add(words.PatternProof);
        var sentences = new PatternSentences(reckoned, language);
        lines.AddRange(found.SelectMany(text => text.Marks.Select(mark => language.Fill(words.PatternFound, ("where", text.Where), ("found", sentences.Of(mark))))));
        return string.Concat(lines.Select(line => line + "\n"));
    }
}
