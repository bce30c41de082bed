using System.Collections.Immutable;
using System.Text;

namespace Coilwright.Storage.Binding;

/// <summary>The names that may stand in one kind of object. The one list that the reader goes by and the published schema is tested against.</summary>
internal sealed class FieldSet
{
    private readonly byte[][] _utf8;

    public FieldSet(params string[] names)
    {
        Names = [.. names];
        _utf8 = [.. names.Select(Encoding.UTF8.GetBytes)];
    }

    /// <summary>The names, in the order in which they are written.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>The names in one line, for messages.</summary>
    public string Listed => string.Join(", ", Names);

    /// <summary>Index of a name given as its bytes; -1 when it is none of these.</summary>
    public int IndexOf(ReadOnlySpan<byte> name)
    {
        for (var i = 0; i < _utf8.Length; i++)
            if (name.SequenceEqual(_utf8[i]))
                return i;
        return -1;
    }
}
