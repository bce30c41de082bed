using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>scatter</c>: the same beads and groups in an order without a visible repeat, written as a piece.</summary>
internal static class ScatterCommand
{
    private const ulong UsualSeed = 1;

    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var file = new Option<string?>("--out") { Description = words.ScatterOut, HelpName = "FILE" };
        var seed = new Option<string?>("--seed") { Description = words.Seed, HelpName = "N" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var command = new Command("scatter", words.Scatter) { piece, file, seed, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var number = SeedOption.Read(parsed, seed, UsualSeed, faults);
            LanguageOption.Check(parsed, language, faults);
            if (parsed.GetValue(file) is not { Length: > 0 } target)
            {
                faults.Add(Fault.Of(UsageCodes.OptionMissing, "", file.Name, ("verb", command.Name)));
                target = "";
            }
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            var made = await Task.Run(() => Make(path, number, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            if (made.Scattered is not { } scattered) return output.Fail(made.Faults, made.File);
            cancel.ThrowIfCancellationRequested();
            if (made.Written is { } bytes && SafeFile.Write(target, bytes) is { } unwritable) return output.Fail([unwritable], target);
            var code = (scattered.After ?? scattered.Before).Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            var writtenTo = made.Written is null ? null : target;
            return output.IsJson
                ? output.Answer(ScatterJson.Of(scattered, number, output.Language, writtenTo), code)
                : output.Answer(ScatterText.Of(scattered, output.Language, writtenTo), code);
        });
        return command;
    }

    private static Made Make(string path, ulong seed, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, null, data.Faults, null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new Made(null, null, read.Faults, path);
        var scattered = Scatter.Of(piece, known, seed, cancel);
        if (scattered.Edit is not { } edit) return new Made(scattered, null, [], path);
        return new Made(scattered, PieceFile.Write(((EditOutcome.Done)PieceEditing.Apply(piece, edit, known)).Piece), [], path);
    }

    /// <summary>What came of it: the order and the piece as a file, or what is wrong and with which file.</summary>
    private sealed record Made(Scattered? Scattered, byte[]? Written, IReadOnlyList<Fault> Faults, string? File);
}
