using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Rods;

/// <summary>What bending and twisting the wire costs.</summary>
/// <remarks>At each node <c>(B1 (k1 - k1')^2 + B2 (k2 - k2')^2 + C (t - t')^2) / 2l</c>, primes at rest. Slopes and second slopes are written out by hand
/// (docs/theory/settle.md) and are those of the step from the state as it is: each evaluation starts from directions carried there.</remarks>
public sealed class BendTerm : IEnergyTerm
{
    private const int E = 0, ThetaE = 3, F = 4, ThetaF = 7, Local = 8;
    private readonly RodModel _model;
    private readonly int[] _nodes;

    /// <summary>Makes it.</summary>
    public BendTerm(RodModel model)
    {
        _model = model;
        _nodes = [.. Enumerable.Range(0, model.Nodes).Where(i => model.RestLengthAt[i] > 0)];
        Elements = Array.ConvertAll(_nodes, i =>
        {
            int before = i == 0 ? model.Nodes - 1 : i - 1, after = i + 1 == model.Nodes ? 0 : i + 1;
            return new[] { 4 * before, 4 * before + 1, 4 * before + 2, 4 * before + 3, 4 * i, 4 * i + 1, 4 * i + 2, 4 * i + 3, 4 * after, 4 * after + 1, 4 * after + 2 };
        });
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        foreach (var i in _nodes)
        {
            var bend = new NodeBend(state, i);
            // Folded back on itself: no wire does, and a step that does is too long.
            if (!(bend.Chi > 1e-6)) return double.PositiveInfinity;
            double k1 = bend.Bend1 - _model.RestBend1[i], k2 = bend.Bend2 - _model.RestBend2[i], t = bend.Twist - _model.RestTwist[i];
            energy += (_model.BendingStiffness.First * k1 * k1 + _model.BendingStiffness.Second * k2 * k2 + _model.TwistStiffness * t * t) / (2 * _model.RestLengthAt[i]);
        }
        return energy;
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<double> slope = stackalloc double[Local], g1 = stackalloc double[Local], g2 = stackalloc double[Local], gt = stackalloc double[Local];
        Span<double> second = stackalloc double[Local * Local], spread = stackalloc double[121];
        for (var n = 0; n < _nodes.Length; n++)
        {
            var i = _nodes[n];
            var bend = new NodeBend(state, i);
            var stretch = _model.RestLengthAt[i];
            var a1 = _model.BendingStiffness.First * (bend.Bend1 - _model.RestBend1[i]) / stretch;
            var a2 = _model.BendingStiffness.Second * (bend.Bend2 - _model.RestBend2[i]) / stretch;
            var at = _model.TwistStiffness * (bend.Twist - _model.RestTwist[i]) / stretch;
            var tt = 1 / bend.Chi * (bend.Te + bend.Tf);
            Slopes(bend, tt, g1, g2, gt);
            for (var k = 0; k < Local; k++) slope[k] = a1 * g1[k] + a2 * g2[k] + at * gt[k];
            var dofs = Elements[n];
            for (var k = 0; k < 3; k++)
            {
                gradient[dofs[k]] -= slope[E + k];
                gradient[dofs[4 + k]] += slope[E + k] - slope[F + k];
                gradient[dofs[8 + k]] += slope[F + k];
            }
            gradient[dofs[3]] += slope[ThetaE];
            gradient[dofs[7]] += slope[ThetaF];
            if (hessian is null) continue;

            second.Clear();
            var b1 = _model.BendingStiffness.First / stretch;
            var b2 = _model.BendingStiffness.Second / stretch;
            var c = _model.TwistStiffness / stretch;
            for (var r = 0; r < Local; r++)
                for (var k = 0; k < Local; k++) second[r * Local + k] = b1 * g1[r] * g1[k] + b2 * g2[r] * g2[k] + c * gt[r] * gt[k];
            AddSecondOfBend(second, a1, bend, bend.Bend1, tt, bend.M2e, bend.M2f, bend.M1e, bend.M1f, 1);
            AddSecondOfBend(second, a2, bend, bend.Bend2, tt, bend.M1e, bend.M1f, bend.M2e, bend.M2f, -1);
            AddSecondOfTwist(second, at, bend, tt);
            SmallMatrix.Mirror(second, Local);
            if (convex) SmallMatrix.MakeConvex(second, Local);
            Spread(second, spread);
            hessian.Add(n, spread);
        }
    }

