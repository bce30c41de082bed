namespace Coilwright.Documents.Rasters;

/// <summary>A picture made of pixels that is fit for paper and screen: a photo, or a still of the coil. Upright, eight bits to a channel, sRGB, of no more pixels than paper shows.</summary>
/// <remarks>Made by <see cref="RasterReading"/> alone, so that whoever draws it need not ask what it is. Not a <see cref="Drawing.Picture"/>: that is drawn from the piece, and is as sharp at any size.</remarks>
public sealed record Raster
{
    internal Raster(ReadOnlyMemory<byte> bytes, bool isJpeg, int widthPx, int heightPx) => (Bytes, IsJpeg, WidthPx, HeightPx) = (bytes, isJpeg, widthPx, heightPx);

    /// <summary>It as a file: JPEG, of one or three channels, or PNG.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>Whether it is JPEG; else PNG, which may have see-through parts.</summary>
    public bool IsJpeg { get; }

    /// <summary>Its media type.</summary>
    public string MediaType => IsJpeg ? "image/jpeg" : "image/png";

    /// <summary>Width, pixels.</summary>
    public int WidthPx { get; }

    /// <summary>Height, pixels.</summary>
    public int HeightPx { get; }
}

/// <summary>What came of reading a file: a picture, or what is wrong with it.</summary>
public abstract record RasterRead
{
    private RasterRead() { }

    /// <summary>It is one.</summary>
    /// <param name="Raster">The picture.</param>
    public sealed record Is(Raster Raster) : RasterRead;

    /// <summary>It is none that can be taken.</summary>
    /// <param name="Why">Why.</param>
    public sealed record IsNot(Core.Faults.Fault Why) : RasterRead;
}
