using System.Buffers.Text;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Coilwright.Core.Faults;

namespace Coilwright.Storage.Json;

/// <summary>One value of a <see cref="JsonText"/>: what it is, what it says, where it stands.</summary>
internal readonly record struct JsonValue(JsonText Source, int Index)
{
    /// <summary>What it is.</summary>
    public JsonKind Kind => Source[Index].Kind;

    /// <summary>Path of the value, as <c>beads[2].boreMm</c>.</summary>
    public string Path => Source.PathOf(Index);

    /// <summary>Line and column of its first sign.</summary>
    public (int Line, int Column) Place => Source.Places.Of(Source[Index].Start);

    /// <summary>Its bytes in the text, quotes included.</summary>
    public ReadOnlySpan<byte> Raw => Source.Utf8[Source[Index].Start..Source[Index].End];

    /// <summary>What a message says of it: a text without its quotes, a number as written, at most 60 characters; empty for lists and objects.</summary>
    public string Written
    {
        get
        {
            if (Kind is JsonKind.Fields or JsonKind.List) return "";
            var text = Kind is JsonKind.Text or JsonKind.Name ? Text : Encoding.UTF8.GetString(Raw);
            if (text.Length <= 60) return text;
            // Never cut a pair of units in two.
            return text[..(char.IsHighSurrogate(text[59]) ? 59 : 60)] + "...";
        }
    }

    /// <summary>The text or name itself.</summary>
    public string Text
    {
        get
        {
            var inside = Raw[1..^1];
            if (!inside.Contains((byte)'\\')) return Encoding.UTF8.GetString(inside);
            var reader = new Utf8JsonReader(Raw);
            reader.Read();
            return reader.GetString()!;
        }
    }

    /// <summary>The number itself; infinite when it is too large for a double.</summary>
    public double Number => Utf8Parser.TryParse(Raw, out double value, out var used) && used == Raw.Length ? value : double.PositiveInfinity;

    /// <summary>The number as money; null when it is too large.</summary>
    public decimal? Money => Utf8Parser.TryParse(Raw, out decimal value, out var used, Raw.ContainsAny((byte)'e', (byte)'E') ? 'e' : 'g') && used == Raw.Length
        ? value : null;

    /// <summary>The word for its kind in messages, one of <see cref="FaultTypes"/>.</summary>
    public string KindWord => Kind switch
    {
        JsonKind.Fields => FaultTypes.Fields,
        JsonKind.List => FaultTypes.List,
        JsonKind.Text or JsonKind.Name => FaultTypes.Text,
        JsonKind.Number => FaultTypes.Number,
        JsonKind.Nothing => FaultTypes.Nothing,
        _ => FaultTypes.YesOrNo,
    };

    /// <summary>The items of a list, in order; none for anything else.</summary>
    public IEnumerable<JsonValue> Items
    {
        get
        {
            if (Kind != JsonKind.List) yield break;
            var end = Source[Index].Next;
            for (var at = Index + 1; at < end; at = Source[at].Next) yield return new JsonValue(Source, at);
        }
    }

    /// <summary>The fields of an object, in order; none for anything else.</summary>
    public IEnumerable<(JsonValue Name, JsonValue Value)> Fields
    {
        get
        {
            if (Kind != JsonKind.Fields) yield break;
            var end = Source[Index].Next;
            for (var at = Index + 1; at < end; at = Source[at + 1].Next)
                yield return (new JsonValue(Source, at), new JsonValue(Source, at + 1));
        }
    }

    /// <summary>A fault of this value.</summary>
    public Fault Fault(string code, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var (line, column) = Place;
        return Core.Faults.Fault.Of(code, Path, Written, values).At(line, column);
    }

    /// <summary>Line and column of a character of a text, as it stands in the file, escapes and all.</summary>
    /// <param name="character">Index in <see cref="Text"/>, from 0.</param>
    public (int Line, int Column) PlaceInText(int character)
    {
        var start = Source[Index].Start + 1;
        var inside = Raw[1..^1];
        var at = 0;
        for (var n = 0; n < character && at < inside.Length;)
        {
            if (inside[at] == '\\')
            {
                at += inside[at + 1] == 'u' ? 6 : 2;
                n++;
            }
            else
            {
                Rune.DecodeFromUtf8(inside[at..], out var sign, out var read);
                at += read;
                n += sign.Utf16SequenceLength;
            }
        }
        return Source.Places.Of(start + Math.Min(at, inside.Length));
    }

    /// <summary>The deepest value that a path such as <c>seat.lengthMm</c> or <c>lengthRangeMm[1]</c> under this one leads to; this one when none does.</summary>
    public JsonValue Under(string path)
    {
        var at = this;
        foreach (var step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            JsonValue? next = null;
            if (step[0] == '[')
            {
                if (int.TryParse(step.AsSpan(1, step.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture, out var n))
                    foreach (var item in at.Items.Skip(n).Take(1)) next = item;
            }
            else
                foreach (var (name, value) in at.Fields)
                    if (name.Text == step)
                    {
                        next = value;
                        break;
                    }
            if (next is null) break;
            at = next.Value;
        }
        return at;
    }
}
