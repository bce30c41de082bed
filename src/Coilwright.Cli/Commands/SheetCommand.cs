using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Scenes;

namespace Coilwright.Cli.Commands;

/// <summary><c>sheet</c>: the pattern sheet of a piece, as PDF, as HTML, and its drawings.</summary>
internal static class SheetCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var options = new DocumentOptions(output.Language);
        var glb = new Option<bool>("--glb") { Description = words.SheetGlb };
        var command = options.Verb("sheet", words.Sheet, glb);
        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            if (options.Read(parsed, command, faults) is not { } asked) return output.Fail(faults, null);
            var made = await asked.WriteAsync(DocumentKinds.PatternSheet, output.Language, cancel, parsed.GetValue(glb) ? CoilModel.Files : null).ConfigureAwait(false);
            if (!made.Faults.IsEmpty) return output.Fail(made.Faults, made.File);
            var code = made.Reckoned!.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(SheetJson.Of(made.Reckoned, asked.Setup, made.Written, output.Language), code)
                : output.Answer(string.Concat(made.Written.Select(f => output.Language.Fill(words.SheetWritten, ("file", f)) + "\n")), code);
        });
        return command;
    }
}
