using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;
using Coilwright.Core.Substitutes;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>substitute</c>: which other bead may stand in for one, and what the piece then is.</summary>
internal static class SubstituteCommand
{
    private const int Usual = 5;

    public static Command Make(Output output)
    {
        var words = output.Language.Substitutes;
        var piece = new Argument<string>("PIECE") { Description = output.Language.Help.Piece };
        var bead = new Option<string?>("--bead") { Description = words.BeadOption, HelpName = "BEAD" };
        var among = new Option<string[]>("--among") { Description = words.AmongOption, HelpName = "PIECE", AllowMultipleArgumentsPerToken = true };
        var home = new Option<string[]>("--home") { Description = words.HomeOption, HelpName = "BEAD=N" };
        var most = new Option<string?>("--most") { Description = output.Language.Fill(words.MostOption, ("usual", Usual)), HelpName = "N" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("substitute", words.Verb) { piece, bead, among, home, most, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new Request(parsed.GetRequiredValue(piece), parsed.GetValue(bead) ?? "", parsed.GetValue(among) ?? [], SparesOption.ReadHome(parsed, home, faults),
                CountOption.ReadWhole(parsed, most, Substituting.MostTried, faults) ?? Usual);
            LanguageOption.Check(parsed, language, faults);
            if (request.Bead.Length == 0) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", bead.Name, ("verb", command.Name)));
            if (request.Among.Length == 0) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", among.Name, ("verb", command.Name)));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => Look(request, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Found is not { } found) return output.Fail(made.Faults, made.File);
            var code = found.All.Any(s => s is { IsEnough: true, BringsStop: false }) ? ExitCodes.Done : ExitCodes.Stop;
            return output.IsJson ? output.Answer(SubstituteJson.Of(found, output.Language), code) : output.Answer(SubstituteText.Of(found, output.Language), code);
        });
        return command;
    }

    private static Made Look(Request request, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var read = PieceFile.ReadFrom(request.Piece, known);
        if (read.Piece is not { } piece) return new Made(null, read.Faults, request.Piece);
        ImmutableArray<string> strung = [.. piece.Order.Kinds.Distinct().Select(k => piece.Beads[k].Id)];
        if (!strung.Contains(request.Bead))
            return new Made(null, [Fault.Of(FaultCodes.WordUnknown, "--bead", request.Bead, ("known", string.Join(", ", strung)), ("nearest", NearestName.Of(request.Bead, strung) ?? ""))], null);
        var there = new Dictionary<string, Candidate>(StringComparer.Ordinal);
        foreach (var path in request.Among)
        {
            var other = PieceFile.ReadFrom(path, known);
            if (other.Piece is not { } from) return new Made(null, other.Faults, path);
            // The first description of a name counts, as when shopping.
            foreach (var b in from.Beads) there.TryAdd(b.Id, new Candidate(b, request.Home.TryGetValue(b.Id, out var have) ? have : null));
        }
        if (request.Home.Keys.FirstOrDefault(b => !there.ContainsKey(b)) is { } unknown)
            return new Made(null, [Fault.Of(FaultCodes.WordUnknown, "--home", unknown, ("known", string.Join(", ", there.Keys)), ("nearest", NearestName.Of(unknown, there.Keys) ?? ""))], null);
        var kind = piece.Order.Kinds.First(k => piece.Beads[k].Id == request.Bead);
        return new Made(new SubstitutesFound(Reckoning.Of(piece, known, null, cancel), kind, Substituting.For(piece, kind, there.Values, known, request.Most, cancel)), [], null);
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string Piece, string Bead, string[] Among, Dictionary<string, int> Home, int Most);

    /// <summary>What came of it: what was found, or what is wrong and with which file.</summary>
    private sealed record Made(SubstitutesFound? Found, IReadOnlyList<Fault> Faults, string? File);
}
