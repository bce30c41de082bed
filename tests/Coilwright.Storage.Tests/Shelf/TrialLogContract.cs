using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>What every trial log must do.</summary>
public abstract class TrialLogContract
{
    private static readonly Piece Boardwalk = PieceFile.ReadFrom(TestData.ExampleFiles.First(), TestData.Data).Piece!;

    // The least that these formats begin with (JFIF; PNG, section 5.2; RIFF container of WebP); what follows is the viewer's business.
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3];
    private static readonly byte[] Png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 9];
    private static readonly byte[] Webp = [.. "RIFF"u8, 4, 0, 0, 0, .. "WEBP"u8, 7];

    /// <summary>An empty shelf with its log.</summary>
    protected abstract (IPieceShelf Shelf, ITrialLog Log) Empty();

    private static Trial Kept(TrialAnswer answer) => Assert.IsType<TrialAnswer.Kept>(answer).Now;

    private static async Task<Guid> PieceOn(IPieceShelf shelf) => Assert.IsType<ShelfAnswer.Kept>(await shelf.AddAsync(Boardwalk)).Now.Id;

    [Fact]
    public async Task What_was_tried_is_noted_with_its_photo_and_why_it_was_dropped()
    {
        var (shelf, log) = Empty();
        var piece = await PieceOn(shelf);
        var first = Kept(await log.AddTrialAsync(piece, 1, "tubes between every tuft", new Photo("image/jpeg", Jpeg)));
        await shelf.ChangeAsync(piece, 1, new ShelfChange("set-title", Boardwalk with { Title = "second try" }));
        var second = Kept(await log.AddTrialAsync(piece, 2, "dots instead <script>", null));
        Kept(await log.DropTrialAsync(first.Id, "too stiff over the bone"));
        Assert.Equal([(first.Id, 1L, "tubes between every tuft", "too stiff over the bone", true), (second.Id, 2, "dots instead <script>", null, false)],
            (await log.TrialsAsync(piece)).Select(t => (t.Id, t.Revision, t.Tried, t.DroppedBecause, t.HasPhoto)));
        var photo = (await log.PhotoAsync(first.Id))!;
        Assert.Equal("image/jpeg", photo.MediaType);
        Assert.Equal(Jpeg, photo.Bytes.ToArray());
        Assert.Null(await log.PhotoAsync(second.Id));
        Kept(await log.DropTrialAsync(first.Id, null));
        Assert.Null((await log.TrialsAsync(piece))[0].DroppedBecause);
        // Back to what was tried first.
        Assert.Equal(Boardwalk.Title, Assert.IsType<ShelfAnswer.Kept>(await shelf.GoBackAsync(piece, 2, first.Revision)).Now.Piece.Title);
    }

    [Fact]
    public async Task An_entry_can_be_taken_out_with_its_photo()
    {
        var (shelf, log) = Empty();
        var piece = await PieceOn(shelf);
        var trial = Kept(await log.AddTrialAsync(piece, 1, "by mistake", new Photo("image/png", Png)));
        Assert.Equal(trial, Kept(await log.RemoveTrialAsync(trial.Id)));
        Assert.Empty(await log.TrialsAsync(piece));
        Assert.Null(await log.PhotoAsync(trial.Id));
        Assert.IsType<TrialAnswer.Missing>(await log.RemoveTrialAsync(trial.Id));
        Assert.IsType<TrialAnswer.Missing>(await log.DropTrialAsync(trial.Id, "gone"));
    }

    [Fact]
    public async Task What_is_not_there_is_missing()
    {
        var (shelf, log) = Empty();
        var piece = await PieceOn(shelf);
        Assert.IsType<TrialAnswer.Missing>(await log.AddTrialAsync(Guid.NewGuid(), 1, "x", null));
        Assert.IsType<TrialAnswer.Missing>(await log.AddTrialAsync(piece, 2, "x", null));
        Assert.Empty(await log.TrialsAsync(Guid.NewGuid()));
        Assert.Null(await log.PhotoAsync(Guid.NewGuid()));
    }

    [Fact]
    public async Task Only_photos_that_are_what_they_say_are_taken()
    {
        var (shelf, log) = Empty();
        var piece = await PieceOn(shelf);
        foreach (var (type, bytes) in (IEnumerable<(string, byte[])>)[("image/jpeg", Jpeg), ("image/png", Png), ("image/webp", Webp)])
            Kept(await log.AddTrialAsync(piece, 1, "x", new Photo(type, bytes)));
        foreach (var (type, bytes) in (IEnumerable<(string, byte[])>)[("image/png", Jpeg), ("image/svg+xml", "<svg/>"u8.ToArray()), ("text/html", Png), ("image/jpeg", [])])
            Assert.Equal(FaultCodes.PhotoKind, Assert.Single(Assert.IsType<TrialAnswer.NotKept>(await log.AddTrialAsync(piece, 1, "x", new Photo(type, bytes))).Why).Code);
        var large = new byte[PhotoSize.MostBytes + 1];
        Jpeg.CopyTo(large, 0);
        Assert.Equal(FaultCodes.PhotoTooLarge, Assert.Single(Assert.IsType<TrialAnswer.NotKept>(await log.AddTrialAsync(piece, 1, "x", new Photo("image/jpeg", large))).Why).Code);
        Assert.Equal(3, (await log.TrialsAsync(piece)).Length);
    }

    [Fact]
    public async Task A_line_is_a_line()
    {
        var (shelf, log) = Empty();
        var piece = await PieceOn(shelf);
        Assert.Equal(FaultCodes.TextEmpty, Assert.Single(Assert.IsType<TrialAnswer.NotKept>(await log.AddTrialAsync(piece, 1, " ", null)).Why).Code);
        Assert.Equal(FaultCodes.TextTooLong, Assert.Single(Assert.IsType<TrialAnswer.NotKept>(await log.AddTrialAsync(piece, 1, new string('x', 10_000), null)).Why).Code);
        var trial = Kept(await log.AddTrialAsync(piece, 1, "x", null));
        Assert.Equal(FaultCodes.TextTooLong, Assert.Single(Assert.IsType<TrialAnswer.NotKept>(await log.DropTrialAsync(trial.Id, new string('x', 201))).Why).Code);
    }
}

/// <summary>The log that lasts as long as the program runs.</summary>
public sealed class MemoryTrialLogTests : TrialLogContract
{
    protected override (IPieceShelf Shelf, ITrialLog Log) Empty() => new MemoryShelf(TimeProvider.System) is var shelf ? (shelf, shelf) : default;
}
