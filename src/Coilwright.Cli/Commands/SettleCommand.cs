using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Scenes;
using Coilwright.Core.Settle;
using Coilwright.Documents.Scenes;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>settle</c>: how a piece lies when it is worn.</summary>
internal static class SettleCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var wrist = new Option<string?>("--wrist") { Description = words.Wrist, HelpName = "MM" };
        var aspect = new Option<string?>("--aspect") { Description = output.Language.Fill(words.Aspect, ("usual", Language.PlainNumber(SettleRequest.UsualAspect, 2))), HelpName = "SHARE" };
        var taper = new Option<string?>("--taper") { Description = words.Taper, HelpName = "SHARE" };
        var arm = new Option<string?>("--arm") { Description = output.Language.Fill(words.ArmHeld, ("known", ArmOption.Words)), HelpName = "HELD" };
        var glb = new Option<string?>("--glb") { Description = words.SettleGlb, HelpName = "FILE.glb" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var command = new Command("settle", words.Settle) { piece, wrist, aspect, taper, arm, glb, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var wristMm = LengthOption.Read(parsed, wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults);
            var thick = ShareOption.Read(parsed, aspect, SettleRequest.LeastAspect, 1, faults);
            var grows = ShareOption.Read(parsed, taper, -SettleRequest.MostTaper, SettleRequest.MostTaper, faults);
            var pose = ArmOption.Read(parsed, arm, faults);
            LanguageOption.Check(parsed, language, faults);
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            var target = parsed.GetValue(glb);
            var made = await Task.Run(() => Settle(path, target is not null, at => new SettleRequest(wristMm ?? at) { Aspect = thick ?? SettleRequest.UsualAspect, Taper = grows ?? 0, Pose = pose }, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Settled is not { } settled) return output.Fail(made.Faults, made.File);
            // The file comes before the report, as everywhere. Where it lies nowhere there is nothing to write, and the report says why.
            if (target is not null && made.Model is { } model && SafeFile.Write(target, model) is { } unwritable) return output.Fail([unwritable], target);
            var code = settled.Outcome == SettleOutcome.Settled ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson
                ? output.Answer(SettleJson.Of(settled, made.Piece!, made.Choices!, output.Language), code)
                : output.Answer(SettleText.Of(settled, made.Piece!, made.Choices!, output.Language), code);
        });
        return command;
    }

    private static Made Settle(string path, bool models, Func<double, SettleRequest> request, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, null, null, data.Faults, null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new Made(null, null, null, read.Faults, path);
        var settled = Settling.Of(piece, known.Choices, request(piece.Wearer.WristMm), cancel);
        return new Made(settled, piece, known.Choices, [], path)
        {
            Model = models && settled.Lie is not null ? CoilModel.Glb(CoilScene.Of(Reckoning.Of(piece, known, new ReckonRequest { WristMm = settled.Request.WristMm }, cancel), settled)) : null,
        };
    }

    /// <summary>What came of it, or what is wrong and with which file.</summary>
    private sealed record Made(Settled? Settled, Piece? Piece, ReckoningChoices? Choices, IReadOnlyList<Fault> Faults, string? File)
    {
        /// <summary>The piece in space as it sits, where that was asked for and a rest was found.</summary>
        public byte[]? Model { get; init; }
    }
}
