using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Reads the fields of one object by name, and notes everything wrong with them instead of stopping.</summary>
/// <remarks>A getter gives null both where the field is absent and where it was wrong (then a fault is noted); <see cref="Wrong"/> tells the two
/// apart, so that nothing is said twice of one field.</remarks>
internal sealed class Fields
{
    private readonly JsonValue?[] _values;
    private readonly FieldSet _set;
    private readonly FaultList _faults;
    private ulong _wrong;

    private Fields(JsonValue at, FieldSet set, FaultList faults)
    {
        At = at;
        _set = set;
        _faults = faults;
        _values = new JsonValue?[set.Names.Length];
        ulong meant = 0;
        foreach (var (name, value) in at.Fields)
        {
            var i = set.IndexOf(name.Raw[1..^1]);
            // An escaped name is rare and allowed: "\u0069d" is id.
            if (i < 0 && name.Raw.Contains((byte)'\\')) i = set.Names.IndexOf(name.Text);
            if (i < 0 && faults.Full)
                continue;
            if (i < 0)
            {
                var nearest = NearestName.Of(name.Text, set.Names);
                if (nearest is not null) meant |= 1UL << set.Names.IndexOf(nearest);
                faults.Add(name, FaultCodes.FieldUnknown, ("nearest", nearest ?? ""), ("known", set.Listed));
            }
            else if (_values[i] is { } first)
                faults.Add(name, FaultCodes.FieldTwice, ("firstLine", first.Place.Line.ToString(CultureInfo.InvariantCulture)));
            else
                _values[i] = value;
        }
        // A mistyped field is one slip: the field that it was meant to be is not also told as missing.
        for (var i = 0; i < _values.Length; i++)
            if (_values[i] is null && (meant >> i & 1) != 0)
                _wrong |= 1UL << i;
    }

    /// <summary>The object itself.</summary>
    public JsonValue At { get; }

    /// <summary>The fields of a value that must be an object; null, with a fault, when it is not.</summary>
    public static Fields? Of(JsonValue at, FieldSet set, FaultList faults)
    {
        if (at.Kind == JsonKind.Fields) return new Fields(at, set, faults);
        faults.Add(at, FaultCodes.FieldType, ("expected", FaultTypes.Fields), ("found", at.KindWord));
        return null;
    }

    /// <summary>The value of a field; null when it is not there.</summary>
    public JsonValue? this[string name] => _values[IndexOf(name)];

    /// <summary>Whether the field is there.</summary>
    public bool Has(string name) => _values[IndexOf(name)] is not null;

    /// <summary>Whether something was already said of the field or of a field within it.</summary>
    public bool Wrong(string path)
    {
        var end = path.AsSpan().IndexOfAny('.', '[');
        var i = _set.Names.IndexOf(end < 0 ? path : path[..end]);
        return i >= 0 && (_wrong >> i & 1) != 0;
    }

    /// <summary>Notes that something was said of a field.</summary>
    public void MarkWrong(string name) => _wrong |= 1UL << IndexOf(name);

    /// <summary>Notes a fault of a field that is there.</summary>
    public void Fault(string name, string code, params ReadOnlySpan<(string Name, string Value)> values)
    {
        MarkWrong(name);
        _faults.Add(this[name]!.Value, code, values);
    }

    /// <summary>Notes a fault of what a field stands for rather than of what is written: the thickness of a gauge.</summary>
    public void FaultOf(string name, string value, Fault fault)
    {
        MarkWrong(name);
        var at = this[name]!.Value;
        var (line, column) = at.Place;
        _faults.Add(fault with { Field = at.Path, Value = value, Line = line, Column = column });
    }

    /// <summary>Notes that a field is missing, unless something was said of it.</summary>
    public void Missing(string name, string code = FaultCodes.FieldMissing, params ReadOnlySpan<(string Name, string Value)> values)
    {
        if (Wrong(name)) return;
        MarkWrong(name);
        _faults.AddMissing(At, name, code, values);
    }

    /// <summary>Notes when the field is missing.</summary>
    public bool Require(string name)
    {
        if (Has(name)) return true;
        Missing(name);
        return false;
    }

    /// <summary>Of some fields exactly one must stand here: gives it, or notes which are missing or too many.</summary>
    public string? OneOf(params ReadOnlySpan<string> names)
    {
        string? only = null, second = null;
        var wrong = false;
        foreach (var name in names)
        {
            wrong |= Wrong(name);
            if (!Has(name)) continue;
            if (only is null) only = name;
            else second ??= name;
        }
        if (only is not null && second is null) return only;
        if (only is null && wrong) return null;
        if (only is null) Missing(names[0], FaultCodes.FieldOneOf, ("fields", string.Join(", ", names!)), ("given", "0"));
        else Fault(second!, FaultCodes.FieldOneOf, ("fields", string.Join(", ", names!)), ("given", "2"));
        return null;
    }

    /// <summary>A field that has no meaning beside another.</summary>
    public void NotWith(string name, string otherField, string other)
    {
        if (Has(name)) Fault(name, FaultCodes.FieldNotWith, ("other", other), ("otherField", otherField));
    }

