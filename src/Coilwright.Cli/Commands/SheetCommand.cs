using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Scenes;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>sheet</c>: the pattern sheet of a piece, as PDF, as HTML, and its drawings.</summary>
internal static class SheetCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var options = new DocumentOptions(output.Language);
        var glb = new Option<bool>("--glb") { Description = words.SheetGlb };
        var settles = SettledOption.Make(output.Language, glb);
        var command = options.Verb("sheet", words.Sheet, glb, settles);
        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var (models, asItSits) = (parsed.GetValue(glb), parsed.GetValue(settles));
            if (asItSits && !models) faults.Add(Fault.Of(UsageCodes.OnlyWith, settles.Name, "", ("other", glb.Name)));
            if (options.Read(parsed, command, faults) is not { } asked) return output.Fail(faults, null);
            var made = await asked.WriteAsync(DocumentKinds.PatternSheet, output.Language, cancel, models ? Models : null).ConfigureAwait(false);
            if (!made.Faults.IsEmpty) return output.Fail(made.Faults, made.File);
            var code = made.Reckoned!.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(SheetJson.Of(made.Reckoned, asked.Setup, made.Written, output.Language), code)
                : output.Answer(string.Concat(made.Written.Select(f => output.Language.Fill(words.SheetWritten, ("file", f)) + "\n")), code);

            IEnumerable<DocumentFile> Models(DocumentSource source)
            {
                if (!asItSits) return CoilModel.Files(source.Reckoned);
                var (settled, fault) = SettledOption.Settle(source.Piece, source.Data, asked.Reckon.WristMm, output.Language, cancel);
                return fault is null ? CoilModel.Files(source.Reckoned, settled) : [new DocumentFile(CoilModel.SettledFile, default, [fault])];
            }
        });
        return command;
    }
}
