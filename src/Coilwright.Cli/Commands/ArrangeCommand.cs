using System.CommandLine;
using System.Globalization;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>arrange</c>: better orders under the piece's wishes, and the best written as a piece.</summary>
internal static class ArrangeCommand
{
    private const double MostSeconds = 86_400;

    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var file = new Option<string?>("--out") { Description = words.ArrangeOut, HelpName = "FILE" };
        var effort = new Option<string?>("--effort") { Description = output.Language.Fill(words.Effort, ("usual", new ArrangeRequest().Effort)), HelpName = "N" };
        var seconds = new Option<string?>("--seconds") { Description = words.Seconds, HelpName = "S" };
        var seed = new Option<string?>("--seed") { Description = words.Seed, HelpName = "N" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var command = new Command("arrange", words.Arrange) { piece, file, effort, seconds, seed, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var within = ReadSeconds(parsed.GetValue(seconds), seconds.Name, faults);
            // With a time to keep to, the time alone ends the search.
            var request = new ArrangeRequest(EffortOption.Read(parsed, effort, within is not null ? ArrangeRequest.MostEffort : new ArrangeRequest().Effort, faults),
                SeedOption.Read(parsed, seed, new ArrangeRequest().Seed, faults));
            if (within is not null && parsed.GetValue(effort) is { } both) faults.Add(Fault.Of(UsageCodes.NotBoth, effort.Name, both, ("other", seconds.Name)));
            LanguageOption.Check(parsed, language, faults);
            if (parsed.GetValue(file) is not { Length: > 0 } target)
            {
                faults.Add(Fault.Of(UsageCodes.OptionMissing, "", file.Name, ("verb", command.Name)));
                target = "";
            }
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            // The time is up is not Ctrl-C: what was found till then is an answer.
            using var timed = CancellationTokenSource.CreateLinkedTokenSource(cancel);
            if (within is { } time) timed.CancelAfter(time);
            var made = await Task.Run(() => Arrange(path, request, timed.Token), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Arranged is not { } arranged) return output.Fail(made.Faults, made.File);
            if (made.Written is { } bytes && SafeFile.Write(target, bytes) is { } unwritable) return output.Fail([unwritable], target);
            var after = arranged.Ideas.IsEmpty ? arranged.Before : BestOf(arranged).After;
            var code = after.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(ArrangeJson.Of(arranged, request, output.Language, made.Written is null ? null : target), code)
                : output.Answer(ArrangeText.Of(arranged, output.Language, target), code);
        });
        return command;
    }

    private static Made Arrange(string path, ArrangeRequest request, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, null, data.Faults, null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new Made(null, null, read.Faults, path);
        var arranged = Arranging.Of(piece, known, request, null, cancel);
        if (arranged.Ideas.IsEmpty) return new Made(arranged, null, [], path);
        var done = (EditOutcome.Done)PieceEditing.Apply(piece, BestOf(arranged).Edit, known);
        return new Made(arranged, PieceFile.Write(done.Piece), [], path);
    }

    // The one that lies least against the wish: the smallest cure may be better in full than what the tables hold for the best.
    private static Idea BestOf(Arranged arranged) => arranged.Ideas.MinBy(i => i.Judged.Loss)!;

    private static TimeSpan? ReadSeconds(string? text, string option, List<Fault> faults)
    {
        if (text is null) return null;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds is > 0 and <= MostSeconds)
            return TimeSpan.FromSeconds(seconds);
        faults.Add(Fault.Of(UsageCodes.SecondsForm, option, text, ("max", Language.PlainNumber(MostSeconds, 0))));
        return null;
    }

    /// <summary>What came of it: the ideas and the best as a file, or what is wrong and with which file.</summary>
    private sealed record Made(Arranged? Arranged, byte[]? Written, IReadOnlyList<Fault> Faults, string? File);
}
