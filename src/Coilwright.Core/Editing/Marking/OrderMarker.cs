using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Marking;

/// <summary>Turns an edit into marks on an order, or says why it cannot be done.</summary>
/// <param name="order">The order.</param>
/// <param name="map">Its map; null where it was given as a list.</param>
/// <param name="beadIds">Ids of the piece's beads.</param>
internal sealed class OrderMarker(StringingOrder order, OrderMap? map, IReadOnlyList<string> beadIds)
{
    private readonly GroupDepths _depths = new(order);
    private readonly OrderPasses _passes = new(order, map);
    private readonly bool[] _wrapped = new bool[order.Count];
    private readonly List<Mark> _marks = [];
    private readonly List<Fault> _faults = [];

    /// <summary>The marks, by place; empty with a fault.</summary>
    public ImmutableArray<Mark> Marks => [.. _marks.Order()];

    /// <summary>Why there are none.</summary>
    public ImmutableArray<Fault> Faults => [.. _faults];

    /// <summary>Marks what an edit does. Places are the wire's: parts of the text are resolved before.</summary>
    public void Mark(OrderEdit edit)
    {
        switch (edit)
        {
            case InsertBeads insert:
                Insert(insert);
                break;
            case RemoveBeads remove:
                Become(remove.Where, remove.EveryPass, new Becoming([], false, []));
                break;
            case ReplaceBeads replace:
                Replace(replace);
                break;
            case MoveBeads move:
                Move(move);
                break;
            case DuplicateBeads duplicate:
                Repeat(duplicate.Where, 2, duplicate.EveryPass);
                break;
            case RepeatBeads repeat:
                Repeat(repeat.Where, repeat.Times, repeat.EveryPass);
                break;
            case MirrorBeads mirror:
                Mirror(mirror);
                break;
            case PutBetween between:
                PutBetween(between);
                break;
            case NameGroup name:
                NameGroup(name);
                break;
            case Ungroup ungroup:
                if (Neighbours(ungroup.Where) is { } row) Regroup(row, new Ungrouping(), ungroup.EveryPass);
                break;
            default:
                throw new ArgumentException("An edit that marks cannot say.", nameof(edit));
        }
    }

    // One kind of edit each ----------------------------------------------------------------------------------------------------------------

    private void Insert(InsertBeads insert)
    {
        if (!IsGap(insert.At) || Named(insert.What) is not { } things) return;
        if (insert.EveryPass)
        {
            var before = insert.At == 0 || (insert.Beside == Beside.WithNext && insert.At < order.Count);
            Become([before ? insert.At : insert.At - 1], everyPass: true, before ? new Becoming(things, true, []) : new Becoming([], true, things));
            return;
        }
        InsertAt(insert.At, insert.Beside, new Inserting(things));
    }

    private void Replace(ReplaceBeads replace)
    {
        if (Places(replace.Where) is not { } places || Named([replace.With]) is not { } things) return;
        if (things is [Thing.Bead { Kind: var kind }] && places.All(place => order.Kinds[place] == kind)) Refuse(FaultCodes.EditChangesNothing, replace.With);
        else Become(places, replace.EveryPass, new Becoming(things, false, []));
    }

    private void Move(MoveBeads move)
    {
        if (Places(move.Where) is not { } places || !IsGap(move.To)) return;
        var rows = Rows(places);
        var beside = move.Beside == Beside.WithPrevious && places.Contains(move.To - 1) || move.Beside == Beside.WithNext && places.Contains(move.To)
            ? Beside.Apart // beside what is moved there is no place
            : move.Beside;
        // Into the midst of what is moved means: where it starts.
        var to = rows.FirstOrDefault(row => row.First < move.To && row.End > move.To) is { Count: > 0 } around ? around.First : move.To;
        if (rows.Count == 1 && (to == rows[0].First || to == rows[0].End) && beside == Beside.Apart)
        {
            Refuse(FaultCodes.EditChangesNothing, "");
            return;
        }
        var things = rows.SelectMany(row => Things.Of(order, map, row.First, row.End)).ToImmutableArray();
        Become(places, everyPass: false, new Becoming([], false, []));
        InsertAt(to, beside, new Inserting(things));
    }

