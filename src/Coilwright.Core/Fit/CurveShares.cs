using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Sections;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Fit;

/// <summary>How much wire each bead takes on the curve: its share, which neighbours decide together.</summary>
/// <remarks>
/// <para>A bead's share is R times half of the angles to both its neighbours; at the ends of the piece its own half angle stands in for the missing
/// neighbour. The shares tile the wire. A stretch measured at the bench scales its beads' shares, at every radius.</para>
/// <para>Beads that are not neighbours may touch over the heads of small ones between them: tall flat beads on their inner edges, a stone and a
/// focal's overhang. They are kept apart too, and the play that leaves to the small ones is spread evenly over them.</para>
/// <para>Made once for an order and asked for many radii: which kinds are neighbours is found once, and each pair's angle once per radius.
/// Model, derivation and limits: docs/theory/curve-true-length.md.</para>
/// </remarks>
public sealed class CurveShares
{
    private readonly Bead[] _kinds;
    private readonly ImmutableArray<int> _order;
    private readonly double[]? _benchFactors;
    private readonly (int A, int B)[] _pairs;
    private readonly int[] _pairAfter;
    private readonly ImmutableArray<ConvexSection>[] _fixedSections;
    private readonly double _leastRadiusMm;

    /// <summary>Prepares an order.</summary>
    /// <param name="kinds">The piece's kinds of bead.</param>
    /// <param name="order">The stringing order.</param>
    /// <param name="benchFactors">For each bead, what a measured row scales its share by; null when nothing was measured.</param>
    public CurveShares(ImmutableArray<Bead> kinds, StringingOrder order, double[]? benchFactors = null)
    {
        _kinds = [.. kinds];
        _order = order.Kinds;
        _benchFactors = benchFactors;
        _fixedSections = [.. kinds.Select(k => k.Shape.SectionsDependOnRadius ? default : k.Shape.Sections(k, 1))];
        var indexOf = new int[kinds.Length * kinds.Length];
        var pairs = new List<(int, int)>();
        _pairAfter = new int[_order.Length - 1];
        for (var i = 0; i < _pairAfter.Length; i++)
        {
            // A pair and its mirror image stand equally near, since every section is its own mirror image.
            var a = Math.Min(_order[i], _order[i + 1]);
            var b = Math.Max(_order[i], _order[i + 1]);
            ref var index = ref indexOf[a * kinds.Length + b];
            if (index == 0)
            {
                pairs.Add((a, b));
                index = pairs.Count;
            }
            _pairAfter[i] = index - 1;
        }
        _pairs = [.. pairs];
        _leastRadiusMm = LeastRadiusMm(kinds, order);
    }

    /// <summary>Least radius at which beads can stand round a circle, mm: their inner sides leave its centre a tenth of the thickest one's reach.</summary>
    /// <param name="kinds">The piece's kinds of bead.</param>
    /// <param name="order">The stringing order.</param>
    public static double LeastRadiusMm(ImmutableArray<Bead> kinds, StringingOrder order) => 1.1 * order.Kinds.Distinct().Max(k => kinds[k].BearingReachMm);

    /// <summary>Each bead's share of the wire at a radius, mm.</summary>
    /// <param name="radiusMm">Radius of the wire's centre line, mm. Where a bead reaches to the coil's centre or near it nothing can stand; such a
    /// radius is answered as the least at which they do.</param>
    public ImmutableArray<double> AtRadius(double radiusMm)
    {
        var (first, last, apart) = Apart(Math.Max(radiusMm, _leastRadiusMm));
        var shares = new double[_order.Length];
        shares[0] = first;
        shares[^1] += last;
        for (var i = 0; i < apart.Length; i++)
        {
            var half = apart[i] / 2;
            shares[i] += half;
            shares[i + 1] += half;
        }
        if (_benchFactors is not null)
            for (var i = 0; i < shares.Length; i++) shares[i] *= _benchFactors[i];
        return ImmutableCollectionsMarshal.AsImmutableArray(shares);
    }

