using System.Collections.Immutable;
using Coilwright.Core.Stock;

namespace Coilwright.Core.Kits;

/// <summary>What is at home and where it lies.</summary>
/// <param name="Free">How many of a bead are there and not kept back; what is not listed is not there.</param>
/// <param name="Drawers">The drawers that some of a bead lies in, where they are known.</param>
public sealed record HomeStock(IReadOnlyDictionary<string, int> Free, IReadOnlyDictionary<string, ImmutableArray<string>> Drawers)
{
    /// <summary>What the stock says. Only what is counted one by one: a gram of a bead is no bead.</summary>
    public static HomeStock Of(IEnumerable<StockLine> lines)
    {
        StockLine[] counted = [.. lines.Where(l => l.Item.Unit == StockUnit.Each)];
        return new HomeStock(counted.ToDictionary(l => l.Item.Key, l => Math.Max(0, l.Balance.Free.Whole), StringComparer.Ordinal),
            counted.ToDictionary(l => l.Item.Key, l => l.Drawers.Order(DrawerOrder.It).ToImmutableArray(), StringComparer.Ordinal));
    }
}

/// <summary>Drawers as they stand one after the other: 2 before 10, A before b.</summary>
public sealed class DrawerOrder : IComparer<string?>
{
    private DrawerOrder() { }

    /// <summary>The one there is.</summary>
    public static DrawerOrder It { get; } = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        if (x is null || y is null) return (x is null ? 0 : 1) - (y is null ? 0 : 1);
        int i = 0, j = 0;
        while (i < x.Length && j < y.Length)
        {
            var by = char.IsAsciiDigit(x[i]) && char.IsAsciiDigit(y[j]) ? Numbers(x, ref i, y, ref j) : char.ToUpperInvariant(x[i++]).CompareTo(char.ToUpperInvariant(y[j++]));
            if (by != 0) return by;
        }
        var rest = (x.Length - i).CompareTo(y.Length - j);
        // 01 and 1, a and A: no two names are the same place.
        return rest != 0 ? rest : string.CompareOrdinal(x, y);
    }

    private static int Numbers(string x, ref int i, string y, ref int j)
    {
        var (a, b) = (Number(x, ref i), Number(y, ref j));
        return a.Length != b.Length ? a.Length.CompareTo(b.Length) : string.CompareOrdinal(a, b);
    }

    private static string Number(string text, ref int at)
    {
        var from = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return text[from..at].TrimStart('0');
    }
}
