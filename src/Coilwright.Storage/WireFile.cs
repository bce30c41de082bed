using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Storage.Binding;
using Coilwright.Storage.Json;

namespace Coilwright.Storage;

/// <summary>Wire at hand and how it is cut.</summary>
/// <param name="Lots">The wire.</param>
/// <param name="Rules">What a cut takes and which offcuts are kept.</param>
public sealed record WireAtHand(ImmutableArray<WireLot> Lots, CuttingRules Rules);

/// <summary>Reads and writes files of wire at hand, <c>*.wire.json</c>: UTF-8 JSON, described in docs/wire.schema.json.</summary>
/// <remarks>Bad input is an answer, never an exception, as with <see cref="PieceFile"/>. Holds no rule about wire: a pack's length and a coil's by weight are the core's.</remarks>
public static class WireFile
{
    /// <summary>The format.</summary>
    public const string Format = "coilwright.wire/1";

    /// <summary>Reads wire from a file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="data">The steels to read it with.</param>
    public static (WireAtHand? Wire, ImmutableArray<Fault> Faults) ReadFrom(string path, ReckoningData data)
    {
        var bytes = FileReading.Bytes(path, PieceFile.MaxBytes, out var fault);
        return bytes is null ? (null, [fault!]) : Read(bytes, data);
    }

    /// <summary>Reads wire from the bytes of a file.</summary>
    /// <param name="utf8">The bytes; a byte order mark is allowed.</param>
    /// <param name="data">The steels to read it with.</param>
    public static (WireAtHand? Wire, ImmutableArray<Fault> Faults) Read(ReadOnlyMemory<byte> utf8, ReckoningData data)
    {
        if (JsonText.Read(utf8, out var broken) is not { } text) return (null, [broken!]);
        var faults = new FaultList();
        if (!PieceFormats.Accept(ref text, faults, Format, [])) return (null, faults.InOrder());
        var wire = new WireBinder(data, faults).Bind(text.Root);
        return (faults.Count == 0 ? wire : null, faults.InOrder());
    }

    /// <summary>Writes wire as the bytes of a file; reading them gives the same lots. Every lot is told by its length.</summary>
    /// <param name="wire">The wire.</param>
    public static byte[] Write(WireAtHand wire)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            if (wire.Rules.LossMm > 0) json.WriteNumber("lossMm", wire.Rules.LossMm);
            if (wire.Rules.KeepFromMm is { } keep) json.WriteNumber("keepFromMm", keep);
            json.WriteStartArray("wire");
            foreach (var lot in wire.Lots) Write(json, lot);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    private static void Write(Utf8JsonWriter json, WireLot lot)
    {
        json.WriteStartObject();
        json.WriteString("name", lot.Name);
        if (lot.Wire.GaugeName is { } gauge) json.WriteString("gauge", gauge);
        else json.WriteNumber("wireMm", lot.Wire.WireMm);
        if (lot.Wire.Steel is { } steel) json.WriteString("steel", steel.Key);
        json.WriteNumber(lot.Wire.Datum switch { CoilDatum.Inside => "insideMm", CoilDatum.CentreLine => "centreMm", _ => "loopMm" }, lot.Wire.SizeMm);
        json.WriteNumber("wireLengthMm", lot.LengthMm);
        if (lot.Count is { } count) json.WriteNumber("howMany", count);
        if (lot.Price is { } price) json.WriteNumber("price", price);
        if (lot.IsOffcut) json.WriteBoolean("offcut", true);
        json.WriteEndObject();
    }
}
