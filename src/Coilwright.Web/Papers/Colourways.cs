using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Papers;

/// <summary>A state of another piece that a pattern shows as its colourway. A state never changes, so what was made with it may be kept.</summary>
public readonly record struct ColourwayState(Guid Id, long Revision)
{
    /// <summary>As it stands in an address.</summary>
    public string Text => string.Create(CultureInfo.InvariantCulture, $"{Id:D}.{Revision}");

    /// <summary>Reads it; null when it is none.</summary>
    public static ColourwayState? Read(string? text) =>
        text?.Split('.') is [var id, var state] && Guid.TryParseExact(id, "D", out var piece) && long.TryParse(state, NumberStyles.None, CultureInfo.InvariantCulture, out var revision) && revision > 0
            ? new ColourwayState(piece, revision) : null;
}

/// <summary>The pieces on the shelf that are a piece again in other colours.</summary>
public sealed class Colourways(IPieceShelf shelf)
{
    /// <summary>Those that are not put away, in the order of the list of pieces.</summary>
    public async Task<ImmutableArray<ShelvedPiece>> OfAsync(ShelvedPiece piece, CancellationToken cancel = default)
    {
        var found = ImmutableArray.CreateBuilder<ShelvedPiece>();
        foreach (var line in await shelf.ListAsync(cancel))
            if (line.Id != piece.Id && !line.IsArchived && await shelf.OpenAsync(line.Id, cancel) is { } other && Colourway.Is(other.Piece, piece.Piece)) found.Add(other);
        return found.ToImmutable();
    }

    /// <summary>The pieces in the states that are named, as far as they are on the shelf and colourways of the piece: an address can be typed by anyone.</summary>
    public async Task<ImmutableArray<Piece>> NamedAsync(Piece piece, ImmutableArray<ColourwayState> states, CancellationToken cancel = default)
    {
        var found = ImmutableArray.CreateBuilder<Piece>();
        foreach (var (id, revision) in states)
            if (await shelf.OpenAsync(id, revision, cancel) is { } other && Colourway.Is(other, piece)) found.Add(other);
        return found.ToImmutable();
    }
}
