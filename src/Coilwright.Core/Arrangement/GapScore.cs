namespace Coilwright.Core.Arrangement;

/// <summary>Counts with their loss, where one gap after another is changed: a change costs a few look-ups.</summary>
public sealed class GapScore
{
    private readonly GapProblem _problem;
    private readonly int[] _counts, _keys, _moreOfKind;

    /// <summary>Starts from counts within their ranges.</summary>
    public GapScore(GapProblem problem, ReadOnlySpan<int> counts)
    {
        _problem = problem;
        _counts = counts.ToArray();
        _keys = new int[problem.Windows.Length];
        _moreOfKind = new int[problem.StepMm.Length];
        for (var w = 0; w < _keys.Length; w++) _keys[w] = problem.KeyOf(problem.Windows[w], counts);
        for (var g = 0; g < _counts.Length; g++) _moreOfKind[problem.Kinds[g]] += _counts[g] - problem.Start[g];
        LengthChangeMm = problem.LengthChangeMm(counts);
        Loss = problem.Loss(counts);
    }

    /// <summary>The counts.</summary>
    public ReadOnlySpan<int> Counts => _counts;

    /// <summary>Their loss.</summary>
    public double Loss { get; private set; }

    /// <summary>How much more wire they take than the counts at the start, mm.</summary>
    public double LengthChangeMm { get; private set; }

    /// <summary>By how much the loss would grow if a gap had other beads; the gap alone, without those tied to it.</summary>
    public double Change(int gap, int to)
    {
        var by = to - _counts[gap];
        var kind = _problem.Kinds[gap];
        double change = 0;
        foreach (var w in _problem.WindowsOf(gap))
        {
            var window = _problem.Windows[w];
            change += window.Loss[_keys[w] + by * window.Strides[kind]] - window.Loss[_keys[w]];
        }
        return change;
    }

    /// <summary>Gives a gap other beads; the gap alone.</summary>
    public void Set(int gap, int to)
    {
        var by = to - _counts[gap];
        var kind = _problem.Kinds[gap];
        Loss += Change(gap, to);
        foreach (var w in _problem.WindowsOf(gap)) _keys[w] += by * _problem.Windows[w].Strides[kind];
        _counts[gap] = to;
        _moreOfKind[kind] += by;
        LengthChangeMm += by * _problem.StepMm[kind];
    }

    /// <summary>Whether length and stock allow the counts.</summary>
    public bool Fits
    {
        get
        {
            if (!_problem.FitsLength(LengthChangeMm)) return false;
            for (var k = 0; k < _moreOfKind.Length; k++)
                if (_moreOfKind[k] > _problem.MostMoreOfKind[k]) return false;
            return true;
        }
    }
}
