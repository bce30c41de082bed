using System.Buffers.Binary;

namespace Coilwright.Storage.Shelf;

/// <summary>Takes out of a photo what it tells besides its picture: where it was taken and when, with which camera, and by whom. The picture's own bytes stay as they are.</summary>
/// <remarks>
/// <para>JPEG: the application parts but for JFIF's (APP0), a colour profile (APP2) and Adobe's (APP14, which says how colours are coded), and comments; of Exif its one figure that says which way up the
/// picture is. PNG: text, Exif and time. WebP: Exif and XMP, with their flags. Anything that is not of that form is left as it is: it is then no photo that is kept (<see cref="TrialRules"/>).</para>
/// <para>Sources: ITU-T T.81 annex B, Exif 2.32 section 4.6.4 (orientation, tag 0x0112), PNG (W3C) chunk layout, WebP container specification; from memory.</para>
/// </remarks>
public static class PhotoCleaning
{
    /// <summary>The photo without them.</summary>
    public static Photo Of(Photo photo) => photo with { Bytes = Of(photo.Bytes) };

    /// <summary>The bytes of a photo without them.</summary>
    public static ReadOnlyMemory<byte> Of(ReadOnlyMemory<byte> bytes) => TrialRules.KindOf(bytes.Span) switch
    {
        "image/jpeg" => Jpeg(bytes.Span) ?? bytes,
        "image/png" => Png(bytes.Span) ?? bytes,
        "image/webp" => WebP(bytes.Span) ?? bytes,
        _ => bytes,
    };

    private static byte[]? Jpeg(ReadOnlySpan<byte> bytes)
    {
        using var clean = new MemoryStream(bytes.Length);
        clean.Write(bytes[..2]);
        var at = 2;
        while (at + 4 <= bytes.Length && bytes[at] == 0xFF)
        {
            var marker = bytes[at + 1];
            if (marker == 0xFF)
            {
                at++;
                continue;
            }
            // From the first scan on it is picture.
            if (marker == 0xDA)
            {
                clean.Write(bytes[at..]);
                return clean.ToArray();
            }
            var length = BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]);
            if (length < 2 || at + 2 + length > bytes.Length) return null;
            var part = bytes.Slice(at, 2 + length);
            if (marker == 0xE1 && Orientation(part[4..]) is { } way) clean.Write(ExifOf(way));
            else if (marker is not (0xFE or >= 0xE1 and <= 0xEF) || marker is 0xE2 or 0xEE) clean.Write(part);
            at += 2 + length;
        }
        return null;
    }

    // Which way up, 1 to 8; null when it does not say so, or says what is usual.
    private static ushort? Orientation(ReadOnlySpan<byte> exif)
    {
        if (!exif.StartsWith("Exif\0\0"u8) || exif.Length < 14) return null;
        var tiff = exif[6..];
        var little = tiff[0] == 'I';
        ushort U16(ReadOnlySpan<byte> s) => little ? BinaryPrimitives.ReadUInt16LittleEndian(s) : BinaryPrimitives.ReadUInt16BigEndian(s);
        var first = (int)Math.Min(int.MaxValue, little ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]));
        if (first < 8 || first > tiff.Length - 2) return null;
        var count = U16(tiff[first..]);
        for (var i = 0; i < count && first + 2 + 12 * (i + 1) <= tiff.Length; i++)
        {
            var entry = tiff.Slice(first + 2 + 12 * i, 12);
            if (U16(entry) == 0x0112) return U16(entry[8..]) is > 1 and <= 8 and var way ? way : null;
        }
        return null;
    }

    private static byte[] ExifOf(ushort way) =>
        [0xFF, 0xE1, 0, 34, .. "Exif\0\0"u8, (byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)way, 0, 0, 0, 0, 0, 0];

    private static byte[]? Png(ReadOnlySpan<byte> bytes)
    {
        using var clean = new MemoryStream(bytes.Length);
        clean.Write(bytes[..8]);
        for (var at = 8; at + 12 <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
            if (length > bytes.Length - at - 12) return null;
            var chunk = bytes.Slice(at, (int)length + 12);
            var name = chunk.Slice(4, 4);
            if (!(name.SequenceEqual("tEXt"u8) || name.SequenceEqual("zTXt"u8) || name.SequenceEqual("iTXt"u8) || name.SequenceEqual("eXIf"u8) || name.SequenceEqual("tIME"u8))) clean.Write(chunk);
            // What is behind its end is no part of it.
            if (name.SequenceEqual("IEND"u8)) return clean.ToArray();
            at += chunk.Length;
        }
        return null;
    }

    private static byte[]? WebP(ReadOnlySpan<byte> bytes)
    {
        using var clean = new MemoryStream(bytes.Length);
        clean.Write(bytes[..12]);
        var at = 12;
        while (at + 8 <= bytes.Length)
        {
            var length = BinaryPrimitives.ReadUInt32LittleEndian(bytes[(at + 4)..]);
            var whole = 8 + (long)length + length % 2;
            if (whole > bytes.Length - at) return null;
            var chunk = bytes.Slice(at, (int)whole);
            if (chunk.StartsWith("VP8X"u8) && length >= 1)
            {
                byte[] head = [.. chunk];
                // Exif and XMP are told by two bits.
                head[8] &= 0b1111_0011;
                clean.Write(head);
            }
            else if (!chunk.StartsWith("EXIF"u8) && !chunk.StartsWith("XMP "u8)) clean.Write(chunk);
            at += chunk.Length;
        }
        if (at != bytes.Length) return null;
        var file = clean.ToArray();
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(4), file.Length - 8);
        return file;
    }
}
