using System.Text;
using System.Text.Json;
using Coilwright.Core.Faults;

namespace Coilwright.Storage.Json;

/// <summary>What a value in a JSON text is.</summary>
internal enum JsonKind : byte
{
    /// <summary>Curly brackets.</summary>
    Fields,

    /// <summary>Square brackets.</summary>
    List,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary><c>true</c>.</summary>
    True,

    /// <summary><c>false</c>.</summary>
    False,

    /// <summary><c>null</c>.</summary>
    Nothing,

    /// <summary>The name of a field; its value is the next entry.</summary>
    Name,
}

/// <summary>A JSON text read once, with the place of every value in it.</summary>
/// <remarks>
/// <para>Strict JSON (RFC 8259), but for a byte order mark at its start, which is skipped. Nothing is checked about what the fields mean, and a field may
/// stand twice: both are the binder's business, since only it knows the names.</para>
/// <para>Kept as one flat list in the text's own order (an object, its first name, that name's value, ...), each entry knowing where it ends. Lines and
/// columns are worked out when a fault asks for them: sound files, the usual ones, never pay for them. Time and space are linear in the text.</para>
/// </remarks>
internal sealed class JsonText
{
    /// <summary>How deep brackets may stand inside one another.</summary>
    public const int MaxDepth = 64;

    private readonly ReadOnlyMemory<byte> _utf8;
    private readonly List<Entry> _entries;
    private TextPlaces? _places;

    private JsonText(ReadOnlyMemory<byte> utf8, List<Entry> entries) => (_utf8, _entries) = (utf8, entries);

    /// <summary>One value or name: what it is, its bytes, and the entry after it and all that is in it.</summary>
    internal readonly record struct Entry(JsonKind Kind, int Start, int End, int Next);

    /// <summary>The outermost value.</summary>
    public JsonValue Root => new(this, 0);

    internal ReadOnlySpan<byte> Utf8 => _utf8.Span;

    internal TextPlaces Places => _places ??= new TextPlaces(_utf8);

    internal Entry this[int index] => _entries[index];

    /// <summary>Reads a text, or says the one thing that keeps it from being read: past that, nothing in it can be trusted.</summary>
    public static JsonText? Read(ReadOnlyMemory<byte> utf8, out Fault? fault)
    {
        fault = null;
        if (!Utf8Valid(utf8.Span))
        {
            fault = NotUtf8(utf8);
            return null;
        }
        return new Building(utf8).Run(out fault);
    }

    /// <summary>The path of an entry, as <c>beads[2].boreMm</c>; empty for the root.</summary>
    internal string PathOf(int index)
    {
        var path = new StringBuilder();
        for (var at = 0; at != index;)
        {
            var inList = _entries[at].Kind == JsonKind.List;
            var child = at + 1;
            for (var n = 0; ; n++)
            {
                var value = inList ? child : child + 1;
                if (index < _entries[value].Next)
                {
                    AppendStep(path, inList, n, inList ? default : NameSpan(child));
                    // The name of a field has the path of the field.
                    if (index == child) return path.ToString();
                    at = value;
                    break;
                }
                child = _entries[value].Next;
            }
        }
        return path.ToString();
    }

    private ReadOnlySpan<byte> NameSpan(int index) => Utf8[(_entries[index].Start + 1)..(_entries[index].End - 1)];

    private static void AppendStep(StringBuilder path, bool inList, int n, ReadOnlySpan<byte> name)
    {
        if (inList) path.Append('[').Append(n).Append(']');
        else
        {
            if (path.Length > 0) path.Append('.');
            path.Append(Shortened(Encoding.UTF8.GetString(name)));
        }
    }

    private static string Shortened(string text) => text.Length <= 60 ? text : text[..60] + "...";

    private static bool Utf8Valid(ReadOnlySpan<byte> bytes) => System.Text.Unicode.Utf8.IsValid(bytes);

    /// <summary>What is wrong with bytes that are no UTF-8, and where.</summary>
    internal static Fault NotUtf8(ReadOnlyMemory<byte> utf8)
    {
        var bytes = utf8.Span;
        var offset = 0;
        while (Rune.DecodeFromUtf8(bytes[offset..], out _, out var read) == System.Buffers.OperationStatus.Done) offset += read;
        var (line, column) = new TextPlaces(utf8[..offset]).Of(offset);
        return Fault.Of(FaultCodes.FileNotUtf8, "", $"0x{bytes[offset]:x2}",
            ("offset", offset.ToString(System.Globalization.CultureInfo.InvariantCulture))).At(line, column);
    }

    /// <summary>The reading itself: the framework's tokenizer, and a stack of what is open.</summary>
    private sealed class Building(ReadOnlyMemory<byte> utf8)
    {
        private readonly List<Entry> _entries = new(Math.Min(utf8.Length / 8 + 8, 1 << 20));
        private readonly Stack<int> _open = new();