    // First slopes of both bends and of the twist by (e, thetaE, f, thetaF).
    private static void Slopes(in NodeBend b, Point3 tt, Span<double> g1, Span<double> g2, Span<double> gt)
    {
        var d1 = 1 / b.Chi * (b.M1e + b.M1f);
        var d2 = 1 / b.Chi * (b.M2e + b.M2f);
        Put(g1, E, 1 / b.Le * (b.Tf.Cross(d2) - b.Bend1 * tt));
        Put(g1, F, 1 / b.Lf * (-b.Te.Cross(d2) - b.Bend1 * tt));
        Put(g2, E, 1 / b.Le * (-b.Tf.Cross(d1) - b.Bend2 * tt));
        Put(g2, F, 1 / b.Lf * (b.Te.Cross(d1) - b.Bend2 * tt));
        (g1[ThetaE], g1[ThetaF]) = (-0.5 * b.Binormal.Dot(b.M1e), -0.5 * b.Binormal.Dot(b.M1f));
        (g2[ThetaE], g2[ThetaF]) = (-0.5 * b.Binormal.Dot(b.M2e), -0.5 * b.Binormal.Dot(b.M2f));
        Put(gt, E, 0.5 / b.Le * b.Binormal);
        Put(gt, F, 0.5 / b.Lf * b.Binormal);
        (gt[ThetaE], gt[ThetaF]) = (-1, 1);
    }

    // Second slopes of one bend; the other follows from it with the axes changed over and the sign of what they carry turned. Upper blocks only.
    private static void AddSecondOfBend(Span<double> h, double s, in NodeBend b, double bend, Point3 tt, Point3 me, Point3 mf, Point3 oe, Point3 of, int sign)
    {
        var d = sign / b.Chi * (me + mf);
        var tfd = b.Tf.Cross(d);
        var ted = b.Te.Cross(d);
        double ee = s / (b.Le * b.Le), ff = s / (b.Lf * b.Lf), ef = s / (b.Le * b.Lf);
        Outer(h, E, E, 2 * bend * ee, tt, tt);
        Outer(h, E, E, -ee, tfd, tt);
        Outer(h, E, E, -ee, tt, tfd);
        Square(h, E, -bend / b.Chi * ee, b.Te);
        Outer(h, E, E, 0.25 * sign * ee, b.Binormal, me);
        Outer(h, E, E, 0.25 * sign * ee, me, b.Binormal);
        Outer(h, F, F, 2 * bend * ff, tt, tt);
        Outer(h, F, F, ff, ted, tt);
        Outer(h, F, F, ff, tt, ted);
        Square(h, F, -bend / b.Chi * ff, b.Tf);
        Outer(h, F, F, 0.25 * sign * ff, b.Binormal, mf);
        Outer(h, F, F, 0.25 * sign * ff, mf, b.Binormal);
        for (var k = 0; k < 3; k++) h[(E + k) * Local + F + k] -= bend / b.Chi * ef;
        Outer(h, E, F, -bend / b.Chi * ef, b.Te, b.Tf);
        Outer(h, E, F, 2 * bend * ef, tt, tt);
        Outer(h, E, F, -ef, tfd, tt);
        Outer(h, E, F, ef, tt, ted);
        CrossInto(h, E, F, -ef, d);
        // The first bend is carried by the second axes, whose change with the angle is minus the first; the second bend likewise.
        Column(h, E, ThetaE, s / b.Le * (0.5 * b.Binormal.Dot(oe) * tt - 1 / b.Chi * b.Tf.Cross(oe)));
        Column(h, E, ThetaF, s / b.Le * (0.5 * b.Binormal.Dot(of) * tt - 1 / b.Chi * b.Tf.Cross(of)));
        Column(h, F, ThetaE, s / b.Lf * (0.5 * b.Binormal.Dot(oe) * tt + 1 / b.Chi * b.Te.Cross(oe)));
        Column(h, F, ThetaF, s / b.Lf * (0.5 * b.Binormal.Dot(of) * tt + 1 / b.Chi * b.Te.Cross(of)));
        h[ThetaE * Local + ThetaE] -= 0.5 * sign * s * b.Binormal.Dot(me);
        h[ThetaF * Local + ThetaF] -= 0.5 * sign * s * b.Binormal.Dot(mf);
    }

