using System.Collections.Immutable;
using Coilwright.Core.Pieces;
using Coilwright.Storage;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Hosting;

namespace Coilwright.Web.Bench;

/// <summary>The pieces that come with the program: something to look at before there is anything of one's own.</summary>
public sealed class ExamplePieces(BenchOptions options, ReckoningData data, IPieceShelf shelf) : IDisposable
{
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>The example files, by name.</summary>
    public ImmutableArray<string> Files { get; } =
        [.. Directory.GetFiles(Path.Combine(options.ProgramFolder, "examples"), "*.piece.json").Order(StringComparer.Ordinal)];

    /// <summary>The piece to open first: the last changed one, or on an empty shelf the examples are put there before. Null when there is none and none
    /// could be put there.</summary>
    public async Task<Guid?> FirstPieceAsync(CancellationToken cancel = default)
    {
        await _one.WaitAsync(cancel);
        try
        {
            var lines = await shelf.ListAsync(cancel);
            if (lines.IsEmpty)
            {
                // Another bench may begin on the same empty shelf at this moment: the shelf takes the examples from one of them.
                await shelf.AddFirstAsync([.. Files.Select(file => PieceFile.ReadFrom(file, data).Piece).OfType<Piece>()], cancel);
                lines = await shelf.ListAsync(cancel);
            }
            return lines.IsEmpty ? null : lines[0].Id;
        }
        finally
        {
            _one.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();
}
