using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>A fault whose line and column, and nearest known name, are not worked out yet.</summary>
/// <param name="At">Index in the text.</param>
/// <param name="Fault">The fault.</param>
/// <param name="Near">The name to look up the nearest known name for; null when the fault has no such value.</param>
internal sealed record OrderFault(int At, Fault Fault, string? Near);

/// <summary>Faults of one pass over an order. Holds no more than are told, so that a hostile text cannot make a mountain of them.</summary>
internal sealed class OrderFaultList
{
    private readonly List<OrderFault> _faults = [];

    public bool IsFull => _faults.Count >= OrderLimits.FaultsTold;

    public bool IsEmpty => _faults.Count == 0;

    public ImmutableArray<OrderFault> Faults => [.. _faults];

    public void Add(int at, string code, string value, params ReadOnlySpan<(string Name, string Value)> values)
    {
        if (!IsFull) _faults.Add(new OrderFault(at, Fault.Of(code, "", Clipped(value), values), null));
    }

    public void Add(int at, Fault fault, string near)
    {
        if (!IsFull) _faults.Add(new OrderFault(at, fault, near));
    }

    /// <summary>A number as fault values carry it.</summary>
    public static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The first faults of several passes, by place, with line, column and nearest known name.</summary>
    public static ImmutableArray<Fault> Told(IEnumerable<OrderFault> faults, OrderPlaces places, IEnumerable<string> known) =>
    [
        .. faults.OrderBy(f => f.At).Take(OrderLimits.FaultsTold).Select(f =>
        {
            var (line, column) = places.Of(f.At);
            return WithNearest(f.Fault, f.Near, known).At(line, column);
        }),
    ];

    /// <summary>The fault with <c>nearest</c> among its values, when some known name is near.</summary>
    public static Fault WithNearest(Fault fault, string? near, IEnumerable<string> known)
    {
        // A thousand names are more than a piece has; the cap keeps a hostile text with many long names from costing seconds.
        const int namesLookedAt = 1000;
        var nearest = near is null ? null : NearestName.Of(near, known.Take(namesLookedAt));
        return nearest is null ? fault : fault with { Values = fault.Values.SetItem("nearest", nearest) };
    }

    /// <summary>The fault of a word with letters that names do not have, and the word to look up the nearest known name for.</summary>
    public static (Fault Fault, string Near) NameForm(string field, string word)
    {
        const int longestTold = 40;
        var lower = Lowered(word);
        var fault = Fault.Of(FaultCodes.OrderNameForm, field, Clipped(word));
        return (OrderLexer.IsName(lower) && lower.Length <= longestTold ? fault with { Values = fault.Values.Add("lower", lower) } : fault, lower);
    }

#pragma warning disable CA1308 // Normalize strings to uppercase: names are written small, so the small form is what is told
    /// <summary>The small form of a word.</summary>
    public static string Lowered(string word) => word.ToLowerInvariant();
#pragma warning restore CA1308

    /// <summary>What was found, short enough for a sentence and with nothing in it that a screen would obey.</summary>
    public static string Clipped(string value)
    {
        const int longest = 40;
        const char replacement = '\uFFFD';
        if (value.Length <= longest && !value.Any(c => char.IsControl(c) || char.IsSurrogate(c))) return value;
        var clipped = new System.Text.StringBuilder();
        foreach (var rune in value.EnumerateRunes()) // a lone surrogate comes as U+FFFD
        {
            if (clipped.Length >= longest) return clipped.Append('…').ToString();
            if (System.Text.Rune.IsControl(rune)) clipped.Append(replacement);
            else clipped.Append(rune.ToString());
        }
        return clipped.ToString();
    }
}
