using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Cli.Calling;
using Coilwright.Cli.Reports;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Listings;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Packs;
using Coilwright.Documents.Pages;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Commands;

/// <summary><c>publish</c>: everything to sell a pattern with, in one zip.</summary>
internal static class PublishCommand
{
    public static Command Make(Output output)
    {
        var (words, help) = (output.Language.Publish, output.Language.Help);
        var piece = new Argument<string>("PIECE") { Description = help.Piece };
        var file = new Option<string?>("--out") { Description = words.OutOption, HelpName = "FILE" };
        var setup = new SetupOptions(output.Language);
        var pixels = new Option<string[]>("--pixels") { Description = output.Language.Fill(words.PixelsOption, ("usual", PixelsOption.Usual)), HelpName = "WxH" };
        var white = new Option<bool>("--white") { Description = words.WhiteOption };
        var colourway = ColourwayOption.Make(output.Language);
        var cover = CoverOption.Make(output.Language);
        var settles = SettledOption.Make(output.Language);
        var language = LanguageOption.Make(output.Language);
        var json = new Option<bool>(Call.JsonFlag) { Description = help.Json };
        var command = new Command("publish", words.Verb) { piece, file };
        setup.AddTo(command);
        foreach (var option in (Option[])[colourway, cover, pixels, white, settles, language, json]) command.Add(option);

        command.SetAction(async (parsed, cancel) =>
        {
            var faults = new List<Fault>();
            var request = new Request(parsed.GetRequiredValue(piece), parsed.GetValue(file) ?? "", setup.Read(parsed, faults), PixelsOption.Read(parsed, pixels, faults), parsed.GetValue(white), parsed.GetValue(colourway) ?? [], parsed.GetValue(cover), parsed.GetValue(settles));
            LanguageOption.Check(parsed, language, faults);
            if (request.Target.Length == 0) faults.Add(Fault.Of(UsageCodes.OptionMissing, "", file.Name, ("verb", command.Name)));
            if (faults.Count > 0) return output.Fail(faults, null);

            var made = await Task.Run(() => Pack(request, output.Language, cancel), cancel).WaitAsync(cancel).ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            if (made.Pack is not { } pack) return output.Fail(made.Faults, made.File);
            if (SafeFile.Write(request.Target, pack.Zip.Span) is { } unwritable) return output.Fail([unwritable], request.Target);
            var code = made.Reckoned!.Notices.Any(n => n.Severity == Severity.Stop) ? ExitCodes.Stop : ExitCodes.Done;
            return output.IsJson
                ? output.Answer(PublishJson.Of(made.Reckoned, pack, request.Target, output.Language), code)
                : output.Answer(output.Language.Fill(words.Written, ("file", request.Target), ("files", pack.Files.Length + 1)) + "\n", code);
        });
        return command;
    }

    private static Made Pack(Request request, Language language, CancellationToken cancel)
    {
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new Made(null, null, data.Faults, null);
        var (cautions, broken) = DataFiles.LoadCautions(DataFiles.DefaultFolder);
        if (cautions is null) return new Made(null, null, broken, null);
        var read = PieceFile.ReadFrom(request.Piece, known);
        if (read.Piece is not { } piece) return new Made(null, null, read.Faults, request.Piece);
        var (colourways, wrong, file) = ColourwayOption.Read(request.Piece, request.Colourways);
        if (!wrong.IsEmpty) return new Made(null, null, wrong, file);
        var (cover, unfit) = CoverOption.Read(request.Cover);
        if (unfit is not null) return new Made(null, null, [unfit], request.Cover);
        var (settled, restless) = request.AsItSits ? SettledOption.Settle(piece, known, null, language, cancel) : default;
        if (restless is not null) return new Made(null, null, [restless], request.Piece);
        var reckoned = Reckoning.Of(piece, known, null, cancel);
        var pack = PublishPack.Of(new PackRequest
        {
            Listing = Listing.Of(reckoned, cautions.SmallParts),
            Sizes = piece.Order.Count > SizesRequest.MostBeadsUnasked ? null : Grader.Of(piece, known, new SizesRequest(UsualWrists.Few(piece, known)), null, cancel),
            Colourways = colourways,
            Cover = cover,
            Settled = settled,
            Setup = request.Setup,
            Language = language,
            Pixels = request.Pixels,
            Ground = request.OnWhite ? new Srgb(255, 255, 255) : Palette.Colour.Paper,
            Stem = FileStem.Of(request.Piece),
            PieceFormat = PieceFile.Format,
        }, cancel);
        return pack.Faults.IsEmpty ? new Made(pack, reckoned, [], null) : new Made(null, null, pack.Faults, request.Piece);
    }

    /// <summary>What was asked for.</summary>
    private sealed record Request(string Piece, string Target, PageSetup Setup, ImmutableArray<(int WidthPx, int HeightPx)> Pixels, bool OnWhite, string[] Colourways, string? Cover, bool AsItSits);

    /// <summary>What came of it: the pack, or what is wrong and with which file.</summary>
    private sealed record Made(MadePack? Pack, Reckoned? Reckoned, IReadOnlyList<Fault> Faults, string? File);
}
