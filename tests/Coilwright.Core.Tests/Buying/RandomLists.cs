using Coilwright.Core.Buying;
using CsCheck;

namespace Coilwright.Core.Tests.Buying;

/// <summary>Small lists to buy from, and every plan of them.</summary>
public static class RandomLists
{
    private const int MostUnits = 3;

    /// <param name="sized">Whether orders may have to be of a size, or be sent free from one on.</param>
    public static Gen<BuyingList> Any(bool sized) =>
        from wants in Gen.Int[1, 9].Array[1, 2]
        from suppliers in Gen.Select(Gen.Int[0, 12], Gen.Int[0, 20], Gen.Int[0, 20], Gen.Bool).Array[1, 3]
        from offers in Gen.Select(Gen.Int[0, wants.Length - 1], Gen.Int[0, suppliers.Length - 1], Gen.Int[1, 6], Gen.Int[0, 9], Gen.Int[0, 5], Gen.Int[0, MostUnits]).Array[1, 5]
        select Make(wants, suppliers, offers, sized);

    private static BuyingList Make(int[] wants, (int Freight, int Least, int Free, bool IsFree)[] suppliers, (int Item, int Supplier, int Holds, int Price, int Less, int Most)[] offers, bool sized)
    {
        // A second price from two units on, dearer or cheaper; a supplier has a few units, so that there is an end to the plans.
        var made = BuyingList.TryMake(
            wants.Select((amount, i) => new Want($"item {i}", amount)),
            offers.Select(o => new Offer($"item {o.Item}", $"shop {o.Supplier}", "bag", o.Holds,
                o.Less == 0 ? [new PriceStep(1, o.Price)] : [new PriceStep(1, o.Price), new PriceStep(2, Math.Max(0, o.Price - o.Less + 2.5m))])
            { Most = o.Most }),
            suppliers.Select((s, i) => sized ? new Supplier($"shop {i}", s.Least, s.Freight, s.IsFree ? s.Free : null) : new Supplier($"shop {i}", 0, s.Freight)),
            out var list, out var faults);
        return made ? list! : throw new InvalidOperationException(string.Join('\n', faults));
    }

    /// <summary>The cheapest of all plans, by going through every one; null when there is none.</summary>
    public static BuyingPlan? Cheapest(BuyingList list)
    {
        BuyingPlan? best = null;
        var units = new int[list.Offers.Length];
        Go(0);
        return best;

        void Go(int o)
        {
            if (o == units.Length)
            {
                if (BuyingPlan.Of(list, units) is { } plan && !(plan.Total >= best?.Total)) best = plan;
                return;
            }
            for (units[o] = 0; units[o] <= list.Offers[o].Most!; units[o]++) Go(o + 1);
            units[o] = 0;
        }
    }
}