    /// <summary>A text.</summary>
    public string? Text(string name, int most = PieceRules.MostText, bool mayBeEmpty = true)
    {
        if (Typed(name, JsonKind.Text, FaultTypes.Text) is not { } value) return null;
        var text = value.Text;
        if (text.Length > most) Fault(name, FaultCodes.TextTooLong, ("max", most.ToString(CultureInfo.InvariantCulture)));
        else if (!mayBeEmpty && string.IsNullOrWhiteSpace(text)) Fault(name, FaultCodes.TextEmpty);
        else return text;
        return null;
    }

    /// <summary>A currency.</summary>
    public string? Currency(string name)
    {
        if (Text(name, CurrencyCode.Letters, mayBeEmpty: false) is not { } currency) return null;
        if (CurrencyCode.Is(currency)) return currency;
        Fault(name, FaultCodes.CurrencyForm);
        return null;
    }

    /// <summary>A number, its range left to whoever asked.</summary>
    public double? Number(string name) => Typed(name, JsonKind.Number, FaultTypes.Number)?.Number;

    /// <summary>A number within limits.</summary>
    public double? Number(string name, Limits limits)
    {
        if (Number(name) is not { } number) return null;
        if (limits.Check(number) is not { } fault) return number;
        Fault(name, fault.Code, [.. fault.Values.Select(v => (v.Key, v.Value))]);
        return null;
    }

    /// <summary>A number without a fraction, within limits.</summary>
    public int? Whole(string name, Limits limits)
    {
        if (Typed(name, JsonKind.Number, FaultTypes.WholeNumber) is not { } value) return null;
        var number = value.Number;
        if (double.IsFinite(number) && number != Math.Floor(number))
        {
            Fault(name, FaultCodes.FieldType, ("expected", FaultTypes.WholeNumber), ("found", FaultTypes.Number));
            return null;
        }
        if (limits.Check(number) is not { } fault) return (int)number;
        Fault(name, fault.Code, [.. fault.Values.Select(v => (v.Key, v.Value))]);
        return null;
    }

    /// <summary><c>true</c> or <c>false</c>.</summary>
    public bool? YesOrNo(string name)
    {
        if (this[name] is not { } value) return null;
        if (value.Kind is JsonKind.True or JsonKind.False) return value.Kind == JsonKind.True;
        WrongType(name, value, FaultTypes.YesOrNo);
        return null;
    }

    /// <summary>One of a list of words.</summary>
    public T? Word<T>(string name, WordSet<T> words) where T : struct
    {
        if (Typed(name, JsonKind.Text, FaultTypes.Text) is not { } value) return null;
        if (words.Find(value.Text) is { } found) return found;
        Fault(name, FaultCodes.WordUnknown, ("known", words.Listed), ("nearest", words.Nearest(value.Text)));
        return null;
    }

    /// <summary>The items of a list; null when it is absent or no list.</summary>
    public IEnumerable<JsonValue>? List(string name) => Typed(name, JsonKind.List, FaultTypes.List)?.Items;

    /// <summary>An object within this one.</summary>
    public Fields? Inner(string name, FieldSet set)
    {
        if (this[name] is not { } value) return null;
        var inner = Of(value, set, _faults);
        if (inner is null) MarkWrong(name);
        return inner;
    }

    /// <summary>The texts of a list, each not longer than allowed; wrong ones are left out with a fault.</summary>
    public ImmutableArray<string> Texts(string name, int most = PieceRules.MostText)
    {
        if (List(name) is not { } items) return [];
        var texts = ImmutableArray.CreateBuilder<string>();
        foreach (var item in items)
        {
            var text = item.Kind == JsonKind.Text ? item.Text : null;
            if (text is null) ItemFault(name, item, FaultCodes.FieldType, ("expected", FaultTypes.Text), ("found", item.KindWord));
            else if (text.Length > most) ItemFault(name, item, FaultCodes.TextTooLong, ("max", most.ToString(CultureInfo.InvariantCulture)));
            else texts.Add(text);
        }
        return texts.ToImmutable();
    }

    /// <summary>Notes a fault of one item of a list.</summary>
    public void ItemFault(string name, JsonValue item, string code, params ReadOnlySpan<(string Name, string Value)> values)
    {
        MarkWrong(name);
        _faults.Add(item, code, values);
    }

    /// <summary>Notes that a value is of another type than it should be.</summary>
    public void WrongType(string name, JsonValue value, string expected)
    {
        MarkWrong(name);
        _faults.Add(value, FaultCodes.FieldType, ("expected", expected), ("found", value.KindWord));
    }

    private JsonValue? Typed(string name, JsonKind kind, string expected)
    {
        if (this[name] is not { } value) return null;
        if (value.Kind == kind) return value;
        WrongType(name, value, expected);
        return null;
    }

    private int IndexOf(string name)
    {
        var i = _set.Names.IndexOf(name);
        return i >= 0 ? i : throw new ArgumentException($"'{name}' is not in the list of fields.", nameof(name));
    }
}
