using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Arrangement;

/// <summary>The orders that a piece's groups may take under its wishes: as a problem of things and places, and back as an edit.</summary>
/// <remarks>A place holds an outermost group, or for want of any a run of one kind that is neither spacer nor connector. What stands between stays where it is.
/// A group with a focal in it keeps its place; where groups may not change places every one does, and only stand-ins are left.</remarks>
public sealed class GroupOrders
{
    // More sorts of one group than this are not tried: each is one more way for every place that holds it.
    private const int MostSorts = 16;

    private readonly Piece _piece;
    private readonly double[]? _factors;
    private readonly List<Sort> _sorts = [];

    /// <summary>Prepares a piece.</summary>
    public GroupOrders(Piece piece, ReckoningData data)
    {
        var choices = data.Choices;
        var bench = BenchCorrection.Of(piece, choices.RulerErrorMm);
        (_piece, _factors) = (piece with { Beads = bench.Kinds }, bench.Factors);
        var stretches = new GroupStretches(_piece);
        Places = _piece.Order.Groups.IsEmpty ? stretches.Runs : Outermost(_piece.Order);
        var wrists = piece.Wishes.Wrists.IsDefaultOrEmpty ? data.AdultWrists : piece.Wishes.Wrists;
        var all = wrists.Sum(w => w.Weight);
        Wrists = [.. wrists.Select(w => w with { Weight = w.Weight / all })];
        Problem = Make(stretches, choices);
        Judge = new FullJudge(_piece, choices, Wrists);
    }

    /// <summary>What stands at each place as it is strung.</summary>
    public ImmutableArray<GroupRun> Places { get; }

    /// <summary>The wrists; their weights sum to 1.</summary>
    public ImmutableArray<WeighedWrist> Wrists { get; }

    /// <summary>The order to be chosen.</summary>
    public OrderProblem Problem { get; }

    internal FullJudge Judge { get; }

    /// <summary>Whether there is any other order at all.</summary>
    public bool HasChoice => Problem.Ways > 1;

    /// <summary>The order that comes of other things at the places, without stand-ins; and what measured rows scale its beads by.</summary>
    internal (StringingOrder Order, double[]? Factors) Strung(ReadOnlySpan<int> things)
    {
        var kinds = ImmutableArray.CreateBuilder<int>(_piece.Order.Count);
        var groups = new List<GroupRun>();
        var factors = _factors is null ? null : new List<double>();
        var next = 0;
        for (var place = 0; place <= Places.Length; place++)
        {
            Add(next, place < Places.Length ? Places[place].First : _piece.Order.Count);
            if (place == Places.Length) break;
            var from = Places[_sorts[things[place]].FirstPlace];
            var at = kinds.Count;
            foreach (var group in _piece.Order.Groups)
                if (group.First >= from.First && group.End <= from.End) groups.Add(group with { First = group.First - from.First + at });
            Add(from.First, from.End);
            next = Places[place].End;
        }
        return (new StringingOrder(kinds.ToImmutable(), [.. groups]), factors?.ToArray());

        void Add(int first, int end)
        {
            for (var bead = first; bead < end; bead++)
            {
                kinds.Add(_piece.Order.Kinds[bead]);
                factors?.Add(_factors![bead]);
            }
        }
    }

    /// <summary>The edit that comes to other things at the places; null when nothing changes.</summary>
    public Restring? Edit(ReadOnlySpan<int> things)
    {
        // From the beginning on, a later place that has what is wanted gives it: few exchanges, though not always the fewest.
        int[] now = [.. Problem.Start.Select(thing => Problem.Things[thing].Family)];
        var lengths = Places.Select(p => p.Count).ToArray();
        var gaps = Enumerable.Range(0, Places.Length).Select(p => Places[p].First - (p == 0 ? 0 : Places[p - 1].End)).ToArray();
        var swaps = ImmutableArray.CreateBuilder<RowSwap>();
        for (var place = 0; place < now.Length; place++)
        {
            var wanted = Problem.Things[things[place]].Family;
            if (now[place] == wanted) continue;
            var other = Array.IndexOf(now, wanted, place + 1);
            // Better one that the exchange sets right as well.
            for (var later = other; later < now.Length; later++)
                if (now[later] == wanted && Problem.Things[things[later]].Family == now[place])
                {
                    other = later;
                    break;
                }
            swaps.Add(new RowSwap(First(place), lengths[place], First(other), lengths[other]));
            (now[place], now[other]) = (now[other], now[place]);
            (lengths[place], lengths[other]) = (lengths[other], lengths[place]);
        }
        var standIns = new List<RowStandIn>();
        for (var place = 0; place < now.Length; place++)
            foreach (var (bead, with) in _sorts[things[place]].Instead)
                standIns.Add(new RowStandIn(First(place), lengths[place], _piece.Beads[bead].Id, _piece.Beads[with].Id));
        // All rows that take the same bead one after another: they become alike, and go by one name.
        return swaps.Count + standIns.Count == 0 ? null
            : new Restring(swaps.ToImmutable(), [.. standIns.OrderBy(s => s.Bead, StringComparer.Ordinal).ThenBy(s => s.With, StringComparer.Ordinal)], []);

        int First(int place)
        {
            var first = gaps[place];
            for (var before = 0; before < place; before++) first += gaps[before] + lengths[before];
            return first;
        }
    }

