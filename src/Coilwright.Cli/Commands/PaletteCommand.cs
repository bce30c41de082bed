using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Palettes;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Storage;

namespace Coilwright.Cli.Commands;

/// <summary><c>palette</c>: how the colours of a piece go together.</summary>
internal static class PaletteCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var wrist = new Option<string?>("--wrist") { Description = words.Wrist, HelpName = "MM" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var command = new Command("palette", output.Language.Palette.Verb) { piece, wrist, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var wristMm = LengthOption.Read(parsed, wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults);
            LanguageOption.Check(parsed, language, faults);
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            var made = await Task.Run(() => Look(path, wristMm, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Report is not { } report) return output.Fail(made.Faults, made.File);
            return output.IsJson ? output.Answer(PaletteJson.Of(report, output.Language), ExitCodes.Done) : output.Answer(PaletteText.Of(report, output.Language), ExitCodes.Done);
        });
        return command;
    }

    private static Made Look(string path, double? wristMm, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var read = PieceFile.ReadFrom(path, known);
        return read.Piece is { } piece
            ? new Made(PaletteReport.Of(Reckoning.Of(piece, known, new ReckonRequest { WristMm = wristMm }, cancel)), [], null)
            : new Made(null, read.Faults, path);
    }

    /// <summary>What came of it: the palette, or what is wrong and with which file.</summary>
    private sealed record Made(PaletteReport? Report, IReadOnlyList<Fault> Faults, string? File);
}
