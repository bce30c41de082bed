using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Arrangement;

/// <summary>What may stand at a place of an order: a group, or one bead.</summary>
/// <param name="Family">Its family, from 0: of each family so many are strung, and any thing of the family may be one of them.</param>
/// <param name="Beads">The kinds of its beads, one after another.</param>
/// <param name="Groups">Numbers of the groups that it reads as, one after another; empty for a bead of no group.</param>
public sealed record OrderThing(int Family, ImmutableArray<int> Beads, ImmutableArray<int> Groups);

/// <summary>When two orders count as one.</summary>
public enum SameWhen
{
    /// <summary>Only when they are equal.</summary>
    Equal,

    /// <summary>When one is the other turned: a closed piece has no beginning.</summary>
    Turned,

    /// <summary>When one is the other turned or seen from behind: a closed piece that is turned over runs the other way.</summary>
    TurnedOver,
}

/// <summary>An order to be chosen: which thing stands at which place, so that the rules are kept and the loss is least. Numbers only.</summary>
/// <remarks>What stands between the places is fixed. A rule of the order is a rule here: an order that breaks one is not allowed.</remarks>
public sealed class OrderProblem
{
    /// <summary>What may stand at a place.</summary>
    public required ImmutableArray<OrderThing> Things { get; init; }

    /// <summary>How many of each family are strung.</summary>
    public required ImmutableArray<int> Demand { get; init; }

    /// <summary>For each place the family that must stand there, or -1; empty when every place is free.</summary>
    public ImmutableArray<int> FamilyAt { get; init; } = [];

    /// <summary>Kinds of the beads before the first place, between each two, and after the last; empty when there are none anywhere.</summary>
    public ImmutableArray<ImmutableArray<int>> Between { get; init; } = [];

    /// <summary>Rules that are kept bead by bead; null for none.</summary>
    public KindRules? BeadRules { get; init; }

    /// <summary>Rules that are kept group by group; null for none.</summary>
    public KindRules? GroupRules { get; init; }

    /// <summary>For each kind of bead how many there are, what stands between counted in; empty when there are enough of all.</summary>
    public ImmutableArray<int> MostOfBead { get; init; } = [];

    /// <summary>Whether the last place is followed by the first.</summary>
    public bool IsClosed { get; init; }

    /// <summary>Whether the same thing stands at places that mirror each other about the middle.</summary>
    public bool IsMirrored { get; init; }

    /// <summary>When two orders count as one. Only for a closed piece in which all places are alike.</summary>
    public SameWhen Same { get; init; }

    /// <summary>What is to be least; null when any order that keeps the rules will do.</summary>
    public IOrderLoss? Loss { get; init; }

    /// <summary>A loss that is good enough: at it or below, a descent goes on no further. Null when only the least will do.</summary>
    public double? GoodEnough { get; init; }

    /// <summary>The order as it is strung; empty when there is none.</summary>
    public ImmutableArray<int> Start { get; init; } = [];

    /// <summary>How many places.</summary>
    public int Places => Demand.Sum();

    /// <summary>How many orders there are, the rules and what is mirrored not looked at: a double, for it soon is more than any whole number holds.</summary>
    public double Ways
    {
        get
        {
            double ways = 1;
            int[] left = [.. Demand];
            var free = 0;
            for (var p = 0; p < Places; p++)
                if (IsHeld(p)) left[FamilyAt[p]]--;
                else free++;
            for (var family = 0; family < left.Length; family++)
            {
                for (var i = 1; i <= left[family]; i++, free--) ways *= (double)free / i;
                ways *= Math.Pow(Things.Count(thing => thing.Family == family), Demand[family]);
            }
            return Math.Round(ways);
        }
    }

    /// <summary>Whether only one family may stand at a place.</summary>
    internal bool IsHeld(int place) => !FamilyAt.IsEmpty && FamilyAt[place] >= 0;

    /// <summary>Whether a family may stand at a place.</summary>
    internal bool MayStand(int family, int place) => !IsHeld(place) || FamilyAt[place] == family;
}

/// <summary>What an order loses: the less the better.</summary>
public interface IOrderLoss
{
    /// <summary>Starts with nothing laid; for one thread alone.</summary>
    IOrderScore Score();
}

/// <summary>The loss of an order as it is laid from its beginning, place by place.</summary>
public interface IOrderScore
{
    /// <summary>Lays a thing at the next place.</summary>
    void Lay(int thing);

    /// <summary>Takes the last off again.</summary>
    void TakeOff();

    /// <summary>What is lost by what is laid, whatever comes.</summary>
    double Loss { get; }

    /// <summary>At least so much more is lost by what comes; may be below 0. Nought when every place is laid.</summary>
    double LeastMore { get; }
}

/// <summary>The best order found.</summary>
/// <param name="Things">The thing at each place.</param>
/// <param name="Loss">Its loss.</param>
/// <param name="Bound">No allowed order loses less. At most <paramref name="Loss"/>.</param>
/// <param name="Looked">How many things were laid, for those who want to know.</param>
public sealed record FoundOrder(ImmutableArray<int> Things, double Loss, double Bound, long Looked)
{
    /// <summary>Whether nothing better exists, but for rounding.</summary>
    public bool IsProven => Loss - Bound <= FoundCounts.Rounding;
}

/// <summary>A way to look for the best order.</summary>
public interface IOrderFinder
{
    /// <summary>Looks for it.</summary>
    /// <param name="problem">The problem. Its start need not be allowed.</param>
    /// <param name="progress">Is told of each better one.</param>
    /// <param name="cancel">Stops the search: what was found so far is given back.</param>
    /// <returns>The best found; null when none was found that is allowed.</returns>
    FoundOrder? Find(OrderProblem problem, IProgress<FoundOrder>? progress = null, CancellationToken cancel = default);
}
