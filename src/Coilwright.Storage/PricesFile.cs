using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Shopping;
using Coilwright.Storage.Binding;
using Coilwright.Storage.Json;

namespace Coilwright.Storage;

/// <summary>Reads files of what can be had where and for how much, <c>*.prices.json</c>: UTF-8 JSON, described in docs/prices.schema.json.</summary>
/// <remarks>Bad input is an answer, never an exception, as with <see cref="PieceFile"/>. What makes an offer sound is the core's.</remarks>
public static class PricesFile
{
    /// <summary>The format.</summary>
    public const string Format = "coilwright.prices/1";

    /// <summary>Reads prices from a file.</summary>
    /// <param name="path">Path of the file.</param>
    public static (PriceList? Prices, ImmutableArray<Fault> Faults) ReadFrom(string path)
    {
        var bytes = FileReading.Bytes(path, PieceFile.MaxBytes, out var fault);
        return bytes is null ? (null, [fault!]) : Read(bytes);
    }

    /// <summary>Reads prices from the bytes of a file.</summary>
    /// <param name="utf8">The bytes; a byte order mark is allowed.</param>
    public static (PriceList? Prices, ImmutableArray<Fault> Faults) Read(ReadOnlyMemory<byte> utf8)
    {
        if (JsonText.Read(utf8, out var broken) is not { } text) return (null, [broken!]);
        var faults = new FaultList();
        if (!PieceFormats.Accept(ref text, faults, Format, [])) return (null, faults.InOrder());
        var prices = new PricesBinder(faults).Bind(text.Root);
        return (faults.Count == 0 ? prices : null, faults.InOrder());
    }
}
