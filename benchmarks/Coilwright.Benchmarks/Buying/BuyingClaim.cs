using System.Diagnostics;
using System.Globalization;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Buying;
using Coilwright.Core.Numerics;
using Coilwright.Solvers;

namespace Coilwright.Benchmarks.Buying;

/// <summary>Lists of 500 lines over 8 suppliers: how near to the cheapest their plans are known to be, and how long that takes.</summary>
public static class BuyingClaim
{
    private const int Lists = 3, Lines = 500, Suppliers = 8;

    public static Claim Claim { get; } = new("buying", "A list of 500 lines over 8 suppliers is planned to within 0.5 % of the cheapest in 10 s.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        var (small, large) = (Plans(sized: false), Plans(sized: true));
        return
        [
            new Verdict("orders far above any size that suppliers ask for: gap to a bound that holds, %, the largest", [small.Max(p => p.GapPercent)], Promise.AtMost, 0.5),
            new Verdict("the same: seconds, the longest", [small.Max(p => p.Seconds)], Promise.AtMost, 10),
            new Verdict("orders about as large as suppliers ask for: gap, %, the largest", [large.Max(p => p.GapPercent)], Promise.AtMost, 0.5),
            new Verdict("the same: seconds, the longest", [large.Max(p => p.Seconds)], Promise.AtMost, 10),
        ];
    }

    private static List<(double GapPercent, double Seconds)> Plans(bool sized)
    {
        var plans = new List<(double, double)>();
        for (ulong seed = 1; seed <= Lists; seed++)
        {
            var list = Any(seed, sized);
            var clock = Stopwatch.StartNew();
            var plan = new CheapestBuyer(effort: 1).Find(list) ?? throw new InvalidOperationException("There is no plan.");
            (var took, double gap) = (clock.Elapsed.TotalSeconds, plan.GapToBound);
            plans.Add((100 * gap, took));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{seed}  {list.Offers.Length} offers  total {plan.Total:0.00} of which freight {plan.Orders.Sum(o => o.Freight):0.00} to {plan.Orders.Length} suppliers  bound {plan.Bound:0.00}  gap {gap:0.00%}  {took:0.0} s"));
        }
        return plans;
    }

    // Half of the suppliers have any given line, in packs of their own at prices of their own, two in three cheaper from some units on; some want an order of a size, some send free from one on.
    private static BuyingList Any(ulong seed, bool sized)
    {
        var draws = new SeededDraws(seed, 0);
        ulong drawn = 0;
        int Below(int below) => draws.Below(drawn++, below);
        int[] packs = [10, 20, 25, 40, 50, 65, 100, 144];
        var wants = Enumerable.Range(0, Lines).Select(i => new Want($"bead {i}", 5 + Below(400))).ToArray();
        var offers = new List<Offer>();
        foreach (var want in wants)
        {
            var beadPrice = 2 + Below(40);
            foreach (var s in Enumerable.Range(0, Suppliers).Where((_, s) => s == want.Amount % Suppliers || Below(2) == 0))
            {
                var holds = packs[Below(packs.Length)];
                var price = Math.Round(holds * beadPrice * (80 + Below(50)) / 10_000m, 2) + 0.2m;
                List<PriceStep> steps = [new(1, price)];
                if (Below(3) > 0) steps.Add(new(2 + Below(3), Math.Round(price * 0.93m, 2)));
                if (steps.Count == 2 && Below(2) == 0) steps.Add(new(6 + Below(5), Math.Round(price * 0.85m, 2)));
                offers.Add(new Offer(want.Item, $"supplier {s}", "pack", holds, [.. steps]));
            }
        }
        var suppliers = Enumerable.Range(0, Suppliers).Select(s =>
            new Supplier($"supplier {s}", Below(3) == 0 ? sized ? 500 + Below(3000) : 50 + Below(200) : 0, 10 + Below(90), Below(2) == 0 ? sized ? 1000 + Below(4000) : 150 + Below(900) : null));
        return BuyingList.TryMake(wants, offers, suppliers, out var list, out var faults) ? list! : throw new InvalidOperationException(string.Join('\n', faults));
    }
}
