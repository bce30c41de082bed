using System.Globalization;
using System.Text;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>Writes clean notation: one blank where one belongs, lines broken after a comma once they are long.</summary>
internal sealed class OrderWriter
{
    private const int LongLine = 90;
    private readonly StringBuilder _text = new();
    private int _lineStart;

    public int Length => _text.Length;

    public bool IsLineLong => _text.Length - _lineStart > LongLine;

    public override string ToString() => _text.ToString();

    public OrderWriter Add(string text)
    {
        _text.Append(text);
        return this;
    }

    /// <summary>A count and a blank; nothing for one.</summary>
    public OrderWriter Count(int times)
    {
        if (times > 1) _text.Append(times.ToString(CultureInfo.InvariantCulture)).Append(' ');
        return this;
    }

    /// <summary>The comma between two items. A line may break there, but not in a group written down with = outside its brackets.</summary>
    public void Comma(bool mayBreak)
    {
        _text.Append(',');
        if (mayBreak && IsLineLong) LineEnd();
        else _text.Append(' ');
    }

    public void LineEnd()
    {
        _text.Append('\n');
        _lineStart = _text.Length;
    }
}
