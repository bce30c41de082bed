using Coilwright.Core.Geometry;

namespace Coilwright.Core.Settle.Rods;

/// <summary>Slopes and second slopes of how a wire bends and twists at a node, by the edge before it, its angle, the edge after it and its angle.</summary>
/// <remarks>Linear in the material's axes: with those of one edge left out it is what the bend is about the other edge's axes alone, halved. Derived in docs/theory/settle.md.</remarks>
internal static class BendSlopes
{
    public const int E = 0, ThetaE = 3, F = 4, ThetaF = 7, Local = 8;

    // First slopes of both bends and of the twist by (e, thetaE, f, thetaF).
    public static void First(in NodeBend b, Point3 tt, Span<double> g1, Span<double> g2, Span<double> gt)
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
    public static void AddSecondOfBend(Span<double> h, double s, in NodeBend b, double bend, Point3 tt, Point3 me, Point3 mf, Point3 oe, Point3 of, int sign)
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

    public static void AddSecondOfTwist(Span<double> h, double s, in NodeBend b, Point3 tt)
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
    public static void Spread(ReadOnlySpan<double> h, Span<double> to)
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
