using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Coilwright.Documents.Rasters;
using SkiaSharp;

namespace Coilwright.Documents.Tests.Rasters;

/// <summary>Files of pictures: of four areas, each a quarter, so that whatever is turned, cut or coloured wrongly is seen.</summary>
internal static class SampleRasters
{
    public static readonly SKColor Red = new(0xc8, 0x3c, 0x28), Green = new(0x28, 0x8c, 0x46), Blue = new(0x28, 0x5a, 0xa0), Sand = new(0xe6, 0xd2, 0xaa);

    /// <summary>The colours from the left top, row by row.</summary>
    public static SKColor[] Quarters { get; } = [Red, Green, Blue, Sand];

    /// <summary>240 x 200 pixels of one colour, CMYK with Adobe's marker, as ImageMagick writes RGB 200, 60, 40.</summary>
    public static byte[] CmykJpeg { get; } = Convert.FromBase64String(
        "/9j/7gAOQWRvYmUAZAAAAAAC/9sAQwANCQoLCggNCwoLDg4NDxMgFRMSEhMnHB4XIC4pMTAuKS0sMzpKPjM2RjcsLUBXQUZMTlJTUjI+WmFaUGBKUVJP/9sAQwEODg4TERMmFRUmTzUtNU9PT09PT09PT09PT09PT09PT09PT09PT09PT09P" +
        "T09PT09PT09PT09PT09PT09PT09P/8AAFAgAyADwBAEiAAIRAQMRAQQRAP/EABUAAQEAAAAAAAAAAAAAAAAAAAAG/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/EABYBAQEBAAAAAAAAAAAAAAAAAAAFBv/EABQRAQAAAAAAAAAAAAAAAAAAAAD/" +
        "2gAOBAEAAhEDEQQAAD8AALLFqwAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA" +
        "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA" +
        "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAH/2Q==");

    /// <summary>240 x 200 pixels of RGB 40, 90, 160, progressive, as ImageMagick writes it.</summary>
    public static byte[] ProgressiveJpeg { get; } = Convert.FromBase64String(
        "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAA0JCgsKCA0LCgsODg0PEyAVExISEyccHhcgLikxMC4pLSwzOko+MzZGNywtQFdBRkxOUlNSMj5aYVpQYEpRUk//2wBDAQ4ODhMREyYVFSZPNS01T09PT09PT09PT09PT09PT09PT09PT09PT09P" +
        "T09PT09PT09PT09PT09PT09PT09PT0//wgARCADIAPADASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAT/xAAVAQEBAAAAAAAAAAAAAAAAAAAABP/aAAwDAQACEAMQAAABhFkwAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA" +
        "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAH//xAAUEAEAAAAAAAAAAAAAAAAA" +
        "AACQ/9oACAEBAAEFAju//8QAFBEBAAAAAAAAAAAAAAAAAAAAcP/aAAgBAwEBPwFD/8QAFBEBAAAAAAAAAAAAAAAAAAAAcP/aAAgBAgEBPwFD/8QAFBABAAAAAAAAAAAAAAAAAAAAkP/aAAgBAQAGPwI7v//EABQQAQAAAAAAAAAAAAAAAAAA" +
        "AJD/2gAIAQEAAT8hO7//2gAMAwEAAgADAAAAEAgggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggg" +
        "ggggggggggggggggggggggggggggggggggggggggggggggggggggv//EABQRAQAAAAAAAAAAAAAAAAAAAHD/2gAIAQMBAT8QQ//EABQRAQAAAAAAAAAAAAAAAAAAAHD/2gAIAQIBAT8QQ//EABQQAQAAAAAAAAAAAAAAAAAAAJD/2gAIAQEA" +
        "AT8QO7//2Q==");

    public static byte[] Jpeg(int width, int height) => Encoded(width, height, SKColorSpace.CreateSrgb(), 255, jpeg: true);

    public static byte[] Png(int width, int height, byte opacity = 255) => Encoded(width, height, SKColorSpace.CreateSrgb(), opacity, jpeg: false);

    public static byte[] WidePng(int width, int height) => Encoded(width, height, SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3), 255, jpeg: false);

    /// <summary>A JPEG whose Exif part says how it is to be turned.</summary>
    public static byte[] Turned(byte[] jpeg, byte orientation) =>
        [.. jpeg[..2], 0xFF, 0xE1, 0, 34, .. "Exif\0\0MM"u8, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0, .. jpeg[2..]];

    /// <summary>A PNG of black pixels, a bit each, of any size.</summary>
    public static byte[] BlackPng(int width, int height)
    {
        using var packed = new MemoryStream();
        using (var zip = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            var row = new byte[1 + (width + 7) / 8];
            for (var y = 0; y < height; y++) zip.Write(row);
        }
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        head[8] = 1;
        return [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A, .. Chunk("IHDR", head), .. Chunk("IDAT", packed.ToArray()), .. Chunk("IEND", [])];
    }

    public static Raster Read(byte[] file) => Assert.IsType<RasterRead.Is>(RasterReading.Of(file)).Raster;

    private static byte[] Chunk(string name, byte[] data)
    {
        byte[] told = [.. Encoding.ASCII.GetBytes(name), .. data];
        byte[] length = new byte[4], check = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, data.Length);
        var crc = uint.MaxValue;
        foreach (var b in told)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++) crc = (crc & 1) == 0 ? crc >> 1 : crc >> 1 ^ 0xEDB88320;
        }
        BinaryPrimitives.WriteUInt32BigEndian(check, ~crc);
        return [.. length, .. told, .. check];
    }

    private static byte[] Encoded(int width, int height, SKColorSpace space, byte opacity, bool jpeg)
    {
        using var pixels = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul, space));
        var bytes = pixels.GetPixelSpan();
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
            {
                var colour = Quarters[(2 * y < height ? 0 : 2) + (2 * x < width ? 0 : 1)];
                byte[] told = [colour.Red, colour.Green, colour.Blue, opacity];
                told.CopyTo(bytes.Slice(4 * (y * width + x), 4));
            }
        using var map = pixels.PeekPixels();
        using var file = jpeg ? map.Encode(new SKJpegEncoderOptions(95)) : map.Encode(new SKPngEncoderOptions());
        return file!.ToArray();
    }
}
