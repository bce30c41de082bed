using System.CommandLine;
using System.Text;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Settle;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.TurnRows;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>reckon</c>: every reading of a piece, as a report or as JSON, and its turn rows drawn.</summary>
internal static class ReckonCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var wrist = new Option<string?>("--wrist") { Description = words.Wrist, HelpName = "MM" };
        var worn = new Option<string?>("--worn-circumference") { Description = words.WornCircumference, HelpName = "MM" };
        var seed = new Option<string?>("--seed") { Description = words.Seed, HelpName = "N" };
        var settles = new Option<bool>("--settled") { Description = words.Settled };
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var draw = new Option<string?>("--draw") { Description = words.Draw, HelpName = "FILE.svg" };
        var language = LanguageOption.Make(output.Language);
        var command = new Command("reckon", words.Reckon) { piece, wrist, worn, settles, seed, language, json, draw };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new ReckonRequest
            {
                WristMm = LengthOption.Read(parsed, wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults),
                WornCircumferenceMm = LengthOption.Read(parsed, worn, 0, Reckoning.LargestCircumferenceMm, faults),
                Seed = SeedOption.Read(parsed, seed, new ReckonRequest().Seed, faults),
            };
            var settled = parsed.GetValue(settles);
            if (settled && request.WornCircumferenceMm is not null) faults.Add(Fault.Of(UsageCodes.NotBoth, settles.Name, "", ("other", worn.Name)));
            var target = parsed.GetValue(draw);
            // Under the name of another kind of picture no program would open it.
            if (target is not null && Path.GetExtension(target) is { Length: > 0 } ending && !ending.Equals(".svg", StringComparison.OrdinalIgnoreCase)) faults.Add(Fault.Of(UsageCodes.DrawingKind, draw.Name, target));
            LanguageOption.Check(parsed, language, faults);
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            // Reading may wait on a pipe and reckoning may take long; neither holds up Ctrl-C.
            var made = await Task.Run(() => Reckon(path, request, settled, target is not null, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            if (made.Reckoned is not { } reckoned) return output.Fail(made.Faults, made.File);

            // The file comes before the report, and nothing stops between the two: a report is only seen when all is done.
            if (target is not null && SafeFile.Write(target, made.Drawing) is { } unwritable) return output.Fail([unwritable], target);
            var code = reckoned.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(ReckonJson.Of(reckoned, made.Request ?? request, output.Language, made.Settled), code)
                : output.Answer(ReckonText.Of(reckoned, made.Request ?? request, output.Language, target, made.Settled), code);
        });
        return command;
    }

    private static Made Reckon(string path, ReckonRequest request, bool settles, bool draws, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, [], data.Faults, null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new Made(null, [], read.Faults, path);
        if (request.WornCircumferenceMm < Reckoning.LeastCircumferenceMm(piece))
            return new Made(null, [], [Fault.Of(UsageCodes.LengthBounds, "--worn-circumference", Language.PlainNumber(request.WornCircumferenceMm.Value, 2),
                ("min", Language.PlainNumber(Math.Ceiling(Reckoning.LeastCircumferenceMm(piece)), 0)),
                ("max", Language.PlainNumber(Reckoning.LargestCircumferenceMm, 0)))], null);
        var settled = settles ? Settling.Of(piece, known.Choices, new SettleRequest(request.WristMm ?? piece.Wearer.WristMm), cancel) : null;
        // Where no rest was found it is reckoned quickly, and the report says so.
        if (settled?.Worn is { } sits) request = request with { WornCircumferenceMm = sits.CircumferenceMm };
        var reckoned = Reckoning.Of(piece, known, request, cancel);
        if (settled is not null) reckoned = SettledNotices.Among(reckoned, settled);
        byte[] drawing = draws
            ? Encoding.UTF8.GetBytes(SvgCanvas.Write(TurnRowsDrawing.Of(reckoned, new TurnRowsOptions { Language = language })))
            : [];
        cancel.ThrowIfCancellationRequested();
        return new Made(reckoned, drawing, [], path) { Settled = settled, Request = request };
    }

    /// <summary>What came of it: the readings and the drawing, or what is wrong and with which file.</summary>
    private sealed record Made(Reckoned? Reckoned, byte[] Drawing, IReadOnlyList<Fault> Faults, string? File)
    {
        /// <summary>How it sits, where that was asked.</summary>
        public Settled? Settled { get; init; }

        /// <summary>What it was reckoned with.</summary>
        public ReckonRequest? Request { get; init; }
    }
}
