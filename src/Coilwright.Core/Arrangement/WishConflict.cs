using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Arrangement;

/// <summary>Finds wishes that cannot all be kept.</summary>
/// <remarks>One wish after another is left out, and stays out when the rest still cannot be kept: what is left cannot be kept, and could without any one of it
/// (a deletion filter: J. W. Chinneck, E. W. Dravnieks, Locating minimal infeasible constraint sets in linear programs, ORSA Journal on Computing
/// 3, 1991, from memory). Whether wishes can be kept is looked for along the wire, count by count and group by group; where that takes too long they
/// are taken for kept, so that a conflict that is told is one. Ties between mirrored halves are left aside; where groups may change places, so
/// are what they weigh for the length and the place of the focal.</remarks>
internal sealed class WishConflict(Piece piece, OrderSpace space, GroupOrders? orders)
{
    // So many steps are looked at for each question; and a wire of more stretches is not walked along, only counted over.
    private const long MostLooked = 100_000;

    private const int MostSteps = 2000;

    private Piece Piece => piece;

    private OrderSpace Space => space;

    private GroupOrders? Orders => orders;

    private GapProblem Problem => space.Problem;

    /// <summary>Wishes that contradict each other; empty when none do, or when it is not known.</summary>
    public ImmutableArray<CountRule> Find(CancellationToken cancel = default)
    {
        var all = Wishes().ToList();
        if (CanKeep(all, cancel)) return [];
        // From the last on, so that of two ways to tell it the one with what was said first stays.
        for (var i = all.Count - 1; i >= 0; i--)
        {
            CountRule[] rest = [.. all.Where((_, j) => j != i)];
            if (!CanKeep(rest, cancel)) all.RemoveAt(i);
        }
        return [.. all];
    }

    /// <summary>Everything that a better order has to keep.</summary>
    internal IEnumerable<CountRule> Wishes()
    {
        foreach (var bead in piece.Wishes.Free.OnHand.Keys) yield return new CountRule("on-hand", bead);
        yield return new CountRule("length", null);
        foreach (var rule in piece.Wishes.Rules.IsDefault ? [] : piece.Wishes.Rules) yield return new CountRule("rule", null, rule);
        if (Focal is not null && orders is null) yield return new CountRule("focal", null);
    }

    /// <summary>Whether some counts, and some order of the groups, keep all of these; true also where it was not found out.</summary>
    internal bool CanKeep(IReadOnlyCollection<CountRule> wishes, CancellationToken cancel) => new Walk(this, wishes, cancel).Run();

    private FocalRule? Focal => Problem.Also.OfType<FocalRule>().FirstOrDefault();

    // One way along the wire: beads as they stand, gaps with any count, places with any thing.
    private sealed class Walk
    {
        private readonly WishConflict _of;
        private readonly CancellationToken _cancel;
        private readonly List<Step> _steps = [];
        private readonly KindRules.Watch _beads, _groups;
        private readonly ImmutableArray<string> _groupNames;
        private readonly bool _length;
        private readonly FocalRule? _focal;
        private readonly int[] _onHand, _left, _counts, _used;
        private readonly Rest[] _rest;
        // For each family: of each bead and group the least that one of it asks for, and how long one is at the most.
        private readonly (int[] Beads, int[] Groups, int MostBeads, int MostGroups)[] _families;
        private double _moreMm;
        private long _looked;

        public Walk(WishConflict of, IReadOnlyCollection<CountRule> wishes, CancellationToken cancel)
        {
            (_of, _cancel) = (of, cancel);
            var piece = of.Piece;
            var order = piece.Order;
            var rules = wishes.Where(w => w.Rule is not null).Select(w => w.Rule!).ToArray();
            _groupNames = [.. order.ReadingGroups.Select(g => g.Name).Distinct(StringComparer.Ordinal)];
            _beads = new KindRules.Watch(new KindRules([.. piece.Beads.Select(b => b.Id)], rules));
            _groups = new KindRules.Watch(new KindRules(_groupNames, rules));
            _length = wishes.Any(w => w.Code == "length");
            _focal = wishes.Any(w => w.Code == "focal") ? of.Focal : null;
            var asked = wishes.Where(w => w.Code == "on-hand").Select(w => w.BeadId).ToHashSet();
            _onHand = [.. piece.Beads.Select(b => asked.Contains(b.Id) ? piece.Wishes.Free.OnHand[b.Id] : int.MaxValue)];
            _used = new int[piece.Beads.Length];
            _counts = [.. of.Problem.Start];
            _left = of.Orders is { } free ? [.. free.Problem.Demand] : [];
            _families = [.. _left.Select((_, family) => OfFamily([.. of.Orders!.Problem.Things.Where(t => t.Family == family)]))];
            MakeSteps(order);
            _rest = new Rest[_steps.Count + 1];
            _rest[^1] = new Rest(new int[_used.Length], new int[_groupNames.Length], 0, 0);
            for (var s = _steps.Count - 1; s >= 0; s--) _rest[s] = With(_steps[s], _rest[s + 1]);
        }

