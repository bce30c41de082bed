using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Writes JSON as outsiders were promised it: mm to four decimals, degrees to three, ratios to six, and no null without its reason.</summary>
/// <remarks>A reading that cannot be had is null, and the object that holds it ends with a <c>why</c> that gives code and sentence under the same
/// name. The same readings give the same bytes.</remarks>
internal sealed class JsonPage(Language? language = null) : IDisposable
{
    private readonly ArrayBufferWriter<byte> _bytes = new();
    private readonly Stack<List<(string Name, string Code)>> _whys = new();
    private Utf8JsonWriter? _writer;

    private Utf8JsonWriter Writer => _writer ??= new Utf8JsonWriter(_bytes,
        new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    /// <summary>An object until disposed.</summary>
    public IDisposable Object(string? name = null)
    {
        if (name is null) Writer.WriteStartObject(); else Writer.WriteStartObject(name);
        _whys.Push([]);
        return new End(() =>
        {
            WriteWhy(_whys.Pop());
            Writer.WriteEndObject();
        });
    }

    /// <summary>An array until disposed.</summary>
    public IDisposable Array(string name)
    {
        Writer.WriteStartArray(name);
        return new End(Writer.WriteEndArray);
    }

    public void Text(string name, string? value) => Writer.WriteString(name, value);

    public void Item(string value) => Writer.WriteStringValue(value);

    public void Item(int value) => Writer.WriteNumberValue(value);

    public void ItemMm(double value) => Writer.WriteNumberValue(Math.Round(value, 4));

    public void ItemRatio(double value) => Writer.WriteNumberValue(Math.Round(value, 6));

    public void Whole(string name, int? value, string? why = null)
    {
        if (value is { } whole) Writer.WriteNumber(name, whole); else Null(name, why);
    }

    /// <summary>Money in the piece's one currency, exactly.</summary>
    public void Money(string name, decimal? value, string? why = null)
    {
        if (value is { } money) Writer.WriteNumber(name, money); else Null(name, why);
    }

    public void Whole(string name, ulong value) => Writer.WriteNumber(name, value);

    public void YesOrNo(string name, bool? value, string? why = null)
    {
        if (value is { } yes) Writer.WriteBoolean(name, yes); else Null(name, why);
    }

    /// <summary>Millimetres, to four decimals.</summary>
    public void Mm(string name, double? value, string? why = null) => Number(name, value, 4, why);

    /// <summary>Degrees, to three decimals.</summary>
    public void Deg(string name, double? value, string? why = null) => Number(name, value, 3, why);

    /// <summary>Grams, to four decimals.</summary>
    public void G(string name, double? value, string? why = null) => Number(name, value, 4, why);

    /// <summary>A ratio, a share or a number of turns, to six decimals.</summary>
    public void Ratio(string name, double? value, string? why = null) => Number(name, value, 6, why);

    /// <summary>A number that may be very small: two digits of it, wherever its point is.</summary>
    public void Small(string name, double? value)
    {
        if (value is { } v) Writer.WriteNumber(name, double.Parse(v.ToString("E1", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
        else Null(name, null);
    }

    /// <summary>A null with its reason.</summary>
    public void Null(string name, string? why)
    {
        Writer.WriteNull(name);
        if (why is not null) _whys.Peek().Add((name, why));
    }

    /// <summary>A value of a notice: written by the unit that its name ends with.</summary>
    public void ByUnit(string name, double value)
    {
        if (name.EndsWith("Mm", StringComparison.Ordinal)) Mm(name, value);
        else if (name.EndsWith("Deg", StringComparison.Ordinal)) Deg(name, value);
        else Ratio(name, value);
    }

    public byte[] ToBytes()
    {
        Writer.Flush();
        return [.. _bytes.WrittenSpan, (byte)'\n'];
    }

    public void Dispose() => _writer?.Dispose();

    private void Number(string name, double? value, int decimals, string? why)
    {
        if (value is not { } number || !double.IsFinite(number))
        {
            Null(name, value is null ? why : WhyNotCodes.NotFinite);
            return;
        }
        Writer.WritePropertyName(name);
        Writer.WriteRawValue(Language.PlainNumber(number, decimals));
    }

    private void WriteWhy(List<(string Name, string Code)> whys)
    {
        if (whys.Count == 0) return;
        Writer.WriteStartObject("why");
        foreach (var (name, code) in whys)
        {
            Writer.WriteStartObject(name);
            Writer.WriteString("code", code);
            Writer.WriteString("message", language!.SayWhyNot(code));
            Writer.WriteEndObject();
        }
        Writer.WriteEndObject();
    }

    private sealed class End(Action end) : IDisposable
    {
        public void Dispose() => end();
    }
}
