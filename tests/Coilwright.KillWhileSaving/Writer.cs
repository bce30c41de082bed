using System.Globalization;
using System.Security.Cryptography;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Storage;
using Coilwright.Storage.Shelf;

namespace Coilwright.KillWhileSaving;

/// <summary>A program that edits a piece of two hundred beads as fast as it can and saves every edit, as the bench does, until someone kills it.</summary>
internal static class Writer
{
    /// <summary>Runs until it is killed. Says of each step that it was kept, and in which state, after it was told so itself.</summary>
    public static async Task<int> RunAsync(KillPlace place)
    {
        var data = DataFiles.LoadDefault().Data!;
        var (shelf, why) = place.Open(data);
        if (shelf is null)
        {
            await Console.Error.WriteLineAsync($"The shelf did not open: {why}");
            return 1;
        }
        var lines = await shelf.ListAsync();
        var now = lines.IsEmpty ? Kept(await shelf.AddAsync(TwoHundredBeads(data))) : (await shelf.OpenAsync(lines[0].Id))!;
        Tell(now);
        for (var step = 0; ; step++)
        {
            var at = Random.Shared.Next(now.Piece.Order.Count);
            // Beads come and go, and now and then a step is taken back: every way in which a state comes to lie on the shelf.
            now = step % 5 == 4 ? Kept(await shelf.UndoAsync(now.Id, now.Revision))
                : Kept(await shelf.ChangeAsync(now.Id, now.Revision, ShelfChange.Of(Done(now.Piece, step % 2 == 0 ? new InsertBeads(at, ["dot"]) : new RemoveBeads(BeadPlaces.One(at)), data))));
            Tell(now);
        }
    }

    /// <summary>What is told of a state: its number, and a sum of all that is in it.</summary>
    public static string Line(Guid id, long revision, Piece piece) =>
        string.Create(CultureInfo.InvariantCulture, $"{id} {revision} {Convert.ToHexString(SHA256.HashData(PieceFile.Write(piece)))}");

    private static Piece TwoHundredBeads(ReckoningData data)
    {
        var piece = PieceFile.ReadFrom(Path.Combine(AppContext.BaseDirectory, "tidewrack.piece.json"), data).Piece!;
        return Done(piece, new RepeatBeads(new BeadPlaces.Row(0, piece.Order.Count), 200 / piece.Order.Count + 1), data).Piece;
    }

    private static EditOutcome.Done Done(Piece piece, PieceEdit edit, ReckoningData data) => (EditOutcome.Done)PieceEditing.Apply(piece, edit, data);

    private static ShelvedPiece Kept(ShelfAnswer answer) => answer is ShelfAnswer.Kept kept ? kept.Now : throw new InvalidOperationException(answer.ToString());

    private static void Tell(ShelvedPiece now)
    {
        Console.Out.WriteLine(Line(now.Id, now.Revision, now.Piece));
        Console.Out.Flush();
    }
}
