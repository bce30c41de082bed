using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Scenes;
using Coilwright.Core.Settle;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Patterns;
using Coilwright.Documents.Scenes;
using Coilwright.Documents.Tables;
using Coilwright.Wording;

namespace Coilwright.Documents.Packs;

/// <summary>What a pack is made of and how.</summary>
public sealed record PackRequest
{
    /// <summary>Sizes of pictures that shops and phones show well, where none is asked for: landscape, square and portrait. Our choice.</summary>
    public static ImmutableArray<(int WidthPx, int HeightPx)> UsualPixels { get; } = [(1600, 1200), (1200, 1200), (1080, 1350)];

    /// <summary>Most sizes of pictures in one pack. Our choice.</summary>
    public const int MostSizes = 12;

    /// <summary>The piece, as a buyer is told of it, with its readings.</summary>
    public required Listing Listing { get; init; }

    /// <summary>What the design takes on other wrists; null leaves that out.</summary>
    public Sizes? Sizes { get; init; }

    /// <summary>The same order in other colours, for the pattern.</summary>
    public ImmutableArray<Piece> Colourways { get; init; } = [];

    /// <summary>A picture for the pattern's cover, also cropped to every size; null has the coil drawn there.</summary>
    public CoverPicture? Cover { get; init; }

    /// <summary>How the same piece lies on its wearer's wrist, to have its model as it sits; a rest was found. Null has it as reckoned.</summary>
    public Settled? Settled { get; init; }

    /// <summary>How its documents are printed. Pictures are for shops, and stay in full colour.</summary>
    public PageSetup Setup { get; init; } = new();

    /// <summary>The language.</summary>
    public required Language Language { get; init; }

    /// <summary>Sizes of the pictures, each of which is allowed (<see cref="PixelFrame.IsAllowed"/>) and stands once.</summary>
    public ImmutableArray<(int WidthPx, int HeightPx)> Pixels { get; init; } = UsualPixels;

    /// <summary>What the pictures are drawn on.</summary>
    public Srgb Ground { get; init; } = Palette.Colour.Paper;

    /// <summary>What the names of its documents begin with, as <c>my-bracelet</c>.</summary>
    public required string Stem { get; init; }

    /// <summary>Format of the piece's file, as the manifest tells it.</summary>
    public required string PieceFormat { get; init; }

    /// <summary>When it was made; null leaves it out, so that the same piece is the same pack on every day.</summary>
    public DateTimeOffset? Made { get; init; }
}

/// <summary>A pack, or why there is none.</summary>
/// <param name="Zip">The file; empty when there are faults.</param>
/// <param name="Files">What is in it, without its manifest, in order.</param>
/// <param name="Faults">What stands in the way; empty when it was made.</param>
public sealed record MadePack(ReadOnlyMemory<byte> Zip, ImmutableArray<PackedFile> Files, ImmutableArray<Fault> Faults);

/// <summary>Everything to sell a piece's pattern with, in one zip: each document as PDF and web page, pictures in every size, materials, listing, manifest.</summary>
/// <remarks>The same request gives the same bytes. A document that cannot be made is left out of no pack: then there is none, since half a pack would be sold as a whole one.</remarks>
public static class PublishPack
{
    // The first day that the format knows. A day of its own would make every pack another file.
    private static readonly DateTimeOffset NoDay = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    // A plain file that its owner may write and all may read, as Unix notes it.
    private const int PlainFile = (0x8000 | 0x1a4) << 16;

    // What is in it, in this order.
    private static readonly ImmutableArray<Func<PackRequest, CancellationToken, IEnumerable<(PackedFile? File, ImmutableArray<Fault> Faults)>>> Parts = [Documents, Pictures, Models, Materials, ListingText];

