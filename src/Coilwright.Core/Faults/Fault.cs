using System.Collections.Immutable;

namespace Coilwright.Core.Faults;

/// <summary>One thing wrong with what was written down: a code and the values that a sentence needs, never the sentence itself.</summary>
/// <remarks>
/// <para>Is about input (a bead narrower than its hole, an unknown name in the order). It is not a <see cref="Readings.Notice"/>, which speaks
/// of a sound piece that does not do what its maker wants.</para>
/// <para><see cref="Field"/> is a path in the piece file, as <c>beads[2].boreMm</c>; relative when a part reports it and made whole by
/// <see cref="Under"/>. <see cref="Line"/> and <see cref="Column"/> count from 1 and are 0 where the part that found the fault has no text.</para>
/// </remarks>
/// <param name="Code">Stable code, as <c>value.above</c>; the sentence is made from it by Coilwright.Wording.</param>
/// <param name="Field">Path of the field, or empty for the whole.</param>
/// <param name="Value">The value found, as written.</param>
/// <param name="Values">What the sentence needs beside it: limits, units, the nearest known name.</param>
public sealed record Fault(string Code, string Field, string Value, ImmutableSortedDictionary<string, string> Values)
{
    /// <summary>Line in the text that was read, from 1; 0 when unknown.</summary>
    public int Line { get; init; }

    /// <summary>Column in that line in characters, from 1; 0 when unknown.</summary>
    public int Column { get; init; }

    /// <summary>Makes a fault from a code, a field, the value found and pairs of name and value for the sentence.</summary>
    public static Fault Of(string code, string field, string value, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var builder = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (name, text) in values) builder[name] = text;
        return new Fault(code, field, value, builder.ToImmutable());
    }

    /// <summary>The same fault with its field path under a parent's, as <c>boreMm</c> under <c>beads[2]</c>.</summary>
    public Fault Under(string parent) =>
        this with { Field = Field.Length == 0 ? parent : Field[0] == '[' ? parent + Field : parent + "." + Field };

    /// <summary>The same fault at a place in a text.</summary>
    public Fault At(int line, int column) => this with { Line = line, Column = column };
}
