using System.Buffers.Binary;
using System.Collections.Frozen;
using System.Text;

namespace Coilwright.Documents.Typefaces;

/// <summary>One face of a typeface as its TrueType file tells it: which characters it has and how wide each one is set.</summary>
/// <remarks>
/// <para>Measures are in em, the type size itself: a width of 0.5 em is 6 points wide at 12 points.</para>
/// <para>Reads the tables <c>head</c>, <c>hhea</c>, <c>hmtx</c>, <c>OS/2</c> and <c>cmap</c> (formats 4 and 12) alone. No kerning and no shaping:
/// letters stand side by side at their own widths, which is how the pages are drawn too.</para>
/// <para>Source of the layout: OpenType specification 1.9, chapters of the tables named.</para>
/// </remarks>
public sealed class TrueTypeFace
{
    private readonly FrozenDictionary<int, double> _widths;
    private readonly byte[] _file;

    private TrueTypeFace(byte[] file, FrozenDictionary<int, double> widths)
    {
        _file = file;
        _widths = widths;
    }

    /// <summary>The whole file, for embedding.</summary>
    public ReadOnlyMemory<byte> File => _file;

    /// <summary>From the base line up to what the tallest letters need, em.</summary>
    public double AscentEm { get; private init; }

    /// <summary>From the base line down to what the deepest letters need, em; positive.</summary>
    public double DescentEm { get; private init; }

    /// <summary>Height of a capital, em.</summary>
    public double CapHeightEm { get; private init; }

    /// <summary>Height of a small x, em.</summary>
    public double XHeightEm { get; private init; }

    /// <summary>Whether the face has the character.</summary>
    public bool Has(Rune character) => _widths.ContainsKey(character.Value);

    /// <summary>Width that the character is set in, em; 0 for one that the face lacks.</summary>
    public double WidthEm(Rune character) => _widths.GetValueOrDefault(character.Value);

    /// <summary>Width of a line of text, em.</summary>
    public double WidthEm(string text)
    {
        var sum = 0.0;
        foreach (var rune in text.EnumerateRunes()) sum += WidthEm(rune);
        return sum;
    }

    /// <summary>Reads a TrueType file.</summary>
    /// <exception cref="InvalidDataException">It is not one, or a table that is needed is missing or cut short.</exception>
    public static TrueTypeFace Read(byte[] file)
    {
        try
        {
            var tables = Tables(file);
            ReadOnlySpan<byte> head = Table(file, tables, "head"), hhea = Table(file, tables, "hhea"), hmtx = Table(file, tables, "hmtx"),
                os2 = Table(file, tables, "OS/2"), cmap = Table(file, tables, "cmap");
            double em = U16(head, 18);
            if (em == 0) throw new InvalidDataException("The typeface file gives no em.");
            var measured = U16(hhea, 34);
            var widths = new Dictionary<int, double>();
            foreach (var (character, glyph) in Characters(cmap))
                if (glyph != 0) widths[character] = U16(hmtx, 4 * Math.Min(glyph, measured - 1)) / em;
            return new TrueTypeFace(file, widths.ToFrozenDictionary())
            {
                AscentEm = I16(hhea, 4) / em,
                DescentEm = -I16(hhea, 6) / em,
                XHeightEm = U16(os2, 0) >= 2 ? I16(os2, 86) / em : 0.5,
                CapHeightEm = U16(os2, 0) >= 2 ? I16(os2, 88) / em : 0.7,
            };
        }
        catch (ArgumentOutOfRangeException cut)
        {
            throw new InvalidDataException("The typeface file ends in the middle.", cut);
        }
    }

    private static Dictionary<string, (int Start, int Length)> Tables(ReadOnlySpan<byte> file)
    {
        var tables = new Dictionary<string, (int, int)>(StringComparer.Ordinal);
        for (var i = 0; i < U16(file, 4); i++)
        {
            var entry = file.Slice(12 + 16 * i, 16);
            tables[Encoding.Latin1.GetString(entry[..4])] = (I32(entry, 8), I32(entry, 12));
        }
        return tables;
    }

    private static ReadOnlySpan<byte> Table(ReadOnlySpan<byte> file, Dictionary<string, (int Start, int Length)> tables, string name) =>
        tables.TryGetValue(name, out var at)
            ? file.Slice(at.Start, at.Length)
            : throw new InvalidDataException($"The typeface file has no table '{name}'.");

    private static List<(int Character, int Glyph)> Characters(ReadOnlySpan<byte> cmap)
    {
        var best = -1;
        for (var i = 0; i < U16(cmap, 2); i++)
        {
            var start = I32(cmap, 8 + 8 * i);
            var format = U16(cmap, start);
            if (format == 12 || (format == 4 && best < 0)) best = start;
        }
        if (best < 0) throw new InvalidDataException("The typeface file has no character table in format 4 or 12.");
        return U16(cmap, best) == 12 ? Segmented(cmap[best..]) : Mapped(cmap[best..]);
    }

    private static List<(int Character, int Glyph)> Segmented(ReadOnlySpan<byte> map)
    {
        var found = new List<(int, int)>();
        for (var i = 0; i < I32(map, 12); i++)
        {
            int first = I32(map, 16 + 12 * i), last = I32(map, 20 + 12 * i), glyph = I32(map, 24 + 12 * i);
            for (var c = first; c <= last; c++) found.Add((c, glyph + c - first));
        }
        return found;
    }

    private static List<(int Character, int Glyph)> Mapped(ReadOnlySpan<byte> map)
    {
        var found = new List<(int, int)>();
        var segments = U16(map, 6) / 2;
        int ends = 14, starts = 16 + 2 * segments, deltas = starts + 2 * segments, offsets = deltas + 2 * segments;
        for (var i = 0; i < segments; i++)
        {
            int first = U16(map, starts + 2 * i), last = U16(map, ends + 2 * i), delta = U16(map, deltas + 2 * i);
            var offset = U16(map, offsets + 2 * i);
            for (var c = first; c <= last && c != 0xffff; c++)
            {
                var glyph = offset == 0 ? c : U16(map, offsets + 2 * i + offset + 2 * (c - first));
                if (glyph != 0) found.Add((c, (glyph + delta) & 0xffff));
            }
        }
        return found;
    }

    private static int U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);

    private static int I16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt16BigEndian(bytes[at..]);

    private static int I32(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt32BigEndian(bytes[at..]);
}