        public bool Run() => _steps.Count > MostSteps ? HasRoom(0) : Go(0);

        private void MakeSteps(Stringing.StringingOrder order)
        {
            var gaps = _of.Space.Gaps;
            var places = _of.Orders?.Places ?? [];
            var reading = order.ReadingGroups;
            var (gap, place, group) = (0, 0, 0);
            for (var bead = 0; bead < order.Count;)
            {
                if (gap < gaps.Length && gaps[gap].First == bead)
                {
                    _steps.Add(new Step(StepKind.Gap, gap, [], []));
                    bead = gaps[gap++].End;
                    continue;
                }
                if (place < places.Length && places[place].First == bead)
                {
                    _steps.Add(new Step(StepKind.Place, place, [], []));
                    while (group < reading.Length && reading[group].First < places[place].End) group++;
                    bead = places[place++].End;
                    continue;
                }
                // What is fixed, as far as it goes.
                var first = bead;
                while (bead < order.Count && !(gap < gaps.Length && gaps[gap].First == bead) && !(place < places.Length && places[place].First == bead)) bead++;
                var groups = new List<int>();
                while (group < reading.Length && reading[group].First < bead) groups.Add(_groupNames.IndexOf(reading[group++].Name));
                _steps.Add(new Step(StepKind.Fixed, 0, order.Kinds[first..bead], [.. groups]));
            }
        }

        // What the rest asks for at the least: of the places that is by what is left of each family, so not here.
        private Rest With(Step step, Rest after)
        {
            switch (step.Kind)
            {
                case StepKind.Gap:
                    var gap = _of.Space.Gaps[step.Number];
                    return after with { Least = Plus(after.Least, gap.Kind, gap.Least), Beads = after.Beads + gap.Most };
                case StepKind.Fixed:
                    var (least, groups) = (after.Least, after.Groups);
                    foreach (var bead in step.Beads) least = Plus(least, bead, 1);
                    foreach (var group in step.Groups) groups = Plus(groups, group, 1);
                    return new Rest(least, groups, after.Beads + step.Beads.Length, after.GroupCount + step.Groups.Length);
                default:
                    return after;
            }
        }

        private bool Go(int s)
        {
            if (++_looked > MostLooked || _cancel.IsCancellationRequested) return true;
            if (s == _steps.Count) return _beads.IsWhole() && _groups.IsWhole() && (_focal is null || _focal.Keeps(_counts)) && (!_length || _of.Problem.FitsLength(_moreMm));
            if (!HasRoom(s)) return false;
            var step = _steps[s];
            switch (step.Kind)
            {
                case StepKind.Fixed:
                    return Lay(step.Beads, step.Groups, () => Go(s + 1));
                case StepKind.Gap:
                    return GoGap(s, step.Number);
                default:
                    var orders = _of.Orders!.Problem;
                    // As it is strung first: where all is well nothing is looked for.
                    foreach (var thing in Enumerable.Range(0, orders.Things.Length).OrderBy(t => t != orders.Start[step.Number]))
                    {
                        var what = orders.Things[thing];
                        if (_left[what.Family] == 0 || !orders.MayStand(what.Family, step.Number)) continue;
                        _left[what.Family]--;
                        var found = Lay(what.Beads, what.Groups, () => Go(s + 1));
                        _left[what.Family]++;
                        if (found) return true;
                    }
                    return false;
            }
        }

        private bool GoGap(int s, int g)
        {
            var gap = _of.Space.Gaps[g];
            var step = _of.Problem.StepMm[_of.Problem.Kinds[g]];
            foreach (var count in Enumerable.Range(gap.Least, gap.Most - gap.Least + 1).OrderBy(c => Math.Abs(c - gap.Count)))
            {
                (_counts[g], _moreMm) = (count, _moreMm + (count - gap.Count) * step);
                var found = Lay([.. Enumerable.Repeat(gap.Kind, count)], [], () => Go(s + 1));
                _moreMm -= (count - gap.Count) * step;
                if (found) return true;
            }
            _counts[g] = gap.Count;
            return false;
        }