    private void Repeat(BeadPlaces where, int times, bool everyPass)
    {
        if (Places(where) is not { } places) return;
        if (times < 2) Refuse(Fault.Of(FaultCodes.ValueAtLeast, "times", Number(times), ("min", "2"), ("unit", "")));
        else if (times > OrderLimits.Count) Refuse(Fault.Of(FaultCodes.OrderCount, "times", Number(times), ("max", Number(OrderLimits.Count))));
        else
        {
            var repeating = new Repeating(times);
            foreach (var row in Rows(places)) Wrap(row, row.Backwards ? repeating.Reversed : repeating, everyPass);
        }
    }

    private void Mirror(MirrorBeads mirror)
    {
        if (Neighbours(mirror.Where) is not { } row) return;
        if (mirror.Centre < 0) Refuse(Fault.Of(FaultCodes.ValueAtLeast, "centre", Number(mirror.Centre), ("min", "0"), ("unit", "")));
        else if (mirror.Centre >= row.Count) Refuse(Fault.Of(FaultCodes.EditTooFew, "", Number(row.Count), ("least", Number((long)mirror.Centre + 1))));
        else Wrap(row, new Mirroring(mirror.Centre, before: false), mirror.EveryPass);
    }

    private void PutBetween(PutBetween between)
    {
        if (Places(between.Where) is not { } places || Named(between.What) is not { } things) return;
        var rows = Rows(places).Where(row => row.Count > 1).ToList();
        if (rows.Count == 0)
        {
            Refuse(Fault.Of(FaultCodes.EditTooFew, "", Number(places.Count), ("least", "2")));
            return;
        }
        var inserting = new Inserting(things);
        var gaps = new SortedDictionary<int, Doing>();
        foreach (var row in rows)
            foreach (var pass in between.EveryPass ? _passes.Of(row) : [row])
                for (var gap = pass.First + 1; gap < pass.End; gap++)
                    gaps.TryAdd(gap, pass.Backwards == row.Backwards ? inserting : inserting.Reversed);
        foreach (var (gap, doing) in gaps) _marks.Add(new Mark(gap, 0, _depths.OfGap(gap), Side.Neither, doing));
    }

    private void NameGroup(NameGroup name)
    {
        if (Neighbours(name.Where) is not { } row) return;
        _faults.AddRange(Bead.CheckName("name", name.Name));
        if (beadIds.Contains(name.Name)) Refuse(Fault.Of(FaultCodes.OrderGroupIsBead, "name", name.Name));
        if (_faults.Count > 0) return;
        if (_depths.CutBy(row.First, row.End) is var cut and >= 0)
        {
            Refuse(Fault.Of(FaultCodes.EditCutsGroup, "", name.Name, ("group", order.Groups[cut].Name)));
            return;
        }
        var group = _depths.Innermost(row.First, row.End);
        var same = group >= 0 && order.Groups[group].Count == row.Count ? order.Groups[group] : null;
        if (same?.Name == name.Name)
        {
            Refuse(FaultCodes.EditChangesNothing, name.Name);
            return;
        }
        var inside = Things.Of(order, map, row.First, row.End) is var things && same is null ? things : ((Thing.Group)things.Single()).Of;
        if (Holds(inside, name.Name) || Enclosing(row).Any(around => around.Name == name.Name))
        {
            Refuse(Fault.Of(FaultCodes.OrderGroupInItself, "name", name.Name, ("path", $"{name.Name} > {name.Name}")));
            return;
        }
        if (map is not null && map.Names.Names.Contains(name.Name)) UseGroup(name, row, inside);
        else if (same is not null) Regroup(row, new Renaming(name.Name), name.EveryPass);
        else Wrap(row, new Grouping(name.Name), name.EveryPass);
    }

