using System.Numerics;

namespace Coilwright.Core.Buying;

/// <summary>What so many and more of one item cost at least from some of its offers together: a dynamic programme over the beads still missing (R. Bellman, Dynamic Programming, 1957, from
/// memory).</summary>
internal sealed class Covering
{
    private readonly BuyingList _list;
    private readonly int _unit;

    public Covering(BuyingList list, int want)
    {
        _list = list;
        // Beads are counted in as many as every unit of sale is a multiple of.
        _unit = Math.Max(1, list.OffersOf[want].Aggregate(0, (gcd, o) => (int)BigInteger.GreatestCommonDivisor(gcd, list.Offers[o].Holds)));
        Missing = (list.Wants[want].Amount - 1) / _unit + 1;
    }

    /// <summary>How many are missing, in the beads that every unit of sale is a multiple of: all counts here are in those.</summary>
    public int Missing { get; }

    /// <summary>The most units of an offer that are worth buying: as many as are missing, or as reach a later step that makes more of them cheaper.</summary>
    public int MostUnits(int offer)
    {
        var o = _list.Offers[offer];
        var needed = Math.Max((Missing * (long)_unit - 1) / o.Holds + 1, o.Prices[^1].From);
        return (int)Math.Min(needed, o.Most ?? BuyingList.MostCount);
    }

    /// <summary>For each count up to all that is missing the least cost of so many at least, from nobody: <see cref="SupplierSets.Never"/> but for none.</summary>
    public long[] Start()
    {
        var least = new long[Missing + 1];
        Array.Fill(least, SupplierSets.Never, 1, Missing);
        return least;
    }

    /// <summary>The same with one more offer.</summary>
    /// <param name="before">Without it.</param>
    /// <param name="offer">The offer, by index.</param>
    /// <param name="taken">Is told how many units of it each count takes; null when nobody asks.</param>
    public long[] With(long[] before, int offer, int[]? taken = null)
    {
        var after = (long[])before.Clone();
        var (holds, most) = (_list.Offers[offer].Holds / _unit, MostUnits(offer));
        for (var units = 1; units <= most; units++)
        {
            var cost = BuyingList.Grains(_list.Offers[offer].Cost(units));
            for (var q = 1; q < after.Length; q++)
            {
                var so = before[(int)Math.Max(0, q - (long)units * holds)] + cost;
                if (so >= after[q]) continue;
                after[q] = so;
                if (taken is not null) taken[q] = units;
            }
        }
        return after;
    }

    /// <summary>Puts down the units by which so many are bought at least cost.</summary>
    /// <param name="offers">From which offers.</param>
    /// <param name="count">How many.</param>
    /// <param name="units">For each offer of the list its units.</param>
    public void Take(IReadOnlyList<int> offers, int count, int[] units)
    {
        var taken = new int[offers.Count][];
        var least = Start();
        for (var i = 0; i < taken.Length; i++) least = With(least, offers[i], taken[i] = new int[Missing + 1]);
        for (var i = taken.Length - 1; i >= 0; i--)
        {
            units[offers[i]] = taken[i][count];
            count = (int)Math.Max(0, count - (long)taken[i][count] * (_list.Offers[offers[i]].Holds / _unit));
        }
    }
}
