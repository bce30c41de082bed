using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Pages;
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
            var wrists = asked is null or DocumentWriting.UsualSizes ? ImmutableArray<double>.Empty : WristsOption.Read(parsed, sizes, faults);
            LanguageOption.Check(parsed, language, faults);
            if (parsed.GetValue(folder) is not { Length: > 0 } target)
            {
                faults.Add(Fault.Of(UsageCodes.OptionMissing, "", folder.Name, ("verb", command.Name)));
                target = "";
            }
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            var made = await Task.Run(() => DocumentWriting.WriteAsync(DocumentKinds.PatternSheet, path, target, request, asked is null ? null : wrists, setup, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            if (!made.Faults.IsEmpty) return output.Fail(made.Faults, made.File);
            var code = made.Reckoned!.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(SheetJson.Of(made.Reckoned, setup, made.Written, output.Language), code)
                : output.Answer(string.Concat(made.Written.Select(f => output.Language.Fill(words.SheetWritten, ("file", f)) + "\n")), code);
        });
        return command;
    }
}
