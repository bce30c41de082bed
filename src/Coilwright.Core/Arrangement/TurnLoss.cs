using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Arrangement;

/// <summary>What an order of groups loses: the share of their length that lies against the wish from turn to turn, averaged over the wrists.</summary>
/// <remarks>As the tables of counts have it: a wish for a place is taken for what stands there now, what a focal hides is not left out, the turn stays. Where two
/// beads meet they take what they take of each other's shape. With stand-ins a group is taken for another kind of group.</remarks>
internal sealed class TurnLoss : IOrderLoss
{
    private readonly Wrist[] _wrists;

    public TurnLoss(Piece piece, double[]? factors, ReckoningChoices choices, GroupStretches stretches, ImmutableArray<WeighedWrist> wrists,
        ImmutableArray<GroupRun> places, ImmutableArray<GroupOrders.Sort> sorts)
    {
        var lies = new WornLies(piece, factors, choices);
        _wrists = [];
        if (places.IsEmpty) return;
        var all = new List<Wrist>();
        foreach (var wrist in wrists)
        {
            var worn = lies.Turns.On(wrist.WristMm);
            var lie = lies.At(worn.CircumferenceMm);
            var (sign, columnsMm, wishedMm) = TableMaker.WishesOf(stretches, piece.Wishes, lie);
            if (wishedMm <= 0) continue;
            var scale = wrist.Weight / wishedMm;
            double EndMm(int bead) => bead < lie.Count ? lie.StartsMm[bead] : lie.BeadedMm;
            var joints = new Joints(piece.Beads, worn.RadiusMm);
            var kinds = piece.Order.Kinds;
            // What a stretch takes without the halves of its joints to either side, as it stands now.
            double CoreMm(int first, int end) => EndMm(end) - EndMm(first) - joints.BeforeMm(first > 0 ? kinds[first - 1] : -1, kinds[first])
                - joints.AfterMm(kinds[end - 1], end < kinds.Length ? kinds[end] : -1);
            var things = new Thing[sorts.Length];
            for (var t = 0; t < sorts.Length; t++)
            {
                var sort = sorts[t];
                var place = places[sort.FirstPlace];
                // Where each of its beads ends, from its beginning; a bead that stands in changes its joints, of which the ends' are added when it is laid.
                var ends = new double[place.Count + 1];
                for (var i = 0; i < place.Count; i++)
                {
                    var bead = place.First + i;
                    var core = CoreMm(bead, bead + 1);
                    ends[i + 1] = ends[i] + core + (sort.Kinds[i] == kinds[bead] ? 0 : joints.SelfMm(sort.Kinds[i]) - joints.SelfMm(kinds[bead]));
                    if (i > 0) ends[i + 1] += joints.BeforeMm(sort.Kinds[i - 1], sort.Kinds[i]);
                    if (i + 1 < place.Count) ends[i + 1] += joints.AfterMm(sort.Kinds[i], sort.Kinds[i + 1]);
                }
                var parts = new List<Part>();
                for (var run = 0; run < stretches.Runs.Length; run++)
                {
                    var stretch = stretches.Runs[run];
                    if (stretch.First < place.First || stretch.End > place.End) continue;
                    var name = stretches.AreRuns ? -1 - sort.Kinds[stretch.First - place.First] : sort.Instead.IsEmpty ? stretches.NameOfRun[run] : stretches.Names.Length + t;
                    parts.Add(new Part(name, ends[stretch.First - place.First], ends[stretch.End - place.First], stretch.First == place.First, stretch.End == place.End,
                        stretches.WishOfRun[run] is null ? null : sign[run]));
                }
                things[t] = new Thing(ends[^1], sort.Kinds[0], sort.Kinds[^1], [.. parts]);
            }
            var signOfPlace = places.Select(place => Average(place, stretches, sign)).ToArray();
            var between = Enumerable.Range(0, places.Length + 1).Select(p =>
            {
                var (first, end) = (p == 0 ? 0 : places[p - 1].End, p < places.Length ? places[p].First : kinds.Length);
                return first == end ? new Between(0, -1, -1) : new Between(CoreMm(first, end), kinds[first], kinds[end - 1]);
            }).ToArray();
            var nextHead = Enumerable.Range(0, places.Length).Select(p => places[p].End < kinds.Length ? kinds[places[p].End] : -1).ToArray();
            all.Add(new Wrist(scale, columnsMm * scale, lie.WirePerTurnMm, worn.AveragingMm, joints, between, nextHead, signOfPlace, things,
                sign.Length == 0 ? 0 : Math.Max(0, -sign.Min()), LongestPart(things, joints),
                places.Length, things.Max(t => t.Parts.Length), LongestRest(things, joints, places.Length)));
        }
        _wrists = [.. all];
    }

    /// <summary>Whether any group has a wish.</summary>
    public bool HasWish => _wrists.Length > 0;

    /// <inheritdoc/>
    public IOrderScore Score() => new Laid(_wrists);

