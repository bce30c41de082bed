using System.Buffers.Binary;
using System.IO.Compression;

namespace Coilwright.Documents.Tests.Rendering;

/// <summary>A picture's pixels, read from an eight-bit RGB or RGBA PNG without interlacing, which is what rsvg-convert writes.</summary>
public sealed class Png
{
    private readonly byte[] _rgba;

    private Png(int width, int height, byte[] rgba) => (Width, Height, _rgba) = (width, height, rgba);

    public int Width { get; }

    public int Height { get; }

    /// <summary>Red, green, blue and opacity of a pixel.</summary>
    public (byte Red, byte Green, byte Blue, byte Opacity) this[int x, int y]
    {
        get
        {
            var at = 4 * (y * Width + x);
            return (_rgba[at], _rgba[at + 1], _rgba[at + 2], _rgba[at + 3]);
        }
    }

    /// <summary>How many different colours it has.</summary>
    public int Colours
    {
        get
        {
            var seen = new HashSet<int>();
            for (var at = 0; at < _rgba.Length; at += 4) seen.Add(BinaryPrimitives.ReadInt32BigEndian(_rgba.AsSpan(at)));
            return seen.Count;
        }
    }

    public static Png Read(byte[] file)
    {
        int width = 0, height = 0, channels = 0;
        using var packed = new MemoryStream();
        for (var at = 8; at < file.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(at));
            var kind = System.Text.Encoding.ASCII.GetString(file, at + 4, 4);
            var data = file.AsSpan(at + 8, length);
            if (kind == "IHDR")
            {
                width = BinaryPrimitives.ReadInt32BigEndian(data);
                height = BinaryPrimitives.ReadInt32BigEndian(data[4..]);
                if (data[8] != 8 || data[12] != 0) throw new NotSupportedException("Only eight bits, not interlaced.");
                channels = data[9] switch { 2 => 3, 6 => 4, var other => throw new NotSupportedException($"Colour type {other}.") };
            }
            else if (kind == "IDAT") packed.Write(data);
            at += 12 + length;
        }
        packed.Position = 0;
        using var inflate = new ZLibStream(packed, CompressionMode.Decompress);
        var stride = width * channels;
        byte[] line = new byte[stride], above = new byte[stride];
        var rgba = new byte[4 * width * height];
        for (var y = 0; y < height; y++)
        {
            var filter = inflate.ReadByte();
            inflate.ReadExactly(line);
            for (var i = 0; i < stride; i++)
            {
                int left = i >= channels ? line[i - channels] : 0, up = above[i], upLeft = i >= channels ? above[i - channels] : 0;
                line[i] += (byte)(filter switch { 0 => 0, 1 => left, 2 => up, 3 => (left + up) / 2, _ => Paeth(left, up, upLeft) });
            }
            for (var x = 0; x < width; x++)
            {
                var to = 4 * (y * width + x);
                line.AsSpan(x * channels, 3).CopyTo(rgba.AsSpan(to));
                rgba[to + 3] = channels == 4 ? line[x * channels + 3] : (byte)255;
            }
            (line, above) = (above, line);
        }
        return new Png(width, height, rgba);
    }

    private static int Paeth(int left, int up, int upLeft)
    {
        var p = left + up - upLeft;
        int a = Math.Abs(p - left), b = Math.Abs(p - up), c = Math.Abs(p - upLeft);
        return a <= b && a <= c ? left : b <= c ? up : upLeft;
    }
}
