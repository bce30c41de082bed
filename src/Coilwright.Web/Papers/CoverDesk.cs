using Coilwright.Documents.Patterns;
using Coilwright.Documents.Rasters;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Papers;

/// <summary>Puts pictures on the covers of patterns, and has them ready for paper.</summary>
public sealed class CoverDesk(ICovers covers)
{
    /// <summary>The cover of a piece as a document has it; null when it has none, or what is kept is no picture that can be printed.</summary>
    public async Task<CoverPicture?> PictureAsync(Cover? cover, CancellationToken cancel = default) =>
        cover is not null && await Task.Run(() => RasterReading.Of(cover.Photo.Bytes), cancel) is RasterRead.Is picture ? new CoverPicture(picture.Raster, cover.IsStill) : null;

    /// <summary>Keeps a file's picture as the cover, fit for paper and without what it says of its taking.</summary>
    public async Task<CoverAnswer> KeepAsync(Guid piece, ReadOnlyMemory<byte> file, bool isStill, CancellationToken cancel = default) =>
        await Task.Run(() => RasterReading.Of(PhotoCleaning.Of(file)), cancel) switch
        {
            RasterRead.Is(var raster) => await covers.KeepCoverAsync(piece, new Photo(raster.MediaType, raster.Bytes), isStill, cancel),
            RasterRead.IsNot(var why) => new CoverAnswer.NotKept([why]),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
