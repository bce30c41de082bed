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
        var across = bend / b.Chi;
        Mutual(h, E, tt, ee * (bend * tt - tfd));
        Mutual(h, E, b.Binormal, 0.25 * sign * ee * me);
        Square(h, E, -across * ee, b.Te);
        Mutual(h, F, tt, ff * (bend * tt + ted));
        Mutual(h, F, b.Binormal, 0.25 * sign * ff * mf);
        Square(h, F, -across * ff, b.Tf);
        for (var k = 0; k < 3; k++) h[(E + k) * Local + F + k] -= across * ef;
        Outer(h, E, F, -across * ef * b.Te, b.Tf);
        Outer(h, E, F, tt, ef * (2 * bend * tt + ted));
        Outer(h, E, F, -ef * tfd, tt);
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
        Mutual(h, E, b.Binormal, -0.25 * ee * (b.Te + tt));
        Mutual(h, F, b.Binormal, -0.25 * ff * (b.Tf + tt));
        CrossInto(h, E, F, ef / b.Chi, b.Te);
        Outer(h, E, F, -0.5 * ef * b.Binormal, tt);
    }

    // From (e, thetaE, f, thetaF) to the three nodes and two angles: e = x - before, f = after - x.
    public static void Spread(ReadOnlySpan<double> h, Span<double> to)
    {
        const int Across = 11, Next = 4, Last = 8;
        SpreadPlaces(h, Local, F, to, Across, Next);
        for (var r = 0; r < 3; r++)
        {
            for (var (theta, place) = (ThetaE, 3); ; (theta, place) = (ThetaF, 7))
            {
                double e = h[(E + r) * Local + theta], f = h[(F + r) * Local + theta];
                Both(to, r, place, -e);
                Both(to, Next + r, place, e - f);
                Both(to, Last + r, place, f);
                if (theta == ThetaF) break;
            }
        }
        to[3 * 11 + 3] = h[ThetaE * Local + ThetaE];
        to[7 * 11 + 7] = h[ThetaF * Local + ThetaF];
        Both(to, 3, 7, h[ThetaE * Local + ThetaF]);

        static void Both(Span<double> m, int r, int c, double value) => m[r * 11 + c] = m[c * 11 + r] = value;
    }

    /// <summary>Of second slopes by two edges, e at 0 and f further on, those by the places of the three nodes that they run between.</summary>
    /// <param name="h">By the edges, row by row.</param>
    /// <param name="local">How many columns that has.</param>
    /// <param name="f">Where f begins in it.</param>
    /// <param name="to">By the nodes, row by row.</param>
    /// <param name="across">How many columns that has.</param>
    /// <param name="next">From one node to the next in it.</param>
    public static void SpreadPlaces(ReadOnlySpan<double> h, int local, int f, Span<double> to, int across, int next)
    {
        var last = 2 * next;
        for (var r = 0; r < 3; r++)
            for (var c = 0; c < 3; c++)
            {
                double ee = h[r * local + c], ef = h[r * local + f + c], fe = h[(f + r) * local + c], ff = h[(f + r) * local + f + c];
                var row = to.Slice(r * across + c, last * across + last + 1);
                (row[0], row[next], row[last]) = (ee, ef - ee, -ef);
                (row[next * across], row[next * across + next], row[next * across + last]) = (fe - ee, ee + ff - ef - fe, ef - ff);
                (row[last * across], row[last * across + next], row[last * across + last]) = (-fe, fe - ff, ff);
            }
    }

    private static void Put(Span<double> to, int at, Point3 v) => (to[at], to[at + 1], to[at + 2]) = (v.X, v.Y, v.Z);

    // a b'
    private static void Outer(Span<double> h, int row, int column, Point3 a, Point3 b)
    {
        Row(h, row * Local + column, a.X, b);
        Row(h, (row + 1) * Local + column, a.Y, b);
        Row(h, (row + 2) * Local + column, a.Z, b);

        static void Row(Span<double> h, int at, double s, Point3 v)
        {
            var to = h.Slice(at, 3);
            to[0] += s * v.X;
            to[1] += s * v.Y;
            to[2] += s * v.Z;
        }
    }

    // a b' + b a', its upper half.
    private static void Mutual(Span<double> h, int at, Point3 a, Point3 b)
    {
        var to = h.Slice(at * Local + at, 2 * Local + 3);
        to[0] += 2 * a.X * b.X;
        to[1] += a.X * b.Y + b.X * a.Y;
        to[2] += a.X * b.Z + b.X * a.Z;
        to[Local + 1] += 2 * a.Y * b.Y;
        to[Local + 2] += a.Y * b.Z + b.Y * a.Z;
        to[2 * Local + 2] += 2 * a.Z * b.Z;
    }

    // s (I - t t'), its upper half.
    private static void Square(Span<double> h, int at, double s, Point3 t)
    {
        var to = h.Slice(at * Local + at, 2 * Local + 3);
        to[0] += s - s * t.X * t.X;
        to[1] -= s * t.X * t.Y;
        to[2] -= s * t.X * t.Z;
        to[Local + 1] += s - s * t.Y * t.Y;
        to[Local + 2] -= s * t.Y * t.Z;
        to[2 * Local + 2] += s - s * t.Z * t.Z;
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
        var (from, by) = at < theta ? (at * Local + theta, Local) : (theta * Local + at, 1);
        h[from] += v.X;
        h[from + by] += v.Y;
        h[from + 2 * by] += v.Z;
    }
}
