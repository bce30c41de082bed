using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;
using Coilwright.Storage.Binding;
using Coilwright.Storage.Json;

namespace Coilwright.Storage;

/// <summary>What came of reading a file of costs.</summary>
public sealed class CostsRead
{
    private readonly JsonText? _text;

    internal CostsRead(Costs? costs, ImmutableArray<Fault> faults, JsonText? text) => (Costs, Faults, _text) = (costs, faults, text);

    /// <summary>The costs; null when the file cannot be used.</summary>
    public Costs? Costs { get; }

    /// <summary>What is wrong with it; empty when it can be used.</summary>
    public ImmutableArray<Fault> Faults { get; }

    /// <summary>A fault that working out its prices found, with its line and column in the file, and in a formula those of the character that it is about.</summary>
    public Fault Placed(Fault fault) => _text is { } text ? CostsFile.Placed(text.Root, fault) : fault;
}

/// <summary>Reads files of what a studio's work costs and how it is priced, <c>*.costs.json</c>: UTF-8 JSON, described in docs/costs.schema.json.</summary>
/// <remarks>Bad input is an answer, never an exception, as with <see cref="PieceFile"/>. What makes a rule sound is the core's.</remarks>
public static class CostsFile
{
    /// <summary>The format.</summary>
    public const string Format = "coilwright.costs/1";

    /// <summary>Reads costs from a file.</summary>
    /// <param name="path">Path of the file.</param>
    public static CostsRead ReadFrom(string path)
    {
        var bytes = FileReading.Bytes(path, PieceFile.MaxBytes, out var fault);
        return bytes is null ? new CostsRead(null, [fault!], null) : Read(bytes);
    }

    /// <summary>Reads costs from the bytes of a file.</summary>
    /// <param name="utf8">The bytes; a byte order mark is allowed.</param>
    public static CostsRead Read(ReadOnlyMemory<byte> utf8)
    {
        if (JsonText.Read(utf8, out var broken) is not { } text) return new CostsRead(null, [broken!], null);
        var faults = new FaultList();
        if (!PieceFormats.Accept(ref text, faults, Format, [])) return new CostsRead(null, faults.InOrder(), text);
        var costs = new CostsBinder(faults).Bind(text.Root);
        return new CostsRead(faults.Count == 0 ? costs : null, faults.InOrder(), text);
    }

    internal static Fault Placed(JsonValue root, Fault fault)
    {
        var at = root.Under(fault.Field);
        var inFormula = at.Kind == JsonKind.Text && fault.Values.TryGetValue("at", out var character) ? int.Parse(character, CultureInfo.InvariantCulture) : 0;
        var (line, column) = inFormula > 0 ? at.PlaceInText(inFormula - 1) : at.Place;
        return fault.At(line, column);
    }
}
