using Coilwright.Core.Pieces;

namespace Coilwright.Core.Arrangement;

/// <summary>An order as it is laid place by place, with what is left of everything and whether the rules can still be kept.</summary>
internal sealed class OrderLaying
{
    private readonly OrderProblem _problem;
    private readonly KindRules.Watch? _beads, _groups;
    private readonly IOrderScore? _score;
    private readonly int[] _left, _order, _broken, _used;
    private readonly int[][] _leastBeads, _leastGroups;
    private readonly (int Beads, int Groups)[] _most;
    private readonly int[] _beadsNeeded, _groupsNeeded;
    private readonly int[][] _betweenAfter;

    public OrderLaying(OrderProblem problem)
    {
        _problem = problem;
        _beads = problem.BeadRules is { Count: > 0 } beads ? new KindRules.Watch(beads) { WrapsRound = problem.IsClosed } : null;
        _groups = problem.GroupRules is { Count: > 0 } groups ? new KindRules.Watch(groups) { WrapsRound = problem.IsClosed } : null;
        _score = problem.Loss?.Score();
        _left = [.. problem.Demand];
        _order = new int[problem.Places];
        _broken = new int[problem.Places + 1];
        _used = new int[problem.MostOfBead.Length];
        // What each family asks for at the least, whichever of its things is taken, and how long it is at the most: for what is still to come.
        var families = problem.Demand.Length;
        (_leastBeads, _leastGroups, _most) = (new int[families][], new int[families][], new (int, int)[families]);
        (_beadsNeeded, _groupsNeeded) = (new int[problem.BeadRules?.Kinds ?? 0], new int[problem.GroupRules?.Kinds ?? 0]);
        for (var family = 0; family < families; family++)
        {
            var things = problem.Things.Where(thing => thing.Family == family).ToArray();
            _leastBeads[family] = [.. Enumerable.Range(0, _beadsNeeded.Length).Select(kind => things.Min(thing => thing.Beads.Count(k => k == kind)))];
            _leastGroups[family] = [.. Enumerable.Range(0, _groupsNeeded.Length).Select(kind => things.Min(thing => thing.Groups.Count(k => k == kind)))];
            _most[family] = (things.Max(thing => thing.Beads.Length), things.Max(thing => thing.Groups.Length));
        }
        // Of each kind the beads between the places from each on.
        _betweenAfter = new int[problem.Places + 1][];
        for (var place = problem.Places; place >= 0; place--)
        {
            _betweenAfter[place] = place == problem.Places ? new int[_beadsNeeded.Length + 1] : [.. _betweenAfter[place + 1]];
            if (problem.Between.IsEmpty || place == problem.Places) continue;
            foreach (var kind in problem.Between[place + 1])
            {
                _betweenAfter[place][^1]++;
                if (kind < _beadsNeeded.Length) _betweenAfter[place][kind]++;
            }
        }
        _broken[0] = Between(0);
    }

    /// <summary>How many places are laid.</summary>
    public int Count { get; private set; }

    /// <summary>What is laid.</summary>
    public ReadOnlySpan<int> Order => _order.AsSpan(0, Count);

    /// <summary>How many times a rule was broken so far.</summary>
    public int Broken => _broken[Count];

    /// <summary>How many of a family are still to come.</summary>
    public int Left(int family) => _left[family];

    /// <summary>What is lost by what is laid.</summary>
    public double Loss => _score?.Loss ?? 0;

    /// <summary>Nothing that goes on from here loses less.</summary>
    public double Least => _score is null ? 0 : _score.Loss + _score.LeastMore;

    /// <summary>Lays a thing at the next place, whether or not that breaks a rule.</summary>
    public void Lay(int thing)
    {
        var what = _problem.Things[thing];
        _order[Count] = thing;
        _left[what.Family]--;
        var broken = _broken[Count];
        foreach (var kind in what.Beads) broken += LayBead(kind);
        if (_groups is not null)
            foreach (var group in what.Groups)
                if (!_groups.Lay(group)) broken++;
        _score?.Lay(thing);
        Count++;
        _broken[Count] = broken + Between(Count);
    }

    /// <summary>Takes the last off again.</summary>
    public void TakeOff()
    {
        var what = _problem.Things[_order[--Count]];
        if (!_problem.Between.IsEmpty)
            foreach (var kind in _problem.Between[Count + 1]) TakeBeadOff(kind);
        foreach (var kind in what.Beads) TakeBeadOff(kind);
        if (_groups is not null)
            foreach (var _ in what.Groups) _groups.TakeOff();
        _score?.TakeOff();
        _left[what.Family]++;
    }

    /// <summary>Whether what is still to come has room under the rules, as far as counting tells.</summary>
    public bool HasRoom()
    {
        if (_beads is null && _groups is null) return true;
        Array.Clear(_beadsNeeded);
        Array.Clear(_groupsNeeded);
        var (beads, groups) = (_betweenAfter[Count][^1], 0);
        for (var kind = 0; kind < _beadsNeeded.Length; kind++) _beadsNeeded[kind] = _betweenAfter[Count][kind];
        for (var family = 0; family < _left.Length; family++)
        {
            if (_left[family] == 0) continue;
            beads += _left[family] * _most[family].Beads;
            groups += _left[family] * _most[family].Groups;
            for (var kind = 0; kind < _beadsNeeded.Length; kind++) _beadsNeeded[kind] += _left[family] * _leastBeads[family][kind];
            for (var kind = 0; kind < _groupsNeeded.Length; kind++) _groupsNeeded[kind] += _left[family] * _leastGroups[family][kind];
        }
        return (_beads is null || _beads.HasRoom(beads, _beadsNeeded)) && (_groups is null || _groups.HasRoom(groups, _groupsNeeded));
    }

    /// <summary>Whether the order, with every place laid, keeps the rules as a whole too.</summary>
    public bool IsWhole() => (_beads is null || _beads.IsWhole()) && (_groups is null || _groups.IsWhole());

    private int Between(int at)
    {
        var broken = 0;
        if (!_problem.Between.IsEmpty)
            foreach (var kind in _problem.Between[at]) broken += LayBead(kind);
        return broken;
    }

    private int LayBead(int kind)
    {
        var broken = _beads is null || _beads.Lay(kind) ? 0 : 1;
        if (_used.Length > 0 && ++_used[kind] > _problem.MostOfBead[kind]) broken++;
        return broken;
    }

    private void TakeBeadOff(int kind)
    {
        _beads?.TakeOff();
        if (_used.Length > 0) _used[kind]--;
    }
}
