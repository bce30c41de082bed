using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Bench;

/// <summary>Reckons the piece that will be opened first while she is still reaching for the browser.</summary>
internal sealed class FirstPieceReady(ExamplePieces examples, IPieceShelf shelf, Reckoner reckoner) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.Yield();
        try
        {
            if (await examples.FirstPieceAsync(stoppingToken) is { } id && await shelf.OpenAsync(id, stoppingToken) is { } first)
                reckoner.Reckon(first, first.Piece.Wearer.WristMm);
        }
        catch (ShelfUnreadableException)
        {
            // The page that she opens tells it.
        }
    }
}
