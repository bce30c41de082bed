using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Errata;
using Coilwright.Documents.Pages;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>errata</c>: what a pattern says otherwise than an earlier version of it, as PDF and as HTML.</summary>
internal static class ErrataCommand
{
    public static Command Make(Output output)
    {
        var (words, help) = (output.Language.Errata, output.Language.Help);
        var old = new Argument<string>("OLD") { Description = words.OldPiece };
        var now = new Argument<string>("NEW") { Description = words.NewPiece };
        var folder = new Option<string?>("--out") { Description = help.SheetOut, HelpName = "DIR" };
        var paper = new SetupOptions(output.Language);
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = help.Json };
        var command = new Command("errata", words.Verb) { old, now, folder };
        paper.AddTo(command);
        command.Add(language);
        command.Add(json);

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var setup = paper.Read(parsed, faults);
            LanguageOption.Check(parsed, language, faults);
            var target = parsed.GetValue(folder) ?? "";
            if (target.Length == 0) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", folder.Name, ("verb", command.Name)));
            if (faults.Count > 0) return output.Fail(faults, null);

            var (before, after) = (parsed.GetRequiredValue(old), parsed.GetRequiredValue(now));
            var made = await Task.Run(() => Write(before, after, target, setup, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            if (made.Changes is not { } changes) return output.Fail(made.Faults, made.File);
            if (output.IsJson) return output.Answer(ErrataJson.Of(changes, made.Written, output.Language), ExitCodes.Done);
            var nothing = new ErrataSentences(changes, output.Language).IsEmpty ? words.Nothing + "\n" : "";
            return output.Answer(nothing + string.Concat(made.Written.Select(f => output.Language.Fill(help.SheetWritten, ("file", f)) + "\n")), ExitCodes.Done);
        });
        return command;
    }

    private static Made Write(string old, string now, string target, PageSetup setup, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, [.. data.Faults], null);
        var (before, after) = (PieceFile.ReadFrom(old, known), PieceFile.ReadFrom(now, known));
        if (before.Piece is not { } was) return new Made(null, [.. before.Faults], old);
        if (after.Piece is not { } here) return new Made(null, [.. after.Faults], now);
        var changes = PatternChanges.Of(Reckoning.Of(was, known, null, cancel), Reckoning.Of(here, known, null, cancel));
        DocumentFile[] files = [.. DocumentFiles.Of("errata", ErrataDocument.Of(changes, language), setup)];
        if (files.SelectMany(f => f.Faults).Select(f => f with { Field = "" }).Distinct().ToImmutableArray() is { IsEmpty: false } unprintable) return new Made(null, unprintable, now);
        var written = FolderFiles.Write(target, files.Select(f => (FileStem.Of(now) + "-" + f.Name, f.Bytes)), cancel);
        return written.Fault is { } fault ? new Made(null, [fault], written.At) : new Made(changes, [], null) { Written = written.Places };
    }

    /// <summary>What came of it: the changes and the files, or what is wrong and with which file.</summary>
    private sealed record Made(PatternChanges? Changes, ImmutableArray<Fault> Faults, string? File)
    {
        public ImmutableArray<string> Written { get; init; } = [];
    }
}
