using System.Collections.Immutable;
using System.IO.Compression;
using Coilwright.Core.Faults;
using Coilwright.Documents;
using Coilwright.Documents.Pages;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Hosting;
using Coilwright.Web.Jobs;

namespace Coilwright.Web.Papers;

/// <summary>Many pattern sheets made at one go, into one file to save.</summary>
/// <param name="Maker">Makes one.</param>
/// <param name="Sheets">Each piece with how its sheet is wanted.</param>
/// <param name="Of">Title of the piece that all of them are of; null when they are of several.</param>
public sealed record SheetsJob(SheetMaker Maker, ImmutableArray<(ShelvedPiece Piece, SheetChoice Choice)> Sheets, string? Of) : JobOrder
{
    /// <summary>A piece's sheet on every paper: A4 and Letter, usual and large letters, in colour and grey.</summary>
    public static SheetsJob OnEveryPaper(SheetMaker maker, ShelvedPiece piece, SheetChoice choice) => new(maker,
        [.. from paper in (Paper[])[Paper.A4, Paper.Letter] from large in (bool[])[false, true] from grey in (bool[])[false, true]
            select (piece, choice with { Setup = choice.Setup with { Paper = paper, LargePrint = large, Greyscale = grey } })], piece.Piece.Title);

    /// <summary>The sheets of several pieces, each for its own wrist, otherwise alike.</summary>
    public static SheetsJob OfPieces(SheetMaker maker, IEnumerable<ShelvedPiece> pieces, SheetChoice choice) =>
        new(maker, [.. pieces.Select(p => (p, choice with { WristMm = p.Piece.Wearer.WristMm }))], null);

    /// <inheritdoc/>
    public override object Run(JobHand hand)
    {
        using var bytes = new MemoryStream();
        var notMade = ImmutableArray.CreateBuilder<(string, Fault)>();
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var made = 0;
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
            for (var i = 0; i < Sheets.Length; i++)
            {
                hand.Cancel.ThrowIfCancellationRequested();
                hand.Report((double)i / Sheets.Length, new SheetsSoFar(made, Sheets.Length));
                var (piece, choice) = Sheets[i];
                var sheet = Maker.Make(DocumentKinds.PatternSheet, piece, choice);
                foreach (var fault in sheet.Faults) notMade.Add((piece.Piece.Title, fault));
                if (sheet.Find(".pdf") is not { } pdf) continue;
                using (var entry = zip.CreateEntry(Free(NameOf(piece, choice), names), CompressionLevel.Fastest).Open()) entry.Write(pdf.Bytes.Span);
                made++;
            }
        return new SheetsMade(bytes.ToArray(), made, notMade.ToImmutable());
    }

    private static string NameOf(ShelvedPiece piece, SheetChoice choice) => PieceFiles.FileName(piece.Piece.Title) + "-" + choice.Setup.Paper.Name.ToLowerInvariant()
        + (choice.Setup.LargePrint ? "-large" : "") + (choice.Setup.Greyscale ? "-grey" : "");

    // Two pieces may have one title.
    private static string Free(string stem, HashSet<string> taken)
    {
        var free = stem + ".pdf";
        for (var n = 2; !taken.Add(free); n++) free = $"{stem}-{n}.pdf";
        return free;
    }
}

/// <summary>How many are made so far, of how many.</summary>
public sealed record SheetsSoFar(int Made, int Of);

/// <summary>The sheets in one file.</summary>
/// <param name="Zip">The file.</param>
/// <param name="Made">How many are in it.</param>
/// <param name="NotMade">What could not be made, by the piece's title, and why.</param>
public sealed record SheetsMade(byte[] Zip, int Made, ImmutableArray<(string Title, Fault Why)> NotMade);
