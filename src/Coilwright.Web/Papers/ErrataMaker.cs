using Coilwright.Core.Making;
using Coilwright.Documents;
using Coilwright.Documents.Errata;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Papers;

/// <summary>Has the corrections made between two states of a piece that the shelf keeps, each for its own wrist.</summary>
public sealed class ErrataMaker(IPieceShelf shelf, Reckoner reckoner)
{
    /// <summary>The corrections; null when the shelf has not both states.</summary>
    /// <param name="id">The piece.</param>
    /// <param name="old">The state that people have.</param>
    /// <param name="now">The state that is right.</param>
    /// <param name="choice">How it is printed, in which language.</param>
    /// <param name="cancel">Stops it.</param>
    public async Task<MadePaper?> OfAsync(Guid id, long old, long now, SheetChoice choice, CancellationToken cancel = default)
    {
        if (await shelf.OpenAsync(id, old, cancel) is not { } before || await shelf.OpenAsync(id, now, cancel) is not { } after) return null;
        return await Task.Run(() =>
        {
            var changes = PatternChanges.Of(reckoner.Reckon(new ShelvedPiece(id, old, before), before.Wearer.WristMm), reckoner.Reckon(new ShelvedPiece(id, now, after), after.Wearer.WristMm));
            return MadePaper.Of(DocumentFiles.Of("errata", ErrataDocument.Of(changes, choice.Language), choice.Setup));
        }, cancel);
    }
}
