using Coilwright.Core.Alignment;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Tests.Alignment;

/// <summary>Lining up by brute force: the wire cut into equal small steps, and each step held against the step one turn further on.</summary>
/// <remarks>
/// <para>Shares no code with the model but the table of likeness. Each step is looked at in its middle. Where every edge lies on the lattice (shares
/// and T whole numbers of steps) the count is exact, and so is the trapezium rule over shifts, since what two rows share is then straight
/// between lattice shifts. Edges off the lattice (where a wish for a place starts and ends) each put a stretch wrong by at most half a step
/// in either row (<see cref="SlackMm"/>): brute force then counts exactly what a row with rounded edges has.</para>
/// </remarks>
internal sealed class LatticeLiningUp
{
    private readonly Piece _piece;
    private readonly double _step;
    private readonly int _shift;
    private readonly int[] _kind, _name, _run;
    private readonly bool[] _seen;
    private readonly LiningUpWish[] _wish;
    private readonly List<GroupRun> _runs;
    private readonly double[,] _weight;

    public LatticeLiningUp(Piece piece, ReckoningChoices choices, Lie lie, double pitchMm, double stepMm)
    {
        _piece = piece;
        _step = stepMm;
        _shift = (int)Math.Round(lie.WirePerTurnMm / stepMm);
        var steps = (int)Math.Round(lie.SharesMm.Sum() / stepMm);
        (_kind, _name, _run) = (new int[steps], new int[steps], new int[steps]);
        (_seen, _wish) = (new bool[steps], new LiningUpWish[steps]);
        _runs = RunsOf(piece);
        var likeness = new KindLikeness(piece.Beads, choices);
        _weight = new double[piece.Beads.Length, piece.Beads.Length];
        for (var i = 0; i < piece.Beads.Length; i++)
            for (var j = 0; j < piece.Beads.Length; j++)
                _weight[i, j] = likeness[i, j] * Math.Sqrt(Shows(i) * Shows(j));
        double Shows(int k) => piece.Beads[k].Description.Shows ?? choices.ShowsByRole[piece.Beads[k].Role];

        var hides = Hides(piece, lie, pitchMm);
        var runOf = Enumerable.Range(0, lie.Count).Select(b => _runs.FindIndex(r => b >= r.First && b < r.End)).ToArray();
        var nameOf = runOf.Select(r => r < 0 ? -1 : _runs.FindIndex(o => o.Name == _runs[r].Name)).ToArray();
        var wishOf = runOf.Select(r => r < 0 ? null : GroupWish(_runs[r])).ToArray();
        var bead = 0;
        var end = lie.SharesMm[0];
        for (var m = 0; m < steps; m++)
        {
            var s = (m + 0.5) * stepMm;
            while (s > end && bead + 1 < lie.Count) end += lie.SharesMm[++bead];
            _seen[m] = !hides.Exists(h => Math.Abs(s - h.Middle) < h.Half && bead != h.Focal);
            (_kind[m], _run[m], _name[m]) = (piece.Order.Kinds[bead], runOf[bead], nameOf[bead]);
            _wish[m] = wishOf[bead] ?? PlaceWish(lie.StartAngleDeg + 360 * s / lie.WirePerTurnMm);
        }
        HiddenMm = _seen.Count(v => !v) * stepMm;
        var length = steps * stepMm;
        var places = 2 * piece.Wishes.Places.Length * (int)Math.Ceiling(length / lie.WirePerTurnMm + 1);
        SlackMm = stepMm * places + 1e-9;
    }

    /// <summary>Length hidden, mm.</summary>
    public double HiddenMm { get; }

    /// <summary>How far a length may be off, mm: half a step in either row for each edge that may lie off the lattice, and rounding.</summary>
    public double SlackMm { get; }

    public IReadOnlyList<GroupRun> Runs => _runs;

    /// <summary>What lies over anything, weighted, and of the same kind, mm, at a shift of so many steps from T.</summary>
    public (double Over, double Weighted, double Same) ByBead(int off = 0)
    {
        double over = 0, weighted = 0, same = 0;
        var shift = _shift + off;
        for (var m = 0; m + shift < _seen.Length; m++)
        {
            if (!_seen[m] || !_seen[m + shift]) continue;
            var (a, b) = (_kind[m], _kind[m + shift]);
            over += _step;
            weighted += _step * _weight[a, b];
            if (a == b) same += _step;
        }
        return (over, weighted, same);
    }

    /// <summary>Lengths of groups over their own kind and over anything, by wish, and of everything over anything, mm.</summary>
    public (double[] Own, double[] Over, double Any) ByGroup(int off = 0)
    {
        var (own, over, any) = (new double[3], new double[3], 0.0);
        var shift = _shift + off;
        for (var m = 0; m + shift < _seen.Length; m++)
        {
            if (!_seen[m] || !_seen[m + shift]) continue;
            any += _step;
            if (_name[m] < 0) continue;
            over[(int)_wish[m]] += _step;
            if (_name[m] == _name[m + shift]) own[(int)_wish[m]] += _step;
        }
        return (own, over, any);
    }

    /// <summary>Visible length of groups by wish, mm.</summary>
    public double[] SeenByWish()
    {
        var seen = new double[3];
        for (var m = 0; m < _seen.Length; m++)
            if (_seen[m] && _run[m] >= 0) seen[(int)_wish[m]] += _step;
        return seen;
    }