        // Lays beads and groups, goes on if no rule is broken, and takes them off again.
        private bool Lay(ImmutableArray<int> beads, ImmutableArray<int> groups, Func<bool> goOn)
        {
            var (laid, laidGroups, kept) = (0, 0, true);
            foreach (var group in groups)
            {
                kept &= _groups.Lay(group);
                laidGroups++;
            }
            foreach (var bead in beads)
            {
                if (!kept) break;
                kept &= _beads.Lay(bead) & ++_used[bead] <= _onHand[bead];
                laid++;
            }
            var found = kept && goOn();
            for (var i = laid - 1; i >= 0; i--)
            {
                _beads.TakeOff();
                _used[beads[i]]--;
            }
            for (; laidGroups > 0; laidGroups--) _groups.TakeOff();
            return found;
        }

        private bool HasRoom(int s)
        {
            var rest = _rest[s];
            int[] least = [.. rest.Least];
            int[] groups = [.. rest.Groups];
            var (beads, groupCount) = (rest.Beads, rest.GroupCount);
            if (_of.Orders is not null)
                for (var family = 0; family < _left.Length; family++)
                {
                    if (_left[family] == 0) continue;
                    var its = _families[family];
                    for (var kind = 0; kind < least.Length; kind++) least[kind] += _left[family] * its.Beads[kind];
                    for (var group = 0; group < groups.Length; group++) groups[group] += _left[family] * its.Groups[group];
                    beads += _left[family] * its.MostBeads;
                    groupCount += _left[family] * its.MostGroups;
                }
            for (var kind = 0; kind < least.Length; kind++)
                if (_used[kind] + least[kind] > _onHand[kind]) return false;
            return _beads.HasRoom(beads, least) && _groups.HasRoom(groupCount, groups) && (!_length || LengthFits(s, least));
        }

        // Whether the gaps still to come can bring the length into its range, with no more beads of a kind than there are.
        private bool LengthFits(int s, int[] least)
        {
            var (fewestMm, mostMm) = (_moreMm, _moreMm);
            var (fewest, most) = (new int[_used.Length], new int[_used.Length]);
            for (var i = s; i < _steps.Count; i++)
            {
                if (_steps[i].Kind != StepKind.Gap) continue;
                var gap = _of.Space.Gaps[_steps[i].Number];
                fewest[gap.Kind] += gap.Least - gap.Count;
                most[gap.Kind] += gap.Most - gap.Count;
            }
            for (var free = 0; free < _of.Problem.StepMm.Length; free++)
            {
                var kind = KindOf(free);
                // Of what is still to come, beads of the kind beyond the least that must.
                var spare = _onHand[kind] == int.MaxValue ? int.MaxValue : _onHand[kind] - _used[kind] - least[kind];
                fewestMm += fewest[kind] * _of.Problem.StepMm[free];
                mostMm += (spare == int.MaxValue ? most[kind] : Math.Min(most[kind], fewest[kind] + spare)) * _of.Problem.StepMm[free];
            }
            return mostMm >= -_of.Problem.ShorterMm - 1e-9 && fewestMm <= _of.Problem.LongerMm + 1e-9;
        }

        private int KindOf(int free) => _of.Space.Gaps[_of.Problem.Kinds.IndexOf(free)].Kind;

        private (int[] Beads, int[] Groups, int MostBeads, int MostGroups) OfFamily(OrderThing[] things) => (
            [.. Enumerable.Range(0, _used.Length).Select(kind => things.Min(t => t.Beads.Count(k => k == kind)))],
            [.. Enumerable.Range(0, _groupNames.Length).Select(group => things.Min(t => t.Groups.Count(g => g == group)))],
            things.Max(t => t.Beads.Length), things.Max(t => t.Groups.Length));

        private static int[] Plus(int[] counts, int kind, int by)
        {
            int[] more = [.. counts];
            more[kind] += by;
            return more;
        }

        private enum StepKind { Fixed, Gap, Place }

        private sealed record Step(StepKind Kind, int Number, ImmutableArray<int> Beads, ImmutableArray<int> Groups);

        private sealed record Rest(int[] Least, int[] Groups, int Beads, int GroupCount);
    }
}
