using System.CommandLine;
using System.Text;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>listing</c>: a piece in the words of a listing, and whether it fits a buyer's wrist.</summary>
internal static class ListingCommand
{
    public static Command Make(Output output)
    {
        var words = output.Language.Listing;
        var piece = new Argument<string>("PIECE") { Description = output.Language.Help.Piece };
        var wrist = new Option<string?>("--wrist") { Description = words.WristOption, HelpName = "MM" };
        var file = new Option<string?>("--out") { Description = words.OutOption, HelpName = "FILE" };
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = output.Language.Help.Json };
        var command = new Command("listing", words.Verb) { piece, wrist, file, language, json };

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var wristMm = LengthOption.Read(parsed, wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults);
            LanguageOption.Check(parsed, language, faults);
            if (faults.Count > 0) return output.Fail(faults, null);

            var (path, target) = (parsed.GetRequiredValue(piece), parsed.GetValue(file));
            var made = await Task.Run(() => List(path, wristMm, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Listed is not { } listed) return output.Fail(made.Faults, made.File);
            if (target is not null && SafeFile.Write(target, Encoding.UTF8.GetBytes(new ListingSentences(listed.Listing, output.Language).Text() + "\n")) is { } unwritable)
                return output.Fail([unwritable], target);
            var code = listed.Listing.SaysStop || listed.Fit is { Answer: WillFit.No } ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson ? output.Answer(ListingJson.Of(listed, output.Language), code) : output.Answer(ListingText.Of(listed, output.Language, target), code);
        });
        return command;
    }

    private static Made List(string path, double? wristMm, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, data.Faults, null);
        var (cautions, broken) = DataFiles.LoadCautions(DataFiles.DefaultFolder);
        if (cautions is null) return new Made(null, broken, null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new Made(null, read.Faults, path);
        var listing = Listing.Of(Reckoning.Of(piece, known, null, cancel), cautions.SmallParts);
        return new Made(new Listed(FileStem.Of(path), listing, wristMm is { } wrist ? FitAnswer.Of(piece, known, wrist, cancel) : null, cautions), [], null);
    }

    /// <summary>What came of it: the listing, or what is wrong and with which file.</summary>
    private sealed record Made(Listed? Listed, IReadOnlyList<Fault> Faults, string? File);
}
