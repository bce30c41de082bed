using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>How far an order repeats itself, and how far it may before that shows.</summary>
/// <remarks>
/// <para>No repeat shows when all of this holds. (1) At no distance up to half the length more things have their like so far on than chance gives and
/// <see cref="Margin"/> standard deviations: with c the chance that two are alike, c (n - k) + margin sqrt(c (1 - c) (n - k)) of n - k. (2) No stretch
/// comes again, without overlap, that is longer than 2 ln n / ln(1/c) + 1, about the longest that n things drawn at random repeat. (3) No kind runs
/// longer than its amount makes it, and one more. (4) Nowhere is a kind missing for longer than <see cref="Thinnest"/> times its mean distance.</para>
/// <para>The limits are our own choices; what random rows repeat: S. Karlin, G. Ghandour and others, Comparative statistics for DNA and protein sequences,
/// PNAS 82, 1985 (from memory).</para>
/// </remarks>
public sealed record RepeatMeasure
{
    /// <summary>Standard deviations over chance that do not yet show.</summary>
    public const double Margin = 2.5;

    /// <summary>A kind may be missing for so many times its mean distance.</summary>
    public const double Thinnest = 3;

    /// <summary>How many things.</summary>
    public required int Count { get; init; }

    /// <summary>How often two of them are alike by chance.</summary>
    public required double Chance { get; init; }

    /// <summary>The distance at which most is alike beside what may be; 0 for fewer than two things.</summary>
    public required int Period { get; init; }

    /// <summary>The share that is alike at that distance.</summary>
    public required double Alike { get; init; }

    /// <summary>The share that may be alike there.</summary>
    public required double AlikeUpTo { get; init; }

    /// <summary>The longest stretch that comes again, in things.</summary>
    public required int LongestRepeat { get; init; }

    /// <summary>How long it may be.</summary>
    public required int LongestRepeatUpTo { get; init; }

    /// <summary>By how much all limits together are exceeded: things alike too many, things too long, mean distances too far; 0 when no repeat shows.</summary>
    public required double Excess { get; init; }

    /// <summary>Whether no repeat shows.</summary>
    public bool NoneShows => Excess == 0;

    /// <summary>Measures a row of kinds.</summary>
    public static RepeatMeasure Of(ReadOnlySpan<int> kinds)
    {
        var n = kinds.Length;
        var counts = new SortedDictionary<int, int>();
        foreach (var kind in kinds) counts[kind] = counts.GetValueOrDefault(kind) + 1;
        var chance = n < 2 ? 0 : EchoLoss.ChanceOf(counts.Values);
        double excess = 0;
        var (period, alike, upTo, worst) = (0, 0.0, 0.0, double.NegativeInfinity);
        for (var k = 1; k <= n / 2; k++)
        {
            var matches = 0;
            for (var i = 0; i + k < n; i++)
                if (kinds[i] == kinds[i + k]) matches++;
            var allowed = chance * (n - k) + Margin * Math.Sqrt(chance * (1 - chance) * (n - k));
            excess += Math.Max(0, matches - allowed);
            if ((matches - allowed) / (n - k) is var over && over > worst) (period, alike, upTo, worst) = (k, (double)matches / (n - k), allowed / (n - k), over);
        }
        var (longest, longestUpTo) = (Longest(kinds), LongestUpTo(n, chance));
        excess += Math.Max(0, longest - longestUpTo);
        foreach (var (kind, count) in counts) excess += Unspread(kinds, kind, count);
        return new RepeatMeasure
        {
            Count = n,
            Chance = chance,
            Period = period,
            Alike = alike,
            AlikeUpTo = upTo,
            LongestRepeat = longest,
            LongestRepeatUpTo = longestUpTo,
            Excess = excess,
        };
    }

    /// <summary>The longest run of a kind that does not yet show: what its amount among all makes it, and one more.</summary>
    public static int LongestRunUpTo(int count, int all) => all / (all - count + 1) + 1;

    private static int LongestUpTo(int n, double chance) =>
        chance is 0 ? 1 : chance >= 1 ? n : Math.Min(n, (int)Math.Ceiling(2 * Math.Log(n) / Math.Log(1 / chance)) + 1);

    // The longest stretch that comes again further on without overlap: how long the ends at each two places are alike.
    private static int Longest(ReadOnlySpan<int> kinds)
    {
        var n = kinds.Length;
        var longest = 0;
        var before = new int[n + 1];
        for (var i = 0; i < n; i++)
        {
            // From the right, so that what the row before left is still there.
            for (var j = n - 1; j > i; j--)
            {
                before[j + 1] = kinds[i] == kinds[j] ? Math.Min(before[j] + 1, j - i) : 0;
                longest = Math.Max(longest, before[j + 1]);
            }
            before[i + 1] = 0;
        }
        return longest;
    }

    // Runs that are too long, in things, and stretches without the kind that are too long, in its mean distances.
    private static double Unspread(ReadOnlySpan<int> kinds, int kind, int count)
    {
        var n = kinds.Length;
        if (count == n) return 0;
        var (longest, mean, excess) = (LongestRunUpTo(count, n), (double)n / count, 0.0);
        var (run, last) = (0, -1);
        for (var i = 0; i <= n; i++)
        {
            if (i < n && kinds[i] == kind)
            {
                if (++run > longest) excess++;
            }
            else
            {
                run = 0;
                if (i < n) continue;
            }
            // Also from the beginning to the first and from the last to the end.
            excess += Math.Max(0, (i - last) / mean - Thinnest);
            last = i;
        }
        return excess;
    }
}
