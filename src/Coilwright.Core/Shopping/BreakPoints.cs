using System.Collections.Immutable;
using Coilwright.Core.Buying;

namespace Coilwright.Core.Shopping;

/// <summary>Some more of a piece, made for some more money.</summary>
/// <param name="Piece">The piece, by index.</param>
/// <param name="More">How many more of it.</param>
/// <param name="Extra">What its plan costs more than the one without them; what has no price is in neither.</param>
/// <param name="Plan">The plan with them.</param>
public sealed record BreakPoint(int Piece, int More, decimal Extra, ShoppingPlan Plan)
{
    /// <summary>What each of them costs more.</summary>
    public decimal ExtraEach => Extra / More;

    /// <summary>Whether both plans are the cheapest there are, so that the difference is what it says.</summary>
    public bool IsProven { get; init; }
}

/// <summary>Where buying a little more makes more pieces: packs, price steps and free freight leave steps in the cost.</summary>
public static class BreakPoints
{
    /// <summary>Most more of a piece that are looked at.</summary>
    public const int Most = 100;

    /// <summary>Looks for them.</summary>
    /// <param name="plan">The plan as it is.</param>
    /// <param name="piece">The piece, by index.</param>
    /// <param name="most">How many more are looked at, 1 to <see cref="Most"/>.</param>
    /// <param name="buyer">The way the plan was found.</param>
    /// <param name="cancel">Stops the search: those found till then are given back.</param>
    /// <returns>Numbers at which each one more costs less than at every smaller number, from those on that cost anything; and only the last number before the cost rises again.</returns>
    public static ImmutableArray<BreakPoint> Of(ShoppingPlan plan, int piece, int most, IBuyer buyer, CancellationToken cancel = default)
    {
        if (most is < 1 or > Most) throw new ArgumentOutOfRangeException(nameof(most), most, $"From 1 to {Most} more are looked at.");
        if (plan.Plan is not { } now || !plan.ComesOut) return [];
        var all = new List<BreakPoint>();
        for (var more = plan.MoreOfLeftovers(piece) + 1; more <= most && !cancel.IsCancellationRequested; more++)
        {
            if (plan.List.With(piece, more) is not { } list || buyer.Find(list.Buying, null, cancel) is not { } then) break;
            all.Add(new BreakPoint(piece, more, then.Total - now.Total, new ShoppingPlan(list, then)) { IsProven = now.IsProven && then.IsProven });
        }
        var points = ImmutableArray.CreateBuilder<BreakPoint>();
        for (var i = 0; i < all.Count; i++)
        {
            // The stair goes on: the next number costs the same.
            if (i + 1 < all.Count && all[i + 1].Extra <= all[i].Extra) continue;
            if (points.Count == 0 || all[i].ExtraEach < points[^1].ExtraEach) points.Add(all[i]);
        }
        return points.ToImmutable();
    }
}
