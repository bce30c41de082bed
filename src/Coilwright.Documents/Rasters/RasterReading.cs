using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using SkiaSharp;

namespace Coilwright.Documents.Rasters;

/// <summary>Reads a JPEG or PNG file as a picture for a document.</summary>
/// <remarks>
/// <para>Turned the right way up (Exif orientation, JPEG), brought to sRGB from whatever colour profile it carries, CMYK to RGB, and scaled down to <see cref="MostSidePx"/>. A JPEG that needs none of
/// that stays byte for byte as it is, so what it says of its taking stays with it: whoever takes a photo in cleans it first. All others are written anew and say nothing but their picture.</para>
/// <para>A file that ends too early is refused, though a part of it could be shown: half a picture would be printed and sold.</para>
/// </remarks>
public static class RasterReading
{
    /// <summary>Most pixels of a file: above a 48-megapixel camera, and what is opened takes 200 MB of memory for a moment. Our choice.</summary>
    public const int MostPixels = 50_000_000;

    /// <summary>Longest side that is kept, pixels: an A4 page's text is 168 mm wide, which is 300 dots to the inch and more. Our choice.</summary>
    public const int MostSidePx = 2400;

    /// <summary>Least of either side, pixels: 34 mm on paper at 150 dots to the inch. What is smaller is an icon. Our choice.</summary>
    public const int LeastSidePx = 200;

    // JPEG: hardly told from the original by eye. Our choice.
    private const int Quality = 92;