    private static ImmutableArray<GroupRun> Outermost(StringingOrder order)
    {
        var outermost = ImmutableArray.CreateBuilder<GroupRun>();
        foreach (var group in order.Groups)
            if (outermost.Count == 0 || group.First >= outermost[^1].End) outermost.Add(group);
        return outermost.ToImmutable();
    }

    private OrderProblem Make(GroupStretches stretches, ReckoningChoices choices)
    {
        var free = _piece.Wishes.Free;
        var families = new List<(string Name, ImmutableArray<int> Kinds)>();
        var (start, demand) = (new int[Places.Length], new List<int>());
        for (var place = 0; place < Places.Length; place++)
        {
            var kinds = _piece.Order.Kinds.AsSpan(Places[place].First, Places[place].Count).ToImmutableArray();
            var family = families.FindIndex(f => f.Name == Places[place].Name && f.Kinds.SequenceEqual(kinds));
            if (family < 0)
            {
                family = families.Count;
                families.Add((Places[place].Name, kinds));
                demand.Add(0);
                foreach (var instead in Insteads(kinds, free)) _sorts.Add(new Sort(family, place, Replaced(kinds, instead), instead));
            }
            demand[family]++;
            start[place] = _sorts.FindIndex(sort => sort.Family == family);
        }
        var names = _piece.Order.ReadingGroups.Select(g => g.Name).Distinct(StringComparer.Ordinal).ToImmutableArray();
        var rules = _piece.Wishes.Rules.IsDefault ? [] : _piece.Wishes.Rules;
        var held = Enumerable.Range(0, Places.Length).Select(p => !free.GroupOrder || HasFocal(Places[p]) ? _sorts[start[p]].Family : -1).ToImmutableArray();
        var things = _sorts.Select(sort => new OrderThing(sort.Family, sort.Kinds,
            [.. _piece.Order.ReadingGroups.Where(g => g.First >= Places[sort.FirstPlace].First && g.End <= Places[sort.FirstPlace].End).Select(g => names.IndexOf(g.Name))])).ToImmutableArray();
        return new OrderProblem
        {
            Things = things,
            Demand = [.. demand],
            FamilyAt = held,
            Between = [.. Enumerable.Range(0, Places.Length + 1).Select(BetweenAt)],
            BeadRules = new KindRules([.. _piece.Beads.Select(b => b.Id)], rules),
            GroupRules = new KindRules(names, rules),
            // Of other kinds no order takes more than another; whether there are enough is for the counts.
            MostOfBead = free.OnHand.IsEmpty ? [] : [.. _piece.Beads.Select(b => things.Any(thing => IsStandIn(thing, b.Id)) && free.OnHand.TryGetValue(b.Id, out var beads) ? beads : int.MaxValue)],
            IsMirrored = free.MirroredHalves && start.SequenceEqual(start.Reverse()),
            Start = [.. start],
            Loss = new TurnLoss(_piece, _factors, choices, stretches, Wrists, Places, [.. _sorts]),
        };
    }

    // Whether a thing holds the bead only because it stands in, or would but for a stand-in.
    private bool IsStandIn(OrderThing thing, string id) =>
        _sorts.Any(sort => sort.Family == thing.Family && sort.Instead.Any(i => _piece.Beads[i.Bead].Id == id || _piece.Beads[i.With].Id == id));

    private ImmutableArray<int> BetweenAt(int place)
    {
        var first = place == 0 ? 0 : Places[place - 1].End;
        return _piece.Order.Kinds.AsSpan(first, (place < Places.Length ? Places[place].First : _piece.Order.Count) - first).ToImmutableArray();
    }

    private bool HasFocal(GroupRun place)
    {
        for (var bead = place.First; bead < place.End; bead++)
            if (_piece.Beads[_piece.Order.Kinds[bead]].Role == Role.Focal) return true;
        return false;
    }

    // The group as it is, and with every choice of stand-ins for its kinds.
    private IEnumerable<ImmutableArray<(int Bead, int With)>> Insteads(ImmutableArray<int> kinds, FreeToChange free)
    {
        List<ImmutableArray<(int, int)>> ways = [[]];
        if (free.StandIns.IsDefaultOrEmpty) return ways;
        foreach (var bead in kinds.Distinct())
        {
            var with = free.StandIns.Where(s => !s.Everywhere && s.Bead == _piece.Beads[bead].Id).Select(s => KindOf(s.With)).ToArray();
            ways = [.. ways.Concat(ways.SelectMany(way => with.Select(w => way.Add((bead, w)))))];
        }
        return ways.Take(MostSorts);
    }

    private int KindOf(string id)
    {
        for (var kind = 0; kind < _piece.Beads.Length; kind++)
            if (_piece.Beads[kind].Id == id) return kind;
        throw new ArgumentException("There is no such bead.", nameof(id));
    }

    private static ImmutableArray<int> Replaced(ImmutableArray<int> kinds, ImmutableArray<(int Bead, int With)> instead) =>
        [.. kinds.Select(kind => instead.FirstOrDefault(i => i.Bead == kind, (Bead: kind, With: kind)).With)];

    /// <summary>A group as it may be strung.</summary>
    /// <param name="Family">Groups of one name and the same beads are of one family.</param>
    /// <param name="FirstPlace">The first place where one of the family stands.</param>
    /// <param name="Kinds">Its beads, stand-ins taken.</param>
    /// <param name="Instead">The stand-ins.</param>
    internal sealed record Sort(int Family, int FirstPlace, ImmutableArray<int> Kinds, ImmutableArray<(int Bead, int With)> Instead);
}
