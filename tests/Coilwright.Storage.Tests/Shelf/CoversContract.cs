using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>What every keeper of covers must do.</summary>
public abstract class CoversContract
{
    private static readonly Piece Boardwalk = PieceFile.ReadFrom(TestData.ExampleFiles.First(), TestData.Data).Piece!;

    // The least that these formats begin with; what follows is the viewer's business.
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3];
    private static readonly byte[] Png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 9];

    /// <summary>An empty shelf with its covers.</summary>
    protected abstract (IPieceShelf Shelf, ICovers Covers) Empty();

    private static Cover? Kept(CoverAnswer answer) => Assert.IsType<CoverAnswer.Kept>(answer).Now;

    private static string NotKept(CoverAnswer answer) => Assert.Single(Assert.IsType<CoverAnswer.NotKept>(answer).Why).Code;

    private static async Task<Guid> PieceOn(IPieceShelf shelf) => Assert.IsType<ShelfAnswer.Kept>(await shelf.AddAsync(Boardwalk)).Now.Id;

    [Fact]
    public async Task A_cover_is_kept_in_place_of_the_one_before_it_through_every_step_of_its_piece()
    {
        var (shelf, covers) = Empty();
        Guid piece = await PieceOn(shelf), other = await PieceOn(shelf);
        Assert.Null(await covers.CoverAsync(piece));
        var first = Kept(await covers.KeepCoverAsync(piece, new Photo("image/jpeg", Jpeg), isStill: false))!;
        await shelf.ChangeAsync(piece, 1, new ShelfChange("set-title", Boardwalk with { Title = "second" }));
        await shelf.ArchiveAsync(piece, true);
        var there = (await covers.CoverAsync(piece))!;
        Assert.Equal((first.Id, "image/jpeg", false), (there.Id, there.Photo.MediaType, there.IsStill));
        Assert.Equal(Jpeg, there.Photo.Bytes.ToArray());
        Assert.Null(await covers.CoverAsync(other));

        var second = Kept(await covers.KeepCoverAsync(piece, new Photo("image/png", Png), isStill: true))!;
        Assert.NotEqual(first.Id, second.Id);
        there = (await covers.CoverAsync(piece))!;
        Assert.Equal((second.Id, "image/png", true), (there.Id, there.Photo.MediaType, there.IsStill));
        Assert.Equal(Png, there.Photo.Bytes.ToArray());
        // It is no step.
        Assert.Equal(2, (await shelf.HistoryAsync(piece)).Length);
    }

    [Fact]
    public async Task A_cover_can_be_taken_off_and_so_can_none()
    {
        var (shelf, covers) = Empty();
        var piece = await PieceOn(shelf);
        Kept(await covers.KeepCoverAsync(piece, new Photo("image/png", Png), isStill: true));
        Assert.Null(Kept(await covers.TakeCoverOffAsync(piece)));
        Assert.Null(await covers.CoverAsync(piece));
        Assert.Null(Kept(await covers.TakeCoverOffAsync(piece)));
    }

    [Fact]
    public async Task What_is_not_there_is_missing()
    {
        var (_, covers) = Empty();
        Assert.IsType<CoverAnswer.Missing>(await covers.KeepCoverAsync(Guid.NewGuid(), new Photo("image/png", Png), isStill: false));
        Assert.IsType<CoverAnswer.Missing>(await covers.TakeCoverOffAsync(Guid.NewGuid()));
        Assert.Null(await covers.CoverAsync(Guid.NewGuid()));
    }

    [Fact]
    public async Task What_is_no_picture_for_paper_is_refused_and_the_one_before_it_stays()
    {
        var (shelf, covers) = Empty();
        var piece = await PieceOn(shelf);
        var first = Kept(await covers.KeepCoverAsync(piece, new Photo("image/png", Png), isStill: true))!;
        Assert.Equal(FaultCodes.PhotoKind, NotKept(await covers.KeepCoverAsync(piece, new Photo("image/webp", (byte[])[.. "RIFF"u8, 4, 0, 0, 0, .. "WEBP"u8, 7]), isStill: false)));
        Assert.Equal(FaultCodes.PhotoKind, NotKept(await covers.KeepCoverAsync(piece, new Photo("image/jpeg", Png), isStill: false)));
        Assert.Equal(FaultCodes.PhotoKind, NotKept(await covers.KeepCoverAsync(piece, new Photo("image/svg+xml", "<svg/>"u8.ToArray()), isStill: false)));
        var large = new byte[PhotoSize.MostBytes + 1];
        Jpeg.CopyTo(large, 0);
        Assert.Equal(FaultCodes.PhotoTooLarge, NotKept(await covers.KeepCoverAsync(piece, new Photo("image/jpeg", large), isStill: false)));
        Assert.Equal(first.Id, (await covers.CoverAsync(piece))!.Id);
    }

    [Fact]
    public async Task What_a_photo_says_of_its_taking_is_not_kept()
    {
        const string secret = "47.3769N 8.5417E";
        var (shelf, covers) = Empty();
        var piece = await PieceOn(shelf);
        byte[] said = [.. "Exif\0\0"u8, .. Encoding.ASCII.GetBytes(secret)];
        byte[] scan = [0xFF, 0xDA, 0, 2, 5, 6, 0xFF, 0xD9];
        Kept(await covers.KeepCoverAsync(piece, new Photo("image/jpeg", (byte[])[0xFF, 0xD8, 0xFF, 0xE1, 0, (byte)(said.Length + 2), .. said, .. scan]), isStill: false));
        Assert.Equal([0xFF, 0xD8, .. scan], (await covers.CoverAsync(piece))!.Photo.Bytes.ToArray());
    }
}

/// <summary>Covers in memory.</summary>
public sealed class MemoryCoversTests : CoversContract
{
    protected override (IPieceShelf Shelf, ICovers Covers) Empty() => new MemoryShelf(TimeProvider.System) is var shelf ? (shelf, shelf) : default;
}

/// <summary>Covers in a file.</summary>
public sealed class SqliteCoversTests : CoversContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    protected override (IPieceShelf Shelf, ICovers Covers) Empty() => _shelves.Empty() is var shelf ? (shelf, shelf) : default;

    public void Dispose() => _shelves.Dispose();
}

/// <summary>Covers in a database.</summary>
public sealed class PostgresCoversTests : CoversContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    protected override (IPieceShelf Shelf, ICovers Covers) Empty() => _shelves.Empty() is var shelf ? (shelf, shelf) : default;

    public void Dispose() => _shelves.Dispose();
}