    /// <summary>Makes a pack.</summary>
    public static MadePack Of(PackRequest request, CancellationToken cancel = default)
    {
        var files = ImmutableArray.CreateBuilder<PackedFile>();
        var faults = new List<Fault>();
        foreach (var (file, wrong) in Parts.SelectMany(part => part(request, cancel)))
        {
            cancel.ThrowIfCancellationRequested();
            faults.AddRange(wrong);
            if (file is not null) files.Add(file);
        }
        // Where on a page or in a picture such a text would have stood says nothing about the piece; each is told once.
        if (faults.Count > 0) return new MadePack(default, [], [.. faults.Select(f => f with { Field = "" }).Distinct()]);
        var all = files.ToImmutable();
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8))
        {
            foreach (var file in all) Add(zip, file.Name, file.Bytes.Span);
            Add(zip, PackManifest.Name, PackManifest.Of(request, all));
        }
        return new MadePack(bytes.ToArray(), all, []);
    }

    private static IEnumerable<(PackedFile?, ImmutableArray<Fault>)> Documents(PackRequest request, CancellationToken cancel)
    {
        var words = request.Language.Publish;
        foreach (var kind in DocumentKinds.Sold(request.Colourways, request.Cover))
            foreach (var file in DocumentFiles.Pages(kind, request.Listing.Reckoned, request.Setup, request.Language, request.Sizes))
            {
                cancel.ThrowIfCancellationRequested();
                var isPaper = file.Name.EndsWith(".pdf", StringComparison.Ordinal);
                var about = request.Language.Fill(isPaper ? words.OnPaper : words.OnScreen, ("name", words.Documents.GetValueOrDefault(kind.Name, kind.Name)), ("paper", request.Setup.Paper == Paper.A4 ? Paper.A4.Name : words.Letter), ("large", request.Setup.LargePrint ? 1 : null));
                yield return (new PackedFile(request.Stem + "-" + file.Name, PackedKind.Document, isPaper ? "application/pdf" : "text/html", about, file.Bytes), file.Faults);
            }
    }

    private static IEnumerable<(PackedFile?, ImmutableArray<Fault>)> Pictures(PackRequest request, CancellationToken cancel)
    {
        foreach (var picture in PackPicture.Of(request.Listing.Reckoned, request.Language, request.Cover))
            foreach (var (width, height) in request.Pixels)
            {
                cancel.ThrowIfCancellationRequested();
                var frame = new PixelFrame(width, height) { Fit = picture.Fit, Ground = request.Ground };
                var described = picture.For(frame);
                var drawn = PngCanvas.Draw(described, frame);
                yield return (new PackedFile($"pictures/{picture.Name}-{width}x{height}.png", PackedKind.Picture, "image/png", described.Description, drawn.Bytes) { Pixels = (width, height) }, drawn.Faults);
            }
    }

    // Without the form: whoever shows it has a wrist or a stand of her own.
    private static IEnumerable<(PackedFile?, ImmutableArray<Fault>)> Models(PackRequest request, CancellationToken cancel) =>
        [(new PackedFile("coil.glb", PackedKind.Model, CoilModel.MediaType, request.Settled is null ? request.Language.Publish.Model : request.Language.Publish.ModelSettled, CoilModel.Glb(SceneOf(request), withForm: false)), [])];

    private static CoilScene SceneOf(PackRequest request) => request.Settled is { } settled ? CoilScene.Of(request.Listing.Reckoned, settled) : CoilScene.Of(request.Listing.Reckoned, CoilPose.Worn);

    private static IEnumerable<(PackedFile?, ImmutableArray<Fault>)> Materials(PackRequest request, CancellationToken cancel) =>
        [(new PackedFile("materials.csv", PackedKind.Materials, "text/csv", request.Language.Publish.Materials, MaterialsTable.Csv(request.Listing.Reckoned, request.Language)), [])];

    private static IEnumerable<(PackedFile?, ImmutableArray<Fault>)> ListingText(PackRequest request, CancellationToken cancel) =>
        [(new PackedFile("listing.txt", PackedKind.Listing, "text/plain", request.Language.Publish.ListingText, Encoding.UTF8.GetBytes(new ListingSentences(request.Listing, request.Language).Text() + "\n")), [])];

    private static void Add(ZipArchive zip, string name, ReadOnlySpan<byte> bytes)
    {
        // Pictures and PDF are packed already; what is left is small.
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = NoDay;
        entry.ExternalAttributes = PlainFile;
        using var into = entry.Open();
        into.Write(bytes);
    }
}