    /// <summary>Mean over shifts from T - half to T + half, by the trapezium rule on the lattice.</summary>
    public double[] Averaged(double halfMm, Func<int, double[]> at)
    {
        var reach = (int)Math.Round(halfMm / _step);
        double[]? sum = null;
        for (var off = -reach; off <= reach; off++)
        {
            var values = at(off);
            sum ??= new double[values.Length];
            for (var i = 0; i < values.Length; i++) sum[i] += values[i] * (Math.Abs(off) == reach ? 0.5 : 1) / (2 * reach);
        }
        return sum!;
    }

    /// <summary>For each kind: what of it lies over anything, and over its own kind, mm.</summary>
    public (double Over, double Own)[] ByKind()
    {
        var kinds = new (double Over, double Own)[_piece.Beads.Length];
        Each(0, (m, n) =>
        {
            var (a, b) = (_kind[m], _kind[n]);
            kinds[a].Over += _step;
            if (a == b) kinds[a].Own += _step;
        });
        return kinds;
    }

    /// <summary>Pairs of runs of one name that lie over each other: length, and first and last place on the later turn, mm.</summary>
    public Dictionary<(int A, int B), (double Length, double From, double To)> Pairs()
    {
        var pairs = new Dictionary<(int A, int B), (double Length, double From, double To)>();
        Each(0, (m, n) =>
        {
            if (_name[m] < 0 || _name[m] != _name[n]) return;
            var key = (_run[m], _run[n]);
            pairs[key] = pairs.TryGetValue(key, out var so) ? (so.Length + _step, so.From, (n + 1) * _step) : (_step, n * _step, (n + 1) * _step);
        });
        return pairs;
    }

    private void Each(int off, Action<int, int> pair)
    {
        var shift = _shift + off;
        for (var m = 0; m + shift < _seen.Length; m++)
            if (_seen[m] && _seen[m + shift]) pair(m, m + shift);
    }

    // A focal hides where its outline stands over the wire: on its own turn beside its own share, and on turns that half its width reaches past.
    private static List<(double Middle, double Half, int Focal)> Hides(Piece piece, Lie lie, double pitchMm)
    {
        var hides = new List<(double, double, int)>();
        for (var i = 0; i < lie.Count; i++)
        {
            var bead = piece.Beads[piece.Order.Kinds[i]];
            if (bead.Shape.Name != "focal") continue;
            var under = bead.Description.Seat?.ClearMm ?? -(bead.ThicknessMm / 2 - bead.Description.HoleOffsetMm!.Value);
            var half = lie.RadiusMm * Math.Atan(bead.LengthMm / 2 / (lie.RadiusMm + under));
            var middle = lie.SharesMm.Take(i).Sum() + lie.SharesMm[i] / 2;
            hides.Add((middle, half, i));
            for (var k = 1; bead.WidthMm / 2 > k * pitchMm; k++)
            {
                hides.Add((middle - k * lie.WirePerTurnMm, half, -1));
                hides.Add((middle + k * lie.WirePerTurnMm, half, -1));
            }
        }
        return hides;
    }

    // Those with no other inside; of two on the same beads the one written later is the inner one. Without names, runs of one kind.
    private static List<GroupRun> RunsOf(Piece piece)
    {
        var groups = piece.Order.Groups;
        if (!groups.IsEmpty)
            return [.. groups.Where((g, i) => !groups.Where((o, j) => j != i && Inside(o, j, g, i)).Any())];
        var runs = new List<GroupRun>();
        for (var i = 0; i < piece.Order.Count; i++)
        {
            var bead = piece.Beads[piece.Order.Kinds[i]];
            if (i > 0 && piece.Order.Kinds[i - 1] == piece.Order.Kinds[i])
            {
                if (runs.Count > 0 && runs[^1].End == i && runs[^1].Name == bead.Id) runs[^1] = runs[^1] with { Count = runs[^1].Count + 1 };
            }
            else if (bead.Role is not (Core.Beads.Role.Spacer or Core.Beads.Role.Connector)) runs.Add(new GroupRun(bead.Id, i, 1));
        }
        return runs;
    }

    private static bool Inside(GroupRun inner, int innerAt, GroupRun outer, int outerAt) =>
        inner.First >= outer.First && inner.End <= outer.End && (inner.Count < outer.Count || innerAt > outerAt);

    // A group's own wish, else the nearest group's round it.
    private LiningUpWish? GroupWish(GroupRun run)
    {
        var wishes = _piece.Wishes.Groups;
        if (_piece.Order.Groups.IsEmpty) return wishes.TryGetValue(run.Name, out var byKind) ? byKind : null;
        foreach (var (group, _) in _piece.Order.Groups.Select((g, i) => (g, i)).Where(x => x.g.First <= run.First && x.g.End >= run.End)
            .OrderBy(x => x.g.Count).ThenByDescending(x => x.i))
            if (wishes.TryGetValue(group.Name, out var wish)) return wish;
        return null;
    }

    // The first place's that covers the angle, else the piece's.
    private LiningUpWish PlaceWish(double angleDeg)
    {
        foreach (var place in _piece.Wishes.Places)
            if (Round(angleDeg - place.FromDeg) <= Round(place.ToDeg - place.FromDeg)) return place.LiningUp;
        return _piece.Wishes.LiningUp;
    }

    private static double Round(double deg) => deg - 360 * Math.Floor(deg / 360);
}
