namespace Coilwright.Core.Alignment;

/// <summary>Lining up of one draw after another of the same order, exactly at each draw's T, without allocating.</summary>
internal sealed class DrawnGlance
{
    private readonly OverlayScratch _scratch;
    private readonly double _chance, _leastOverShare;
    private readonly int[] _blockEnds, _blockNames;
    private readonly double[] _blockLengths, _endsMm;
    private readonly VisibleRow _blocks = new(0);

    public DrawnGlance(OverlayScratch scratch, int[] order, GroupStretches groups, double chance, double leastOverShare)
    {
        (_scratch, _chance, _leastOverShare) = (scratch, chance, leastOverShare);
        order.CopyTo(scratch.Kinds);
        _endsMm = new double[order.Length];
        var ends = new List<int>();
        var names = new List<int>();
        for (var r = 0; r < groups.Runs.Length; r++)
        {
            if (groups.Runs[r].First > (ends.Count > 0 ? ends[^1] : 0)) Add(groups.Runs[r].First, -1);
            Add(groups.Runs[r].End, groups.NameOfRun[r]);
        }
        if (ends.Count == 0 || ends[^1] < order.Length) Add(order.Length, -1);
        (_blockEnds, _blockNames) = ([.. ends], [.. names]);
        _blockLengths = new double[ends.Count];

        void Add(int end, int name)
        {
            ends.Add(end);
            names.Add(name);
        }
    }

    /// <summary>Room for the shares of a draw, mm; fill it before asking.</summary>
    public Span<double> Shares => _scratch.Shares;

    /// <summary>Room for where each of them ends, mm from the starting end; fill it likewise.</summary>
    public Span<double> EndsMm => _endsMm;

    /// <summary>The headline and lining up by bead against chance; null where too little lies over anything.</summary>
    /// <param name="wirePerTurnMm">Its wire per turn, mm.</param>
    public (double? Cover, double? Relative) At(double wirePerTurnMm)
    {
        var (weighted, over) = _scratch.Weigh(wirePerTurnMm);
        // The same least lengths as in the report.
        if (over < Math.Max(_leastOverShare * wirePerTurnMm, Headline.NoLengthMm)) return (null, null);
        double along = 0;
        for (var b = 0; b < _blockEnds.Length; b++)
        {
            var end = _endsMm[_blockEnds[b] - 1];
            _blockLengths[b] = end - along;
            along = end;
        }
        _blocks.Lay(_blockLengths, _blockNames, _scratch.Hidden);
        var (own, groups) = _blocks.OwnAt(wirePerTurnMm);
        var least = _leastOverShare * Math.Min(wirePerTurnMm, _blocks.NamedMm());
        return (groups >= Math.Max(least, Headline.NoLengthMm) ? own / groups : null, _chance == 0 ? null : weighted / over / _chance);
    }
}