        public JsonText? Run(out Fault? fault)
        {
            var bytes = utf8.Span;
            var mark = bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
            // One level more than is allowed, so that the limit is ours to report and not the tokenizer's.
            var options = new JsonReaderOptions { MaxDepth = MaxDepth + 1 };
            var offset = mark;
            // As long as more might come, the tokenizer throws only on what is wrong whatever follows; what it refuses once it is told that this
            // is the end is wrong because of the end. That parts a broken file from one that was cut off.
            var reader = new Utf8JsonReader(bytes[mark..], isFinalBlock: false, new JsonReaderState(options));
            var final = false;
            try
            {
                while (true)
                {
                    if (!reader.Read())
                    {
                        if (final) break;
                        final = true;
                        offset += (int)reader.BytesConsumed;
                        reader = new Utf8JsonReader(bytes[offset..], isFinalBlock: true, reader.CurrentState);
                        continue;
                    }
                    fault = Take(ref reader, offset);
                    if (fault is not null) return null;
                }
            }
            catch (JsonException e)
            {
                var places = new TextPlaces(utf8);
                fault = final && _entries.Count > 0 && _open.Count > 0 || final && OnlyBlanks(bytes[mark..])
                    ? AtTheEnd(places, OnlyBlanks(bytes[mark..]))
                    : Broken(places, places.Offset(e.LineNumber ?? 0, e.BytePositionInLine ?? 0));
                return null;
            }
            fault = null;
            return new JsonText(utf8, _entries);
        }

        private Fault? Take(ref Utf8JsonReader reader, int offset)
        {
            var start = offset + (int)reader.TokenStartIndex;
            var end = offset + (int)reader.BytesConsumed;
            switch (reader.TokenType)
            {
                case JsonTokenType.StartObject or JsonTokenType.StartArray:
                    if (_open.Count == MaxDepth)
                    {
                        var (line, column) = new TextPlaces(utf8).Of(start);
                        return Fault.Of(FaultCodes.FileTooDeep, OpenPath(), "", ("max", "64")).At(line, column);
                    }
                    _open.Push(_entries.Count);
                    _entries.Add(new Entry(reader.TokenType == JsonTokenType.StartObject ? JsonKind.Fields : JsonKind.List, start, end, 0));
                    return null;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    var opened = _open.Pop();
                    _entries[opened] = _entries[opened] with { End = end, Next = _entries.Count };
                    return null;
                case JsonTokenType.PropertyName:
                    // The colon may be consumed with the name; its own bytes are the quoted ones.
                    Add(JsonKind.Name, start, start + reader.ValueSpan.Length + 2);
                    return reader.ValueIsEscaped ? CheckEscapes(ref reader, start) : null;
                case JsonTokenType.String:
                    Add(JsonKind.Text, start, end);
                    return reader.ValueIsEscaped ? CheckEscapes(ref reader, start) : null;
                case JsonTokenType.Number:
                    Add(JsonKind.Number, start, start + reader.ValueSpan.Length);
                    return null;
                case JsonTokenType.True:
                    Add(JsonKind.True, start, end);
                    return null;
                case JsonTokenType.False:
                    Add(JsonKind.False, start, end);
                    return null;
                default:
                    Add(JsonKind.Nothing, start, end);
                    return null;
            }
        }

        private void Add(JsonKind kind, int start, int end) => _entries.Add(new Entry(kind, start, end, _entries.Count + 1));

        /// <summary>Half of a pair of escapes (<c>\ud83d</c> alone) is no character; found here so that reading a text later cannot fail.</summary>
        private Fault? CheckEscapes(ref Utf8JsonReader reader, int start)
        {
            try
            {
                reader.GetString();
                return null;
            }
            catch (InvalidOperationException)
            {
                var (line, column) = new TextPlaces(utf8).Of(start);
                return Fault.Of(FaultCodes.FileNotJson, OpenPath(), Encoding.UTF8.GetString(reader.ValueSpan[..Math.Min(60, reader.ValueSpan.Length)]),
                    ("detail", FaultDetails.Escape)).At(line, column);
            }
        }

        private Fault AtTheEnd(TextPlaces places, bool empty)
        {
            var (line, column) = places.Of(utf8.Length);
            return (empty ? Fault.Of(FaultCodes.FileNotJson, "", "", ("detail", FaultDetails.Empty))
                : Fault.Of(FaultCodes.FileTruncated, OpenPath(), "")).At(line, column);
        }

        private Fault Broken(TextPlaces places, int offset)
        {
            var bytes = utf8.Span;
            offset = Math.Min(offset, bytes.Length);
            var word = JsonSlip.WordAt(bytes, offset, out var wordStart);
            if (word is "NaN" or "nan" or "Infinity" or "-Infinity" or "inf" or "-inf")
            {
                var (l, c) = places.Of(wordStart);
                return Fault.Of(FaultCodes.ValueNotFinite, OpenPath(), word).At(l, c);
            }
            var detail = _open.Count == 0 && _entries.Count > 0 ? FaultDetails.AfterTheEnd : JsonSlip.Kind(bytes, offset);
            var (line, column) = places.Of(offset);
            return Fault.Of(FaultCodes.FileNotJson, OpenPath(), word, ("detail", detail)).At(line, column);
        }

        private static bool OnlyBlanks(ReadOnlySpan<byte> bytes) => bytes.IndexOfAnyExcept(" \t\r\n"u8) < 0;

        /// <summary>Path of the place that was being read.</summary>
        private string OpenPath()
        {
            var path = new StringBuilder();
            foreach (var index in _open.Reverse())
            {
                var inList = _entries[index].Kind == JsonKind.List;
                // Inside an open list, count what is finished; inside an open object, the last name.
                int n = 0, name = -1;
                for (var child = index + 1; child < _entries.Count;)
                {
                    if (!inList)
                    {
                        name = child;
                        if (child + 1 >= _entries.Count) break;
                        child++;
                    }
                    var next = _entries[child].Next;
                    if (next == 0) break;
                    child = next;
                    n++;
                }
                if (inList) AppendStep(path, true, n, default);
                else if (name >= 0)
                    AppendStep(path, false, 0, utf8.Span[(_entries[name].Start + 1)..(_entries[name].End - 1)]);
            }
            return path.ToString();
        }
    }
}
