namespace Coilwright.Core.Faults;

/// <summary>The likeliest name meant by a mistyped one.</summary>
public static class NearestName
{
    /// <summary>The nearest of the known names by letters changed, added, dropped or swapped with a neighbour; null when none is near.</summary>
    /// <remarks>Near is at most a third of the longer name's letters, at least one. Ties go to the name that comes first.
    /// Distance: optimal string alignment (from memory).</remarks>
    public static string? Of(string typed, IEnumerable<string> known)
    {
        string? best = null;
        var least = int.MaxValue;
        foreach (var name in known)
        {
            var limit = Math.Max(1, Math.Max(typed.Length, name.Length) / 3);
            if (Math.Abs(typed.Length - name.Length) > limit) continue;
            var distance = Distance(typed, name);
            if (distance <= limit && distance < least) (best, least) = (name, distance);
        }
        return best;
    }

    private static int Distance(string a, string b)
    {
        if (a.Length > 100 || b.Length > 100) return int.MaxValue;
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                var least = Math.Min(Math.Min(rows[i - 1, j] + 1, rows[i, j - 1] + 1), rows[i - 1, j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) least = Math.Min(least, rows[i - 2, j - 2] + 1);
                rows[i, j] = least;
            }
        return rows[a.Length, b.Length];
    }
}
