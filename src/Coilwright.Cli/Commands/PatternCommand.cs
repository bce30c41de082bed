using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>pattern</c>: the written pattern of a piece, as PDF and as HTML, and what the proof-reader finds in its maker's own words.</summary>
internal static class PatternCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var options = new DocumentOptions(output.Language);
        var colourway = ColourwayOption.Make(output.Language);
        var cover = CoverOption.Make(output.Language);
        var command = options.Verb("pattern", words.Pattern, colourway, cover);
        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            if (options.Read(parsed, command, faults) is not { } asked) return output.Fail(faults, null);
            var (others, wrong, file) = ColourwayOption.Read(asked.Path, parsed.GetValue(colourway) ?? []);
            if (!wrong.IsEmpty) return output.Fail(wrong, file);
            var picture = parsed.GetValue(cover);
            var (onCover, unfit) = CoverOption.Read(picture);
            if (unfit is not null) return output.Fail([unfit], picture);
            var made = await asked.WriteAsync(DocumentKinds.Pattern(others, onCover), output.Language, cancel).ConfigureAwait(false);
            if (!made.Faults.IsEmpty) return output.Fail(made.Faults, made.File);
            var reckoned = made.Reckoned!;
            var steps = PatternSteps.Of(reckoned);
            var texts = StepTexts.Match(steps, reckoned.Piece.Pattern.Words, reckoned.Piece);
            var found = StepProof.Read(steps, texts, reckoned.Piece.Pattern.Texts, reckoned, output.Language.Pattern.Proof);
            var code = reckoned.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(PatternJson.Of(reckoned, asked.Setup, made.Written, steps, texts, found, output.Language), code)
                : output.Answer(Said(reckoned, made.Written, found, output.Language), code);
        });
        return command;
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
