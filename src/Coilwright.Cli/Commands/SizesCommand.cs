using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Readings;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>sizes</c>: one design for several wrists, and each size written as a piece of its own.</summary>
internal static class SizesCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Help;
        var piece = new Argument<string>("PIECE") { Description = words.Piece };
        var wrists = new Option<string?>("--wrists") { Description = output.Language.Fill(words.Wrists, ("max", SizesRequest.MostWrists)), HelpName = "MM,MM" };
        var folder = new Option<string?>("--out") { Description = words.SizesOut, HelpName = "DIR" };
        var effort = new Option<string?>("--effort") { Description = output.Language.Fill(words.Effort, ("usual", SizesRequest.UsualEffort)), HelpName = "N" };
        var seed = new Option<string?>("--seed") { Description = words.Seed, HelpName = "N" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = words.Json };
        var command = new Command("sizes", words.Sizes) { piece, wrists, folder, effort, seed, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new SizesRequest(WristsOption.Read(parsed, wrists, faults), EffortOption.Read(parsed, effort, SizesRequest.UsualEffort, faults),
                SeedOption.Read(parsed, seed, 1, faults));
            LanguageOption.Check(parsed, language, faults);
            if (parsed.GetValue(folder) is "") faults.Add(Fault.Of(UsageCodes.OptionEmpty, "", folder.Name));
            if (faults.Count > 0) return output.Fail(faults, null);

            var path = parsed.GetRequiredValue(piece);
            var made = await Task.Run(() => Grade(path, parsed.GetValue(folder), request, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Sizes is not { } sizes) return output.Fail(made.Faults, made.File);
            var code = sizes.All.Any(s => s.Reckoned.Notices.Any(n => n.Severity == Severity.Stop)) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson ? output.Answer(SizesJson.Of(sizes, made.Request, output.Language, made.Written), code)
                : output.Answer(SizesText.Of(sizes, output.Language, made.Written), code);
        });
        return command;
    }

    private static Made Grade(string path, string? target, SizesRequest request, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, request, data.Faults, null, []);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new Made(null, request, read.Faults, path, []);
        if (request.WristsMm.IsEmpty) request = request with { WristsMm = UsualWrists.Of(piece, known) };
        var sizes = Grader.Of(piece, known, request, null, cancel);
        cancel.ThrowIfCancellationRequested();
        if (target is null) return new Made(sizes, request, [], path, []);
        var sentences = new SizesSentences(sizes, language);
        var written = FolderFiles.Write(target, sizes.All.Select(size => ($"{FileStem.Of(path)}-{Language.PlainNumber(size.WristMm, 4)}mm.piece.json", (ReadOnlyMemory<byte>)PieceFile.Write(sentences.OfItsOwn(size)))), cancel);
        return written.Fault is { } fault ? new Made(null, request, [fault], written.At, []) : new Made(sizes, request, [], path, written.Places);
    }

    /// <summary>What came of it: the sizes and the files they were written to, or what is wrong and with which file.</summary>
    private sealed record Made(Sizes? Sizes, SizesRequest Request, IReadOnlyList<Fault> Faults, string? File, ImmutableArray<string> Written);
}
