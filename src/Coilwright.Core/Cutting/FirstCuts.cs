namespace Coilwright.Core.Cutting;

/// <summary>A good way to cut, found quickly: bar by bar, each with the longest item that is left and the best filling beside it.</summary>
internal sealed class FirstCuts(ScaledProblem problem)
{
    // Up to so many pieces every bar is filled anew; beyond, a filling is used as often as it can be.
    private const int FewPieces = 400;

    private readonly Knapsack _knapsack = new();

    /// <summary>The bars for what is left; something is left over where it does not come out this way.</summary>
    /// <param name="left">How many of each item are to be cut.</param>
    /// <param name="bars">How many of each bar there are.</param>
    public FilledBars Of(int[] left, int[] bars)
    {
        int[] open = [.. left], there = [.. bars];
        var filled = new List<FilledBar>();
        var passed = new bool[problem.Items];
        var often = open.Sum() > FewPieces;
        long cost = 0;
        while (Array.FindIndex(open, n => n > 0) is var any and >= 0)
        {
            var first = -1;
            for (var i = any; i < open.Length && first < 0; i++) if (open[i] > 0 && !passed[i]) first = i;
            if (first < 0) break;
            if (BestBar(first, open, there) is not { } bar)
            {
                passed[first] = true;
                continue;
            }
            var times = 1;
            if (often)
            {
                times = there[bar.Bar];
                foreach (var i in bar.Held) times = Math.Min(times, open[i] / bar.Counts[i]);
            }
            foreach (var i in bar.Held) open[i] -= bar.Counts[i] * times;
            there[bar.Bar] -= times;
            cost += problem.BarCost[bar.Bar] * times;
            filled.Add(new FilledBar(bar.Bar, bar.Counts, times));
        }
        long missing = 0;
        for (var i = 0; i < open.Length; i++) missing += open[i] * problem.Missing[i];
        return new FilledBars(filled, open, cost, missing);
    }

    // Of the bars that take the item, the one whose filling costs least for its length; of equals the one with the least left over.
    private Pattern? BestBar(int first, int[] open, int[] there)
    {
        Pattern? best = null;
        var (bestCost, bestHeld, bestLeft) = (0L, 1L, 0L);
        open[first]--;
        for (var b = 0; b < problem.Bars; b++)
        {
            if (there[b] == 0 || !problem.May[b][first]) continue;
            var room = problem.BarLength[b] - problem.Length[first];
            long[] values = [.. problem.Length.Select((l, i) => problem.May[b][i] ? (long)l : 0)];
            _knapsack.Fill(problem.Length, values, open, room);
            var held = _knapsack.ValueAt(room) + problem.Length[first];
            var left = problem.BarLength[b] - held;
            var (mine, its) = ((Int128)problem.BarCost[b] * bestHeld, (Int128)bestCost * held);
            if (best is not null && (mine > its || (mine == its && left >= bestLeft))) continue;
            var counts = _knapsack.CountsAt(room);
            counts[first]++;
            (best, bestCost, bestHeld, bestLeft) = (new Pattern(b, counts), problem.BarCost[b], held, left);
        }
        open[first]++;
        return best;
    }
}