    /// <summary>Where each bead's own middle stands at a radius, mm of wire from the starting end: neighbours' middles are as far apart as their
    /// contact keeps them.</summary>
    /// <param name="radiusMm">As for <see cref="AtRadius"/>.</param>
    public ImmutableArray<double> MiddlesAtRadius(double radiusMm)
    {
        var (first, _, apart) = Apart(Math.Max(radiusMm, _leastRadiusMm));
        double Factor(int bead) => _benchFactors is null ? 1 : _benchFactors[bead];
        var middles = new double[_order.Length];
        middles[0] = first * Factor(0);
        for (var i = 0; i < apart.Length; i++) middles[i + 1] = middles[i] + apart[i] / 2 * (Factor(i) + Factor(i + 1));
        return ImmutableCollectionsMarshal.AsImmutableArray(middles);
    }

    // Wire before the first bead's middle, after the last one's, and from each bead's middle to the next one's, mm.
    private (double First, double Last, double[] Apart) Apart(double radiusMm)
    {
        var sections = new ImmutableArray<ConvexSection>[_kinds.Length];
        for (var k = 0; k < _kinds.Length; k++)
            sections[k] = _fixedSections[k].IsDefault ? _kinds[k].Shape.Sections(_kinds[k], radiusMm) : _fixedSections[k];
        var angles = new double[_pairs.Length];
        for (var p = 0; p < _pairs.Length; p++)
            angles[p] = NeighbourContact.AngleRad(sections[_pairs[p].A], sections[_pairs[p].B], radiusMm);
        var apart = Array.ConvertAll(_pairAfter, p => angles[p]);
        KeepApartOverSmallOnes(apart, sections, radiusMm);
        for (var i = 0; i < apart.Length; i++) apart[i] *= radiusMm;
        // At an end nothing can tuck, so the part that meets the wire counts: the first section.
        return (radiusMm * sections[_order[0]][0].LeanRad(0, radiusMm), radiusMm * sections[_order[^1]][0].LeanRad(0, radiusMm), apart);
    }

    /// <summary>Widens what lies between two beads that are not neighbours where they would overlap.</summary>
    /// <param name="apart">Angles from each bead's middle to the next one's, radians.</param>
    /// <param name="sections">Each kind's figures.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm.</param>
    private void KeepApartOverSmallOnes(double[] apart, ImmutableArray<ConvexSection>[] sections, double radiusMm)
    {
        // How far round a bead reaches from its middle: two that stand further apart than both reaches have a line from the coil's centre between them.
        var reaches = new double[_kinds.Length];
        for (var k = 0; k < reaches.Length; k++)
            foreach (var section in sections[k]) reaches[k] = Math.Max(reaches[k], section.LeanRad(0, radiusMm));

        Dictionary<(int, int), double>? angles = null;
        double[]? widen = null;
        // Each round lets one more bead stand between. Within a round every stretch is measured before any is widened, and where two share a gap the
        // larger widening counts, so that an order and its mirror image come out alike.
        for (int between = 1, near = 1; near > 0 && between < apart.Length; between++)
        {
            near = 0;
            for (var i = 0; i + between < apart.Length; i++)
            {
                double along = 0;
                for (var gap = i; gap <= i + between; gap++) along += apart[gap];
                int left = _order[i], right = _order[i + between + 1];
                if (along >= reaches[left] + reaches[right]) continue;
                near++;
                var pair = left < right ? (left, right) : (right, left);
                angles ??= [];
                if (!angles.TryGetValue(pair, out var angle))
                    angles[pair] = angle = NeighbourContact.AngleRad(sections[pair.Item1], sections[pair.Item2], radiusMm);
                if (along >= angle) continue;
                widen ??= new double[apart.Length];
                for (var gap = i; gap <= i + between; gap++) widen[gap] = Math.Max(widen[gap], (angle - along) / (between + 1));
            }
            if (widen is null) continue;
            for (var gap = 0; gap < apart.Length; gap++) apart[gap] += widen[gap];
            Array.Clear(widen);
        }
    }
}
