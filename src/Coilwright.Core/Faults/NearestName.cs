namespace Coilwright.Core.Faults;

/// <summary>The likeliest name meant by a mistyped one.</summary>
public static class NearestName
{
    /// <summary>The nearest of the known names by letters changed, added, dropped or swapped with a neighbour; null when none is near.</summary>
    /// <remarks>Near is at most a third of the longer name's letters, at least one. Ties go to the name that comes first.
    /// A name of more than fifty letters is near to nothing: nobody means one, and comparing them costs. Distance: optimal string alignment (from
    /// memory).</remarks>
    public static string? Of(string typed, IEnumerable<string> known)
    {
        string? best = null;
        var least = int.MaxValue;
        foreach (var name in known)
        {
            var limit = Math.Max(1, Math.Max(typed.Length, name.Length) / 3);
            var distance = Distance(typed, name, Math.Min(limit, least - 1));
            if (distance < least) (best, least) = (name, distance);
        }
        return best;
    }

    /// <summary>The distance of two names; <see cref="int.MaxValue"/> when it is above the limit, which is found out early.</summary>
    private static int Distance(string a, string b, int limit)
    {
        const int longest = 50;
        if (a.Length > longest || b.Length > longest || Math.Abs(a.Length - b.Length) > limit) return int.MaxValue;
        const int far = 2 * longest;
        Span<int> before = stackalloc int[longest + 1];
        Span<int> last = stackalloc int[longest + 1];
        Span<int> row = stackalloc int[longest + 1];
        row.Fill(far);
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            // Only the cells within the limit of the diagonal can come in below it.
            var (first, end) = (Math.Max(1, i - limit), Math.Min(b.Length, i + limit));
            row[first - 1] = first == 1 ? i : far;
            var nearest = row[first - 1];
            for (var j = first; j <= end; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                var least = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) least = Math.Min(least, before[j - 2] + 1);
                row[j] = least;
                nearest = Math.Min(nearest, least);
            }
            if (end < b.Length) row[end + 1] = far;
            if (nearest > limit + 1) return int.MaxValue; // a swap looks back two rows, so one row above the limit does not decide it
            var free = before;
            before = last;
            last = row;
            row = free;
        }
        return last[b.Length] <= limit ? last[b.Length] : int.MaxValue;
    }
}
