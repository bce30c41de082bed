using Coilwright.Core.Stringing;

namespace Coilwright.Core.Editing.Marking;

/// <summary>In how many groups each bead and each gap of an order lies.</summary>
internal sealed class GroupDepths
{
    private readonly StringingOrder _order;
    private readonly int[] _ofBead;
    private readonly int[] _ofGap;
    private readonly int[] _ofGroup;

    public GroupDepths(StringingOrder order)
    {
        _order = order;
        _ofBead = new int[order.Count + 1];
        _ofGap = new int[order.Count + 2];
        _ofGroup = new int[order.Groups.Length];
        var open = new Stack<int>();
        for (var i = 0; i < order.Groups.Length; i++)
        {
            var group = order.Groups[i];
            while (open.TryPeek(out var end) && end <= group.First) open.Pop();
            _ofGroup[i] = open.Count;
            open.Push(group.End);
            _ofBead[group.First]++;
            _ofBead[group.End]--;
            _ofGap[group.First + 1]++;
            _ofGap[group.End]--;
        }
        for (var i = 1; i < _ofBead.Length; i++) _ofBead[i] += _ofBead[i - 1];
        for (var i = 1; i < _ofGap.Length; i++) _ofGap[i] += _ofGap[i - 1];
    }

    /// <summary>Groups that a bead lies in.</summary>
    public int OfBead(int bead) => _ofBead[bead];

    /// <summary>Groups that lie around a gap, some of their beads on either side.</summary>
    public int OfGap(int gap) => _ofGap[gap];

    /// <summary>Groups that a stringing of a group, by its index, lies in.</summary>
    public int OfGroup(int group) => _ofGroup[group];

    /// <summary>Groups that hold all of a stretch and more.</summary>
    public int Around(int first, int end)
    {
        var around = 0;
        foreach (var group in _order.Groups)
        {
            if (group.First > first) break;
            if (group.End >= end && group.Count > end - first) around++;
        }
        return around;
    }

    /// <summary>Groups that something put just after a stretch, as more of it, belongs in: those around that gap, and those that end there and hold more
    /// than the stretch.</summary>
    public int After(int first, int end) => OfGap(end) + _order.Groups.Count(group => group.End == end && group.First < first);

    /// <summary>The same for something put just before a stretch.</summary>
    public int Before(int first, int end) => OfGap(first) + _order.Groups.Count(group => group.First == first && group.End > end);

    /// <summary>The innermost group that holds all of a stretch; -1 when none does.</summary>
    public int Innermost(int first, int end)
    {
        var innermost = -1;
        for (var i = 0; i < _order.Groups.Length && _order.Groups[i].First <= first; i++)
            if (_order.Groups[i].End >= end)
                innermost = i;
        return innermost;
    }

    /// <summary>A group that holds some beads of a stretch and some beside it; -1 when none does.</summary>
    public int CutBy(int first, int end)
    {
        for (var i = 0; i < _order.Groups.Length && _order.Groups[i].First < end; i++)
        {
            var group = _order.Groups[i];
            if (group.End > first && (group.First < first ? group.End < end : group.End > end && group.First > first)) return i;
        }
        return -1;
    }
}
