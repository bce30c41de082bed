using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Tray;
using Coilwright.Documents.Tables;
using Coilwright.Storage;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Tray;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>tray</c>: the bead tray of a bench's folder, asked, filled and saved.</summary>
internal static class TrayCommand
{
    private const int Usual = 40, Most = 100_000;

    public static Command Make(Output output)
    {
        var words = output.Language.TrayList;
        var shelf = new Option<string?>("--shelf") { Description = words.ShelfOption, HelpName = "FOLDER" };
        var find = new Option<string?>("--find") { Description = words.FindOption, HelpName = "TEXT" };
        var most = new Option<string?>("--most") { Description = output.Language.Fill(words.MostOption, ("usual", Usual)), HelpName = "N" };
        var list = new Option<string?>("--in") { Description = words.InOption, HelpName = "FILE" };
        var column = new Option<string[]>("--column") { Description = words.ColumnOption, HelpName = "HEAD=NAME" };
        var take = new Option<bool>("--take") { Description = words.TakeOption };
        var file = new Option<string?>("--out") { Description = words.OutOption, HelpName = "FILE" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("tray", words.Verb) { shelf, find, most, list, column, take, file, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new Request(parsed.GetValue(shelf) ?? "", parsed.GetValue(find), CountOption.ReadWhole(parsed, most, Most, faults) ?? Usual, parsed.GetValue(list),
                parsed.GetValue(column) ?? [], parsed.GetValue(take), parsed.GetValue(file));
            LanguageOption.Check(parsed, language, faults);
            if (request.Folder.Length == 0) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", shelf.Name, ("verb", command.Name)));
            if (request.List is null && (request.Takes || request.Columns.Length > 0)) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", list.Name, ("verb", command.Name)));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => AskAsync(request, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            if (made.Told is not { } told) return output.Fail(made.Faults, made.File);
            var code = told.Import is { IsSound: false } ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson ? output.Answer(TrayJson.Of(told, output.Language), code) : output.Answer(TrayText.Of(told, output.Language), code);
        });
        return command;
    }

    private static async Task<Made> AskAsync(Request request, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var (families, broken) = DataFiles.LoadColourFamilies(DataFiles.DefaultFolder);
        if (families is null) return new Made(null, broken, null);
        var path = Path.Combine(request.Folder, SqliteShelfOptions.FileName);
        // Makes no shelf where there is none.
        if (ShelfStock.Missing(request.Folder, path) is { } missing) return new Made(null, [missing], File.Exists(request.Folder) ? request.Folder : path);
        var opening = SqliteShelf.Open(new SqliteShelfOptions { Folder = request.Folder }, known, TimeProvider.System);
        if (opening is not ShelfOpening.Opened { Shelf: var shelf }) return new Made(null, [((ShelfOpening.NotOpened)opening).Why], path);
        using (shelf)
        {
            try
            {
                TrayTable? rows = null;
                TrayMatching? matching = null;
                if (request.List is { } list)
                {
                    var read = TrayFile.ReadFrom(list, cancel);
                    if (read.Table is not { } table) return new Made(null, [read.Fault!], list);
                    (matching, var unknown) = Match(rows = table, request.Columns);
                    if (matching is null) return new Made(null, [unknown!], null);
                }
                var (kinds, import, refused) = await TakeAsync(shelf, rows, matching, request.Takes, known, cancel).ConfigureAwait(false);
                if (refused is not null) return new Made(null, [refused], path);
                if (import is { Faults.IsEmpty: false }) return new Made(null, import.Faults, request.List);
                var index = new TrayIndex(kinds, TrayVocabulary.All, families);
                if (request.File is { } target && SafeFile.Write(target, target.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) ? TrayList.Xlsx(index.Kinds) : TrayList.Csv(index.Kinds)) is { } unwritable)
                    return new Made(null, [unwritable], target);
                var found = request.Find is not null || (request.List is null && request.File is null) ? index.Find(new TrayQuestion { Text = request.Find ?? "" }, request.Most) : null;
                return new Made(new TrayTold(index.Kinds.Length, found, rows is null ? [] : [.. rows.Heads.Zip(matching!.Columns)], import, request.Takes && import is { IsSound: true }, request.File), [], null);
            }
            catch (ShelfUnreadableException e)
            {
                return new Made(null, [e.Why], path);
            }
        }
    }

    /// <summary>Looks a list through and, when she wants and nothing is wrong, takes it in.</summary>
    private static async Task<(ImmutableArray<TrayKind> Kinds, TrayImport? Import, Fault? Refused)> TakeAsync(IBeadTray tray, TrayTable? rows, TrayMatching? matching, bool takes, ReckoningData data, CancellationToken cancel)
    {
        while (true)
        {
            var news = await tray.SinceAsync(0, cancel).ConfigureAwait(false);
            if (rows is null) return (news.Put, null, null);
            var import = TrayReading.Read(rows, matching!, news.Put.ToDictionary(k => k.Key, StringComparer.Ordinal), TrayVocabulary.All, data, cancel);
            if (!takes || !import.IsSound) return (news.Put, import, null);
            cancel.ThrowIfCancellationRequested();
            // From here on nothing stops between what is kept and what is said of it.
            switch (await tray.ChangeAsync(news.Revision, import.Edits, CancellationToken.None).ConfigureAwait(false))
            {
                case TrayAnswer.Kept:
                    var put = import.Edits.OfType<TrayEdit.Put>().ToDictionary(p => p.Key, p => p.Kind, StringComparer.Ordinal);
                    return ([.. news.Put.Where(k => !put.ContainsKey(k.Key)), .. put.Values], import, null);
                case TrayAnswer.Refused refused:
                    return ([], null, refused.Why);
                case TrayAnswer.NotKept not:
                    return ([], null, not.Why);
                default:
                    // Somebody changed one of its kinds meanwhile: it is looked through again, with what is there now.
                    continue;
            }
        }
    }

    private static (TrayMatching? Matching, Fault? Fault) Match(TrayTable table, string[] columns)
    {
        var matching = TrayMatching.Of(table.Heads, TrayVocabulary.All);
        foreach (var text in columns)
        {
            var cut = text.LastIndexOf('=');
            var (head, name) = cut < 0 ? (text, "") : (text[..cut].Trim(), text[(cut + 1)..].Trim());
            var at = table.Heads.IndexOf(head, StringComparer.OrdinalIgnoreCase);
            if (at < 0) return (null, Fault.Of(FaultCodes.WordUnknown, "--column", head, ("known", string.Join(", ", table.Heads)), ("nearest", NearestName.Of(head, table.Heads) ?? "")));
            if (TrayColumns.Find(name) is not { } column)
                return (null, Fault.Of(FaultCodes.WordUnknown, "--column", name, ("known", string.Join(", ", TrayColumns.Names)), ("nearest", NearestName.Of(name, TrayColumns.Names) ?? "")));
            matching = matching.With(at, column);
        }
        return (matching, null);
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string Folder, string? Find, int Most, string? List, string[] Columns, bool Takes, string? File);

    /// <summary>What came of it, or what is wrong and with which file.</summary>
    private sealed record Made(TrayTold? Told, IReadOnlyList<Fault> Faults, string? File);
}
