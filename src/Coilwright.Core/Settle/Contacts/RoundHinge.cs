using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;

namespace Coilwright.Core.Settle.Contacts;

/// <summary>How much a bend counts between two beads that are both round about their hole: the same in every direction.</summary>
/// <remarks>The bend's square is <c>4 (1 - c) / (1 + c)</c> with c the cosine of the angle between the edges e and f, so that its slopes are those of c. Derived in docs/theory/settle.md.</remarks>
internal readonly struct RoundHinge
{
    private readonly Point3 _te, _tf, _byE, _byF;
    private readonly double _le, _lf, _c, _first, _second;

    /// <summary>Looks at a node.</summary>
    /// <param name="state">How the wire lies.</param>
    /// <param name="node">The node.</param>
    /// <param name="smooth">The bend below which none is told from another.</param>
    public RoundHinge(RodState state, int node, double smooth)
    {
        var e = state.EdgeBefore(node);
        (_te, _tf, _le, _lf) = (state.Tangents[e], state.Tangents[node], state.Lengths[e], state.Lengths[node]);
        _c = _te.Dot(_tf);
        // Of nearly straight wire the cosine has lost the digits that the sine still has.
        var sine = _te.Cross(_tf);
        var chi = 1 + _c;
        Counts = chi > 1e-6 ? Math.Sqrt(4 / (chi * chi) * sine.Dot(sine) + smooth * smooth) : double.PositiveInfinity;
        var (slope, curve) = (-8 / (chi * chi), 16 / (chi * chi * chi));
        _first = slope / (2 * Counts);
        _second = curve / (2 * Counts) - slope * slope / (4 * Counts * Counts * Counts);
        _byE = 1 / _le * (_tf - _c * _te);
        _byF = 1 / _lf * (_te - _c * _tf);
    }

    /// <summary>What the bend counts; without end where the wire is folded back on itself.</summary>
    public double Counts { get; }

    /// <summary>The slopes by the edge before and the edge after.</summary>
    public (Point3 ByE, Point3 ByF) Slopes => (_first * _byE, _first * _byF);

    /// <summary>Puts the second slopes of an energy that depends on the count alone: by (e, f), six rows, row by row.</summary>
    /// <param name="slope">The energy's slope by the count.</param>
    /// <param name="curve">Its second slope by the count.</param>
    /// <param name="h">Where they go.</param>
    public void Second(double slope, double curve, Span<double> h)
    {
        const int Rows = 6;
        var outer = curve * _first * _first + slope * _second;
        var by = slope * _first;
        double ee = by / (_le * _le), ff = by / (_lf * _lf), ef = by / (_le * _lf);
        Point3 u = _tf - _c * _te, v = _te - _c * _tf;
        for (var r = 0; r < 3; r++)
            for (var k = 0; k < 3; k++)
            {
                double one = r == k ? 1 : 0, te = _te[r] * _te[k], tf = _tf[r] * _tf[k];
                h[r * Rows + k] = outer * _byE[r] * _byE[k] - ee * (_te[r] * u[k] + u[r] * _te[k] + _c * (one - te));
                h[(3 + r) * Rows + 3 + k] = outer * _byF[r] * _byF[k] - ff * (_tf[r] * v[k] + v[r] * _tf[k] + _c * (one - tf));
                h[r * Rows + 3 + k] = h[(3 + k) * Rows + r] = outer * _byE[r] * _byF[k] + ef * (one - tf - _te[r] * v[k]);
            }
    }
}