    private static void AddSecondOfTwist(Span<double> h, double s, in NodeBend b, Point3 tt)
    {
        double ee = s / (b.Le * b.Le), ff = s / (b.Lf * b.Lf), ef = s / (b.Le * b.Lf);
        Outer(h, E, E, -0.25 * ee, b.Binormal, b.Te + tt);
        Outer(h, E, E, -0.25 * ee, b.Te + tt, b.Binormal);
        Outer(h, F, F, -0.25 * ff, b.Binormal, b.Tf + tt);
        Outer(h, F, F, -0.25 * ff, b.Tf + tt, b.Binormal);
        CrossInto(h, E, F, ef / b.Chi, b.Te);
        Outer(h, E, F, -0.5 * ef, b.Binormal, tt);
    }

    // From (e, thetaE, f, thetaF) to the three nodes and two angles: e = x - before, f = after - x.
    private static void Spread(ReadOnlySpan<double> h, Span<double> to)
    {
        ReadOnlySpan<int> at = [0, 4, 8];
        ReadOnlySpan<double> ofE = [-1, 1, 0];
        ReadOnlySpan<double> ofF = [0, -1, 1];
        for (var a = 0; a < 3; a++)
        {
            for (var b = 0; b < 3; b++)
                for (var r = 0; r < 3; r++)
                    for (var c = 0; c < 3; c++)
                        to[(at[a] + r) * 11 + at[b] + c] = ofE[a] * ofE[b] * h[(E + r) * Local + E + c] + ofF[a] * ofF[b] * h[(F + r) * Local + F + c]
                            + ofE[a] * ofF[b] * h[(E + r) * Local + F + c] + ofF[a] * ofE[b] * h[(F + r) * Local + E + c];
            for (var r = 0; r < 3; r++)
            {
                Both(to, at[a] + r, 3, ofE[a] * h[(E + r) * Local + ThetaE] + ofF[a] * h[(F + r) * Local + ThetaE]);
                Both(to, at[a] + r, 7, ofE[a] * h[(E + r) * Local + ThetaF] + ofF[a] * h[(F + r) * Local + ThetaF]);
            }
        }
        to[3 * 11 + 3] = h[ThetaE * Local + ThetaE];
        to[7 * 11 + 7] = h[ThetaF * Local + ThetaF];
        Both(to, 3, 7, h[ThetaE * Local + ThetaF]);

        static void Both(Span<double> m, int r, int c, double value) => m[r * 11 + c] = m[c * 11 + r] = value;
    }

    private static void Put(Span<double> to, int at, Point3 v) => (to[at], to[at + 1], to[at + 2]) = (v.X, v.Y, v.Z);

    private static void Outer(Span<double> h, int row, int column, double s, Point3 a, Point3 b)
    {
        for (var r = 0; r < 3; r++)
            for (var c = 0; c < 3; c++) h[(row + r) * Local + column + c] += s * a[r] * b[c];
    }

    // s (I - t t')
    private static void Square(Span<double> h, int at, double s, Point3 t)
    {
        for (var k = 0; k < 3; k++) h[(at + k) * Local + at + k] += s;
        Outer(h, at, at, -s, t, t);
    }

    // s [v]x, the matrix that takes w to v x w.
    private static void CrossInto(Span<double> h, int row, int column, double s, Point3 v)
    {
        h[row * Local + column + 1] -= s * v.Z;
        h[row * Local + column + 2] += s * v.Y;
        h[(row + 1) * Local + column] += s * v.Z;
        h[(row + 1) * Local + column + 2] -= s * v.X;
        h[(row + 2) * Local + column] -= s * v.Y;
        h[(row + 2) * Local + column + 1] += s * v.X;
    }

    // Into row block `at`, column theta; kept above the diagonal.
    private static void Column(Span<double> h, int at, int theta, Point3 v)
    {
        for (var k = 0; k < 3; k++)
        {
            var (row, column) = at + k < theta ? (at + k, theta) : (theta, at + k);
            h[row * Local + column] += v[k];
        }
    }
}
