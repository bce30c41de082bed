using System.Text;

namespace Coilwright.Storage.Json;

/// <summary>Lines and columns of a UTF-8 text, from 1, by byte offset.</summary>
/// <remarks>A line ends at a line feed. Columns count UTF-16 units, as editors and the order notation do, so that an accented letter is one column. A byte
/// order mark takes no column.</remarks>
internal sealed class TextPlaces
{
    private readonly ReadOnlyMemory<byte> _utf8;
    private readonly List<int> _lineStarts = [];

    public TextPlaces(ReadOnlyMemory<byte> utf8)
    {
        _utf8 = utf8;
        var bytes = utf8.Span;
        var at = bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        while (true)
        {
            _lineStarts.Add(at);
            var feed = bytes[at..].IndexOf((byte)'\n');
            if (feed < 0) return;
            at += feed + 1;
        }
    }

    /// <summary>Line and column of a byte.</summary>
    public (int Line, int Column) Of(int offset)
    {
        var found = _lineStarts.BinarySearch(offset);
        var line = Math.Max(found >= 0 ? found : ~found - 1, 0);
        var start = Math.Min(_lineStarts[line], offset);
        return (line + 1, Encoding.UTF8.GetCharCount(_utf8.Span[start..offset]) + 1);
    }

    /// <summary>Byte of a line counted from 0 and a byte in it.</summary>
    public int Offset(long line, long byteInLine)
    {
        var start = _lineStarts[(int)Math.Min(line, _lineStarts.Count - 1)];
        return (int)Math.Min(start + byteInLine, _utf8.Length);
    }
}