    /// <summary>Reads a file.</summary>
    /// <param name="file">Its bytes.</param>
    public static RasterRead Of(ReadOnlyMemory<byte> file)
    {
        if (PhotoSize.Check(file.Length) is { } tooLarge) return new RasterRead.IsNot(tooLarge);
        var isJpeg = file.Span.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]);
        if (!isJpeg && !file.Span.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]))
            return new RasterRead.IsNot(Fault.Of(FaultCodes.PhotoKind, "", "", ("known", "JPEG, PNG")));
        using var data = SKData.CreateCopy(file.Span);
        using var codec = SKCodec.Create(data);
        if (codec is null) return new RasterRead.IsNot(Fault.Of(FaultCodes.PhotoBroken, "", ""));
        var info = codec.Info;
        var size = info.Width.ToString(CultureInfo.InvariantCulture) + " × " + info.Height.ToString(CultureInfo.InvariantCulture);
        if ((long)info.Width * info.Height > MostPixels) return new RasterRead.IsNot(Fault.Of(FaultCodes.PhotoTooManyPixels, "", size, ("max", (MostPixels / 1_000_000).ToString(CultureInfo.InvariantCulture))));
        if (Math.Min(info.Width, info.Height) < LeastSidePx) return new RasterRead.IsNot(Fault.Of(FaultCodes.PhotoTooSmall, "", size, ("min", LeastSidePx.ToString(CultureInfo.InvariantCulture))));

        using var pixels = Opened(codec);
        if (pixels is null) return new RasterRead.IsNot(Fault.Of(FaultCodes.PhotoBroken, "", ""));
        if (isJpeg && IsFit(codec, file.Span)) return new RasterRead.Is(new Raster(file.ToArray(), true, info.Width, info.Height));
        using var upright = Upright(pixels, codec.EncodedOrigin, isJpeg || !SeesThrough(pixels));
        return new RasterRead.Is(Written(upright, isJpeg));
    }

    /// <summary>The pixels of a picture.</summary>
    internal static SKBitmap Open(Raster raster) => SKBitmap.Decode(raster.Bytes.Span) ?? throw new InvalidDataException("A picture that was read once cannot be read again.");

    /// <summary>Writes pixels as JPEG or PNG.</summary>
    internal static Raster Written(SKBitmap pixels, bool isJpeg)
    {
        using var map = pixels.PeekPixels();
        using var file = isJpeg ? map.Encode(new SKJpegEncoderOptions(Quality, SKJpegEncoderDownsample.Downsample444, SKJpegEncoderAlphaOption.Ignore))
            : map.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 6));
        return new Raster((file ?? throw new InvalidDataException("The pixels could not be written.")).ToArray(), isJpeg, pixels.Width, pixels.Height);
    }

    // The whole picture, or null. A JPEG much larger than is kept is opened smaller, which costs less room.
    private static SKBitmap? Opened(SKCodec codec)
    {
        var longest = Math.Max(codec.Info.Width, codec.Info.Height);
        var size = codec.Info.Size;
        for (var eighths = 1; eighths < 8; eighths++)
        {
            var smaller = codec.GetScaledDimensions(eighths / 8f);
            if (Math.Max(smaller.Width, smaller.Height) < Math.Min(longest, MostSidePx)) continue;
            size = smaller;
            break;
        }
        var pixels = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul, SKColorSpace.CreateSrgb()));
        if (codec.GetPixels(pixels.Info, pixels.GetPixels()) == SKCodecResult.Success) return pixels;
        pixels.Dispose();
        return null;
    }

    private static bool IsFit(SKCodec codec, ReadOnlySpan<byte> jpeg) =>
        codec.EncodedOrigin == SKEncodedOrigin.TopLeft && Math.Max(codec.Info.Width, codec.Info.Height) <= MostSidePx && (codec.Info.ColorSpace?.IsSrgb ?? true) && Channels(jpeg) is 1 or 3;

    // Of eight bits, as its frame tells (ITU-T T.81, B.2.2); 0 where there is none that every reader of PDF knows: baseline, extended or progressive, coded by Huffman.
    private static int Channels(ReadOnlySpan<byte> jpeg)
    {
        for (var at = 2; at + 10 <= jpeg.Length && jpeg[at] == 0xFF;)
        {
            var marker = jpeg[at + 1];
            if (marker == 0xFF)
            {
                at++;
                continue;
            }
            if (marker is 0xC0 or 0xC1 or 0xC2) return jpeg[at + 4] == 8 ? jpeg[at + 9] : 0;
            if (marker == 0xDA) return 0;
            at += 2 + (jpeg[at + 2] << 8 | jpeg[at + 3]);
        }
        return 0;
    }

    private static bool SeesThrough(SKBitmap pixels)
    {
        var bytes = pixels.GetPixelSpan();
        for (var at = 3; at < bytes.Length; at += 4)
            if (bytes[at] != 255) return true;
        return false;
    }

    private static SKBitmap Upright(SKBitmap pixels, SKEncodedOrigin origin, bool isOpaque)
    {
        float w = pixels.Width, h = pixels.Height;
        // Where each orientation puts a pixel (Exif 2.32, 4.6.4, tag 0x0112; from memory): from the fifth on rows become columns.
        var turn = origin switch
        {
            SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, w, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, w, 0, -1, h, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, h, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new SKMatrix(0, -1, h, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, h, -1, 0, w, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, w, 0, 0, 1),
            _ => SKMatrix.Identity,
        };
        var (across, down) = origin >= SKEncodedOrigin.LeftTop ? (h, w) : (w, h);
        var scale = Math.Min(1, MostSidePx / Math.Max(across, down));
        var size = new SKSizeI(Math.Max(1, (int)Math.Round(across * scale)), Math.Max(1, (int)Math.Round(down * scale)));
        var upright = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, isOpaque ? SKAlphaType.Opaque : SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        using var canvas = new SKCanvas(upright);
        // What is see-through in a JPEG's place cannot be; ground is white, as paper is.
        canvas.Clear(isOpaque ? SKColors.White : SKColors.Transparent);
        canvas.Scale(size.Width / across, size.Height / down);
        canvas.Concat(turn);
        using var image = SKImage.FromBitmap(pixels);
        canvas.DrawImage(image, 0, 0, scale < 1 ? new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear) : new SKSamplingOptions(SKFilterMode.Nearest));
        return upright;
    }
}