    private static double Average(GroupRun place, GroupStretches stretches, double[] sign)
    {
        double sum = 0;
        var count = 0;
        for (var run = 0; run < stretches.Runs.Length; run++)
        {
            if (stretches.Runs[run].First < place.First || stretches.Runs[run].End > place.End) continue;
            sum += sign[run];
            count++;
        }
        return count == 0 ? 0 : sum / count;
    }

    // So many millimetres of groups at the most in the last so many places, whatever they hold.
    private static double[] LongestRest(Thing[] things, Joints joints, int places)
    {
        var longest = things.Max(t => t.Parts.Sum(p => p.ToMm - p.FromMm)) + 2 * joints.MostMm;
        return [.. Enumerable.Range(0, places + 1).Select(left => left * longest)];
    }

    private static double LongestPart(Thing[] things, Joints joints) =>
        things.SelectMany(t => t.Parts).Select(p => p.ToMm - p.FromMm).DefaultIfEmpty().Max() + 2 * joints.MostMm;

    private sealed record Part(int Name, double FromMm, double ToMm, bool AtHead, bool AtTail, double? Sign);

    // Without the halves of its joints to either side.
    private sealed record Thing(double CoreMm, int Head, int Tail, Part[] Parts);

    // Likewise; kinds -1 where nothing stands between.
    private sealed record Between(double CoreMm, int Head, int Tail);

    private sealed record Wrist(double Scale, double Fixed, double TurnMm, double HalfMm, Joints Joints, Between[] Between, int[] NextHead, double[] SignOfPlace, Thing[] Things,
        double MostForColumns, double LongestMm, int Places, int MostParts, double[] RestMm);

    // What is laid on one wrist: parts by their starts, in growing order.
    private sealed class Laid(Wrist[] wrists) : IOrderScore
    {
        private readonly Row[] _rows = [.. wrists.Select(wrist => new Row(wrist))];
        private readonly double[] _lost = [.. Enumerable.Repeat(0.0, wrists.Length == 0 ? 1 : wrists[0].Places + 1)];
        private readonly double _fixed = wrists.Sum(wrist => wrist.Fixed);
        private int _count;

        public double Loss => _fixed + _lost[_count];

        public double LeastMore
        {
            get
            {
                double least = 0;
                // What comes can at the best lie over columns along all its length.
                foreach (var wrist in wrists) least -= wrist.Scale * wrist.MostForColumns * wrist.RestMm[wrist.Places - _count];
                return least;
            }
        }

        public void Lay(int thing)
        {
            if (wrists.Length == 0) return;
            var lost = _lost[_count];
            foreach (var row in _rows) lost += row.Lay(_count, thing);
            _lost[++_count] = lost;
        }

        public void TakeOff()
        {
            if (wrists.Length == 0) return;
            _count--;
            foreach (var row in _rows) row.TakeOff();
        }

        private sealed class Row(Wrist wrist)
        {
            private readonly double[] _start = new double[wrist.Places * wrist.MostParts], _length = new double[wrist.Places * wrist.MostParts], _sign = new double[wrist.Places * wrist.MostParts];
            private readonly int[] _name = new int[wrist.Places * wrist.MostParts], _partsSo = new int[wrist.Places + 1];
            private readonly double[] _end = new double[wrist.Places + 1];
            private readonly int[] _tail = [.. Enumerable.Repeat(-1, wrist.Places + 1)];
            private int _laid, _parts;

            public double Lay(int place, int thing)
            {
                var (what, between, joints) = (wrist.Things[thing], wrist.Between[place], wrist.Joints);
                var before = _tail[place];
                var at = _end[place];
                if (between.Head >= 0)
                {
                    at += joints.BeforeMm(before, between.Head) + between.CoreMm + joints.AfterMm(between.Tail, what.Head);
                    before = between.Tail;
                }
                var head = joints.BeforeMm(before, what.Head);
                // With nothing between, what comes next is not known yet: it is taken for what stands there now.
                var tail = joints.AfterMm(what.Tail, wrist.Between[place + 1].Head is >= 0 and var next ? next : wrist.NextHead[place]);
                double lost = 0;
                foreach (var part in what.Parts)
                {
                    var start = at + (part.AtHead ? 0 : head + part.FromMm);
                    var length = at + head + part.ToMm + (part.AtTail ? tail : 0) - start;
                    (_start[_parts], _length[_parts], _name[_parts], _sign[_parts]) = (start, length, part.Name, part.Sign ?? wrist.SignOfPlace[place]);
                    for (var j = _parts; j >= 0; j--)
                    {
                        var apart = start - _start[j];
                        if (apart > wrist.TurnMm + wrist.HalfMm + wrist.LongestMm) break;
                        if (_name[j] == part.Name && _sign[j] != 0)
                            lost += _sign[j] * AveragedOverlap.Mm(apart, _length[j], length, wrist.TurnMm, wrist.HalfMm);
                    }
                    _parts++;
                }
                _laid = place + 1;
                (_end[_laid], _tail[_laid]) = (at + head + what.CoreMm + tail, what.Tail);
                _partsSo[_laid] = _parts;
                return lost * wrist.Scale;
            }

            public void TakeOff() => _parts = _partsSo[--_laid];
        }
    }
}