    /// <summary>A group of the name is written already: the beads become another stringing of it, if they are its beads.</summary>
    private void UseGroup(NameGroup name, OrderStringing row, ImmutableArray<Thing> inside)
    {
        var written = Things.Of(map!.Names.Run(name.Name), map.Names);
        var backwards = !Things.Same(inside, written);
        if (backwards && !Things.Same(inside, Things.Reversed(written)))
        {
            Refuse(Fault.Of(FaultCodes.EditGroupDiffers, "name", name.Name));
            return;
        }
        var inserting = new Inserting([new Thing.Group(name.Name, backwards, inside)]);
        var gone = new Becoming([], false, []);
        foreach (var pass in name.EveryPass ? _passes.Of(row) : [row])
        {
            _marks.Add(new Mark(pass.First, 0, _depths.Around(pass.First, pass.End), Side.Next, pass.Backwards == row.Backwards ? inserting : inserting.Reversed));
            for (var bead = pass.First; bead < pass.End; bead++) _marks.Add(new Mark(bead, 1, _depths.OfBead(bead), Side.Neither, gone));
        }
    }

    // Marks --------------------------------------------------------------------------------------------------------------------------------

    private void InsertAt(int gap, Beside beside, Inserting inserting)
    {
        var (depth, side) = beside switch
        {
            Beside.WithPrevious when gap > 0 => (_depths.OfBead(gap - 1), Side.Previous),
            Beside.WithNext when gap < order.Count => (_depths.OfBead(gap), Side.Next),
            _ => (_depths.OfGap(gap), Side.Neither),
        };
        _marks.Add(new Mark(gap, 0, depth, side, inserting));
    }

    private void Become(BeadPlaces where, bool everyPass, Becoming becoming)
    {
        if (Places(where) is { } places) Become(places, everyPass, becoming);
    }

    private void Become(ImmutableSortedSet<int> places, bool everyPass, Becoming becoming)
    {
        foreach (var (bead, turned) in everyPass ? _passes.Of(places) : places.Select(place => (place, false)))
            _marks.Add(new Mark(bead, 1, _depths.OfBead(bead), Side.Neither, turned ? becoming.Reversed : becoming));
    }

    private void Wrap(OrderStringing row, Doing wrapping, bool everyPass)
    {
        foreach (var pass in everyPass ? _passes.Of(row) : [row])
        {
            // Rows that she chose in several passes mean the same words.
            if (_wrapped.AsSpan(pass.First, pass.Count).Contains(true)) continue;
            _wrapped.AsSpan(pass.First, pass.Count).Fill(true);
            _marks.Add(new Mark(pass.First, pass.Count, _depths.Around(pass.First, pass.End), Side.Neither,
                pass.Backwards == row.Backwards ? wrapping : wrapping.Reversed));
        }
    }

    private void Regroup(OrderStringing row, Regrouping regrouping, bool everyPass)
    {
        var group = _depths.Innermost(row.First, row.End);
        if (group < 0)
        {
            Refuse(FaultCodes.EditNoGroup, "");
            return;
        }
        for (var i = 0; i < order.Groups.Length; i++)
            if (i == group || (everyPass && order.Groups[i].Name == order.Groups[group].Name))
                _marks.Add(new Mark(order.Groups[i].First, order.Groups[i].Count, _depths.OfGroup(i), Side.Neither, regrouping));
    }

    // What is meant ------------------------------------------------------------------------------------------------------------------------

    private bool IsGap(int gap)
    {
        if (gap >= 0 && gap <= order.Count) return true;
        RefuseBead(gap);
        return false;
    }

