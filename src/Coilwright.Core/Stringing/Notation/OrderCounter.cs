namespace Coilwright.Core.Stringing.Notation;

/// <summary>Writes an order's levels as notation, like things in a row and repeats counted out.</summary>
internal sealed class OrderCounter(StrungGroups groups, IReadOnlyList<string> beadIds)
{
    // A repeat of more things than this is not looked for: makers' repeats are shorter, and looking takes time in line with it.
    private const int LongestRepeat = 40;

    // Each bracket for a repeat strings what is in it at least twice, so no more than 17 stand inside one another: 2^17 beads are within the
    // limit of 200,000, 2^18 are not. Groups deeper than the rest of the 50, which no maker writes, get no such brackets.
    private const int DeepestForRepeats = OrderLimits.Depth - 17;
    private readonly OrderWriter _writer = new();
    private readonly HashSet<int> _written = [];

    public string Write()
    {
        Write(groups.Outside);
        _writer.LineEnd();
        return _writer.ToString();
    }

    private void Write(ReadOnlySpan<Strung> level)
    {
        var repeats = Repeats(level, groups.Depth <= DeepestForRepeats ? LongestRepeat : 1);
        for (var i = 0; i < level.Length;)
        {
            if (_writer.Length > OrderLimits.TextLength) return; // too long to be of use, as the caller will find
            if (i > 0) _writer.Comma(mayBreak: true);
            var (length, times) = repeats[i];
            _writer.Count(times);
            if (length == 1)
            {
                Write(level[i]);
            }
            else
            {
                _writer.Add("(");
                Write(level.Slice(i, length));
                _writer.Add(")");
            }
            i += length * times;
        }
    }

    private void Write(Strung strung)
    {
        if (!strung.IsGroup)
        {
            _writer.Add(beadIds[strung.Code]);
            return;
        }
        if (strung.IsBackwards) _writer.Add("backwards ");
        _writer.Add(groups.Name(strung.Group));
        if (!_written.Add(strung.Group)) return;
        _writer.Add(" (");
        Write(groups.Content(strung.Group));
        _writer.Add(")");
    }

    /// <summary>For each place the repeat that starts there and takes in the most: how many things are repeated, and how many times. (1, 1) when
    /// nothing is.</summary>
    private static (int Length, int Times)[] Repeats(ReadOnlySpan<Strung> level, int longest)
    {
        var best = new (int Length, int Times)[level.Length];
        Array.Fill(best, (1, 1));
        for (var length = 1; length <= longest && 2 * length <= level.Length; length++)
        {
            var alike = 0; // how many things from here on are like the one so much further
            for (var i = level.Length - length - 1; i >= 0; i--)
            {
                alike = level[i] == level[i + length] ? alike + 1 : 0;
                var times = 1 + (alike / length);
                if (times > 1 && length * (times - 1) > best[i].Length * (best[i].Times - 1)) best[i] = (length, times);
            }
        }
        return best;
    }
}
