using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Documents;
using Coilwright.Documents.Packs;
using Coilwright.Documents.Patterns;
using Coilwright.Storage;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;
using Coilwright.Web.Hosting;

namespace Coilwright.Web.Papers;

/// <summary>The files of a document, or why they cannot be made.</summary>
/// <param name="Files">The files by the ending of their name, as <c>sheet.pdf</c>.</param>
/// <param name="Faults">Why some could not be made; empty when all were.</param>
public sealed record MadePaper(ImmutableArray<DocumentFile> Files, ImmutableArray<Fault> Faults)
{
    /// <summary>What came of making files: each fault once.</summary>
    public static MadePaper Of(IEnumerable<DocumentFile> files)
    {
        ImmutableArray<DocumentFile> made = [.. files];
        return new MadePaper(made, [.. made.SelectMany(f => f.Faults).Distinct()]);
    }

    /// <summary>The file whose name ends so; null where it could not be made.</summary>
    public DocumentFile? Find(string ending) => Files.FirstOrDefault(f => f.Name.EndsWith(ending, StringComparison.Ordinal) && f.Faults.IsEmpty);
}

/// <summary>Has a piece's documents made, and keeps the last few: a preview and the file that is saved after it are one making.</summary>
/// <remarks>May be asked by many at once. One is made at a time; a bench has one maker.</remarks>
public sealed class SheetMaker(Reckoner reckoner) : IDisposable
{
    private const int Kept = 6;
    private readonly SemaphoreSlim _one = new(1, 1);
    private readonly Lock _gate = new();
    private (Guid Id, long Revision, Sizes Sizes)? _sizes;
    private readonly LinkedList<((string, Guid, long, string) Key, MadePaper Paper)> _last = [];

    /// <summary>Forgets all: what is on the shelf is no longer what it was.</summary>
    public async Task ForgetAsync()
    {
        await _one.WaitAsync();
        _last.Clear();
        lock (_gate) _sizes = null;
        _one.Release();
    }

    /// <summary>A document of a piece as it lies on the shelf.</summary>
    public async Task<MadePaper> OfAsync(DocumentKind kind, ShelvedPiece piece, SheetChoice choice, CancellationToken cancel = default)
    {
        await _one.WaitAsync(cancel);
        try
        {
            var key = (kind.Name, piece.Id, piece.Revision, choice.Query);
            for (var node = _last.First; node is not null; node = node.Next)
                if (node.Value.Key == key) return node.Value.Paper;
            var made = await Task.Run(() => Make(kind, piece, choice), cancel);
            _last.AddFirst((key, made));
            if (_last.Count > Kept) _last.RemoveLast();
            return made;
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>Everything to sell the piece's pattern with, made for its wearer's own wrist. Nothing of it is kept.</summary>
    public async Task<MadePack> PackAsync(ShelvedPiece piece, ImmutableArray<Piece> colourways, CoverPicture? cover, Settled? settled, SheetChoice choice, CautionData cautions, CancellationToken cancel = default)
    {
        await _one.WaitAsync(cancel);
        try
        {
            return await Task.Run(() => PublishPack.Of(new PackRequest
            {
                Listing = Listing.Of(reckoner.Reckon(piece, piece.Piece.Wearer.WristMm), cautions.SmallParts),
                Sizes = SizesOf(piece),
                Colourways = colourways,
                Cover = cover,
                Settled = settled,
                Setup = choice.Setup,
                Language = choice.Language,
                Stem = PieceFiles.FileName(piece.Piece.Title),
                PieceFormat = PieceFile.Format,
            }, cancel), cancel);
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>Makes a document here and now, for whoever has time. Nothing of it is kept.</summary>
    public MadePaper Make(DocumentKind kind, ShelvedPiece piece, SheetChoice choice) =>
        MadePaper.Of(DocumentFiles.Of(kind, reckoner.Reckon(piece, choice.WristMm), choice.Setup, choice.Language, SizesOf(piece)));

    // The sizes of a piece are the same on every paper and in every language.
    private Sizes? SizesOf(ShelvedPiece piece)
    {
        if (piece.Piece.Order.Count > SizesRequest.MostBeadsUnasked) return null;
        lock (_gate)
        {
            if (_sizes is { } made && made.Id == piece.Id && made.Revision == piece.Revision) return made.Sizes;
            var sizes = Grader.Of(piece.Piece, reckoner.Data, new SizesRequest(UsualWrists.Few(piece.Piece, reckoner.Data)));
            _sizes = (piece.Id, piece.Revision, sizes);
            return sizes;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();
}
