using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Binding;
using Coilwright.Storage.Json;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Stock;

/// <summary>The parts of an item that are kept as text: its bead, as in a piece file, and its other names.</summary>
internal static class StockText
{
    public static string? OfBead(BeadDescription? bead)
    {
        if (bead is null) return null;
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping })) PieceWriter.WriteBead(json, bead);
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>The bead of a text.</summary>
    /// <exception cref="ShelfUnreadableException">It is none.</exception>
    public static BeadDescription? Bead(string? text, string item, ReckoningData data) =>
        text is null ? null : BeadOf(text, data, why => Fault.Of(FaultCodes.StockItemUnreadable, why.Field, why.Value, ("item", item), ("detail", why.Code))).Description;

    /// <summary>The bead of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="data">What beads are read with.</param>
    /// <param name="told">What is told of what is wrong.</param>
    /// <exception cref="ShelfUnreadableException">It is none.</exception>
    public static Bead BeadOf(string text, ReckoningData data, Func<Fault, Fault> told)
    {
        var faults = new FaultList();
        var bead = JsonText.Read(Encoding.UTF8.GetBytes(text), out var broken) is { } json ? new BeadBinder(data, faults).Bind(json.Root).Bead : null;
        return bead ?? throw new ShelfUnreadableException(told(broken ?? faults.InOrder()[0]));
    }

    public static string OfNames(ImmutableArray<string> names) => JsonSerializer.Serialize(names.AsEnumerable());

    /// <summary>The names of a text.</summary>
    /// <exception cref="ShelfUnreadableException">It is no list of texts.</exception>
    public static ImmutableArray<string> Names(string text, string item)
    {
        try
        {
            if (JsonSerializer.Deserialize<string[]>(text) is { } names && names.All(n => n is not null)) return [.. names];
        }
        catch (JsonException)
        {
            // Told below, as a text that is JSON and no such list is.
        }
        throw new ShelfUnreadableException(Fault.Of(FaultCodes.StockItemUnreadable, "aliases", "", ("item", item), ("detail", FaultCodes.FieldType)));
    }
}
