using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Pieces;
using Coilwright.Storage;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Hosting;
using Coilwright.Wording;

namespace Coilwright.Web.Bench;

/// <summary>Beads to take into a piece: the small catalogue, and those of her other pieces.</summary>
public sealed class Catalogue
{
    // Beads of the pieces that she had in her hands lately; what is older she finds by opening its piece.
    private const int MostPieces = 60;

    private readonly IPieceShelf _shelf;

    /// <summary>Reads the catalogue.</summary>
    public Catalogue(BenchOptions options, ReckoningData data, IPieceShelf shelf)
    {
        _shelf = shelf;
        var (beads, faults) = DataFiles.LoadCatalogue(Path.Combine(options.ProgramFolder, "data"), data);
        if (!faults.IsEmpty) throw new InvalidDataException(string.Join('\n', faults.Select(f => Languages.English.Say(f).Message)));
        // As a maker looks for them: by shape, as shapes are listed everywhere, then from small to large.
        Beads = [.. beads.OrderBy(b => BeadShapes.All.IndexOf(b.Bead.Shape)).ThenBy(b => b.Kind, StringComparer.Ordinal).ThenBy(b => b.Bead.LengthMm)];
    }

    /// <summary>The trade's usual kinds.</summary>
    public ImmutableArray<CatalogueBead> Beads { get; }

    /// <summary>The beads of her other pieces, each once, with the piece it was seen in first, the last changed piece first.</summary>
    /// <param name="but">The piece that they are for.</param>
    /// <param name="cancel">Stops it.</param>
    public async Task<ImmutableArray<(Bead Bead, string Piece)>> OfOtherPiecesAsync(Guid but, CancellationToken cancel = default)
    {
        var seen = new HashSet<object>();
        if (await _shelf.OpenAsync(but, cancel) is { } own)
            foreach (var bead in own.Piece.Beads) seen.Add(Looks(bead));
        var beads = ImmutableArray.CreateBuilder<(Bead, string)>();
        foreach (var line in (await _shelf.ListAsync(cancel)).Where(l => l.Id != but && !l.IsArchived).Take(MostPieces))
            if (await _shelf.OpenAsync(line.Id, cancel) is { } shelved)
                foreach (var bead in shelved.Piece.Beads)
                    if (seen.Add(Looks(bead)))
                        beads.Add((bead, line.Title));
        return beads.ToImmutable();
    }

    // All that a bead is, but for the id that one piece or another knows it by. Lists are compared by what is in them.
    private static object Looks(Bead bead) => (bead.Description with { Id = "", Colours = [], Aliases = [] }, string.Join(' ', bead.Colours), string.Join('\n', bead.Description.Aliases));
}
