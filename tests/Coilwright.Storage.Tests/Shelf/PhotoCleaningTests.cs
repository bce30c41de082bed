using System.Buffers.Binary;
using System.Text;
using Coilwright.Storage.Shelf;
using CsCheck;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>A photo that is kept tells nothing but its picture.</summary>
public class PhotoCleaningTests
{
    private const string Secret = "47.3769N 8.5417E, Erika's camera";

    private static readonly byte[] Scan = [0xFF, 0xDA, 0, 8, 1, 1, 0, 0, 63, 0, 0x12, 0xFF, 0x00, 0x34, 0xFF, 0xD0, 0x56, 0xFF, 0xD9];

    private static byte[] Part(byte marker, params byte[] data) => [0xFF, marker, (byte)((data.Length + 2) >> 8), (byte)(data.Length + 2), .. data];

    // Exif with its orientation and a text behind it, in either order of bytes.
    private static byte[] Exif(byte way, bool little)
    {
        byte[] tiff = little
            ? [(byte)'I', (byte)'I', 42, 0, 8, 0, 0, 0, 2, 0, 0x0F, 0x01, 2, 0, 4, 0, 0, 0, (byte)'C', (byte)'a', (byte)'m', 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, way, 0, 0, 0, 0, 0, 0, 0]
            : [(byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8, 0, 2, 0x01, 0x0F, 0, 2, 0, 0, 0, 4, (byte)'C', (byte)'a', (byte)'m', 0, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, way, 0, 0, 0, 0, 0, 0];
        return Part(0xE1, [.. "Exif\0\0"u8, .. tiff, .. Encoding.ASCII.GetBytes(Secret)]);
    }

    private static bool Has(ReadOnlyMemory<byte> bytes, string text) => bytes.Span.IndexOf(Encoding.ASCII.GetBytes(text)) >= 0;

    [Theory, InlineData(true), InlineData(false)]
    public void A_JPEG_keeps_its_picture_its_profile_and_which_way_up_it_is_and_nothing_else(bool little)
    {
        byte[] jfif = Part(0xE0, [.. "JFIF\0"u8, 1, 1, 0, 0, 1, 0, 1, 0, 0]), profile = Part(0xE2, [.. "ICC_PROFILE\0"u8, 1, 1, 9, 9]), adobe = Part(0xEE, [.. "Adobe"u8, 0, 100, 0, 0, 0, 0, 1]), table = Part(0xDB, new byte[65]);
        byte[] photo = [0xFF, 0xD8, .. jfif, .. Exif(6, little), .. Part(0xE1, Encoding.ASCII.GetBytes("http://ns.adobe.com/xap/1.0/\0" + Secret)), .. profile, .. Part(0xED, Encoding.ASCII.GetBytes(Secret)), .. adobe,
            .. Part(0xFE, Encoding.ASCII.GetBytes(Secret)), .. table, .. Scan];
        var clean = PhotoCleaning.Of(photo);
        Assert.False(Has(clean, Secret));
        Assert.False(Has(clean, "Cam"));
        // Exif 2.32: one entry, orientation, a short, 6.
        byte[] way = Part(0xE1, [.. "Exif\0\0"u8, (byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0]);
        Assert.Equal([0xFF, 0xD8, .. jfif, .. way, .. profile, .. adobe, .. table, .. Scan], clean.ToArray());
        // Cleaned once is clean.
        Assert.Equal(clean.ToArray(), PhotoCleaning.Of(clean).ToArray());
    }

    [Fact]
    public void A_JPEG_that_is_the_usual_way_up_needs_no_Exif() =>
        Assert.Equal([0xFF, 0xD8, .. Scan], PhotoCleaning.Of((byte[])[0xFF, 0xD8, .. Exif(1, true), .. Scan]).ToArray());

    [Fact]
    public void A_PNG_keeps_its_picture_and_nothing_behind_its_end()
    {
        byte[] Chunk(string name, byte[] data)
        {
            byte[] chunk = [0, 0, 0, 0, .. Encoding.ASCII.GetBytes(name), .. data, 1, 2, 3, 4];
            BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
            return chunk;
        }
        byte[] head = [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A, .. Chunk("IHDR", new byte[13])], colour = Chunk("iCCP", [1, 2]), picture = Chunk("IDAT", [5, 6, 7]), end = Chunk("IEND", []);
        var secret = Encoding.ASCII.GetBytes(Secret);
        byte[] photo = [.. head, .. Chunk("tEXt", secret), .. Chunk("eXIf", secret), .. colour, .. Chunk("tIME", new byte[7]), .. picture, .. Chunk("iTXt", secret), .. Chunk("zTXt", secret), .. end, .. secret];
        Assert.Equal([.. head, .. colour, .. picture, .. end], PhotoCleaning.Of(photo).ToArray());
    }

    [Fact]
    public void A_WebP_keeps_its_picture_and_says_that_it_has_no_more()
    {
        byte[] Chunk(string name, byte[] data)
        {
            byte[] chunk = [.. Encoding.ASCII.GetBytes(name), 0, 0, 0, 0, .. data, .. data.Length % 2 == 1 ? new byte[1] : []];
            BinaryPrimitives.WriteInt32LittleEndian(chunk.AsSpan(4), data.Length);
            return chunk;
        }
        byte[] File(params byte[] chunks)
        {
            byte[] file = [.. "RIFF"u8, 0, 0, 0, 0, .. "WEBP"u8, .. chunks];
            BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(4), file.Length - 8);
            return file;
        }
        byte[] Head(byte flags) => Chunk("VP8X", [flags, 0, 0, 0, 9, 0, 0, 9, 0, 0]);
        byte[] picture = Chunk("VP8 ", [1, 2, 3]), profile = Chunk("ICCP", [4, 5]);
        var secret = Encoding.ASCII.GetBytes(Secret);
        Assert.Equal(File([.. Head(0b0010_0000), .. profile, .. picture]), PhotoCleaning.Of(File([.. Head(0b0010_1100), .. profile, .. picture, .. Chunk("EXIF", secret), .. Chunk("XMP ", secret)])).ToArray());
    }

    [Fact]
    public void What_is_cut_short_or_broken_is_left_as_it_is_and_breaks_nothing()
    {
        byte[] photo = [0xFF, 0xD8, .. Exif(6, true), .. Part(0xDB, new byte[65]), .. Scan];
        for (var length = 0; length < photo.Length; length++) _ = PhotoCleaning.Of(photo.AsMemory(0, length));
        byte[][] heads = [[0xFF, 0xD8, 0xFF, 0xE1], [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A], [.. "RIFF\0\0\0\0WEBP"u8]];
        Gen.Select(Gen.Int[0, heads.Length - 1], Gen.Byte.Array[0, 300]).Sample((head, rest) =>
        {
            byte[] any = [.. heads[head], .. rest];
            Assert.True(PhotoCleaning.Of(any).Length <= any.Length + 8);
        }, iter: 2000);
        Assert.Equal("no photo"u8.ToArray(), PhotoCleaning.Of("no photo"u8.ToArray()).ToArray());
    }
}