    private ImmutableSortedSet<int>? Places(BeadPlaces where)
    {
        var places = where switch
        {
            BeadPlaces.Row row when row.Count < 1 => [],
            BeadPlaces.Row row when row.First < 0 || row.First >= order.Count => [row.First],
            BeadPlaces.Row row when row.Count > order.Count - row.First => [order.Count],
            BeadPlaces.Row row => Enumerable.Range(row.First, row.Count).ToImmutableSortedSet(),
            BeadPlaces.Each each => each.Beads,
            _ => throw new ArgumentException("A part of the text whose places were not found.", nameof(where)),
        };
        if (places.IsEmpty) Refuse(FaultCodes.EditNothingChosen, "");
        else if (places[0] < 0) RefuseBead(places[0]);
        else if (places[^1] >= order.Count) RefuseBead(places[^1]);
        else return places;
        return null;
    }

    private OrderStringing? Neighbours(BeadPlaces where)
    {
        if (Places(where) is not { } places) return null;
        if (Rows(places) is [var row]) return row;
        Refuse(FaultCodes.EditNotTogether, "");
        return null;
    }

    /// <summary>The rows of neighbouring beads among some.</summary>
    private List<OrderStringing> Rows(ImmutableSortedSet<int> places)
    {
        var rows = new List<OrderStringing>();
        foreach (var place in places)
            if (rows.Count > 0 && rows[^1].End == place) rows[^1] = rows[^1] with { Count = rows[^1].Count + 1 };
            else rows.Add(new OrderStringing(place, 1, _passes.IsBackwards(place)));
        return rows;
    }

    private ImmutableArray<Thing>? Named(ImmutableArray<string> names)
    {
        if (names.IsDefaultOrEmpty)
        {
            Refuse(FaultCodes.EditNothingChosen, "");
            return null;
        }
        var things = ImmutableArray.CreateBuilder<Thing>(names.Length);
        var known = new Dictionary<string, Thing?>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!known.TryGetValue(name, out var thing)) known.Add(name, thing = ThingOf(name));
            if (thing is not null) things.Add(thing);
            else RefuseName(name);
            if (_faults.Count == OrderLimits.FaultsTold) break;
        }
        return _faults.Count == 0 ? things.ToImmutable() : null;
    }

    private Thing? ThingOf(string name)
    {
        for (var kind = 0; kind < beadIds.Count; kind++)
            if (beadIds[kind] == name)
                return new Thing.Bead(kind);
        if (map is not null)
            return map.Names.Names.Contains(name) ? new Thing.Group(name, false, Things.Of(map.Names.Run(name), map.Names)) : null;
        return order.Groups.FirstOrDefault(group => group.Name == name) is { } first
            ? new Thing.Group(name, false, ((Thing.Group)Things.Of(order, null, first.First, first.End).Single()).Of)
            : null;
    }

    private IEnumerable<GroupRun> Enclosing(OrderStringing row) =>
        order.Groups.TakeWhile(group => group.First <= row.First).Where(group => group.End >= row.End && group.Count > row.Count);

    private static bool Holds(ImmutableArray<Thing> things, string name) =>
        things.Any(thing => thing is Thing.Group group && (group.Name == name || Holds(group.Of, name)));

    // Refusals -----------------------------------------------------------------------------------------------------------------------------

    private void Refuse(string code, string value) => Refuse(Fault.Of(code, "", value));

    private void Refuse(Fault fault)
    {
        _faults.Add(fault);
        _marks.Clear();
    }

    private void RefuseBead(int place) =>
        Refuse(Fault.Of(FaultCodes.EditNoSuchBead, "", Number(place + 1L), ("beads", Number(order.Count))));

    private void RefuseName(string name)
    {
        var known = beadIds.Concat(map is null ? order.Groups.Select(group => group.Name).Distinct() : map.Names.Names);
        Refuse(OrderFaultList.WithNearest(Fault.Of(FaultCodes.OrderUnknownName, "", OrderFaultList.Clipped(name)), name, known));
    }

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
