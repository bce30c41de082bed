namespace Coilwright.Core.Settle.Solving;

/// <summary>Small symmetric matrices, row by row.</summary>
internal static class SmallMatrix
{
    /// <summary>Fills the lower half from the upper.</summary>
    public static void Mirror(Span<double> m, int n)
    {
        for (var r = 1; r < n; r++)
            for (var c = 0; c < r; c++) m[r * n + c] = m[c * n + r];
    }

    /// <summary>Takes out every direction in which it falls: negative eigenvalues become 0. Jacobi's rotations, in a fixed order.</summary>
    public static void MakeConvex(Span<double> m, int n)
    {
        Span<double> a = stackalloc double[n * n], v = stackalloc double[n * n];
        m.CopyTo(a);
        double scale = 0;
        foreach (var x in m) scale = Math.Max(scale, Math.Abs(x));
        if (Rises(a, n, 1e-12 * scale)) return;
        m.CopyTo(a);
        v.Clear();
        for (var i = 0; i < n; i++) v[i * n + i] = 1;
        // As small as this is rounding.
        var least = 1e-14 * scale;
        for (var (sweep, turned) = (0, true); turned && sweep < 30; sweep++)
        {
            turned = false;
            for (var p = 0; p < n; p++)
                for (var q = p + 1; q < n; q++)
                {
                    if (!(Math.Abs(a[p * n + q]) > least)) continue;
                    Rotate(a, v, n, p, q);
                    turned = true;
                }
        }
        var falls = false;
        for (var i = 0; i < n; i++) falls |= a[i * n + i] < 0;
        if (!falls) return;
        m.Clear();
        for (var i = 0; i < n; i++)
        {
            var value = a[i * n + i];
            if (value <= 0) continue;
            for (var r = 0; r < n; r++)
                for (var c = 0; c < n; c++) m[r * n + c] += value * v[r * n + i] * v[c * n + i];
        }
    }

    // Whether it falls in no direction by more than rounding: it has a Cholesky factor once that is added. The matrix is used up.
    private static bool Rises(Span<double> a, int n, double rounding)
    {
        for (var k = 0; k < n; k++)
        {
            var pivot = a[k * n + k] + rounding;
            if (!(pivot > 0)) return false;
            for (var r = k + 1; r < n; r++)
            {
                var factor = a[r * n + k] / pivot;
                for (var c = k + 1; c <= r; c++) a[r * n + c] -= factor * a[c * n + k];
            }
        }
        return true;
    }

    private static void Rotate(Span<double> a, Span<double> v, int n, int p, int q)
    {
        var apq = a[p * n + q];
        var tau = (a[q * n + q] - a[p * n + p]) / (2 * apq);
        var t = (tau >= 0 ? 1 : -1) / (Math.Abs(tau) + Math.Sqrt(1 + tau * tau));
        var c = 1 / Math.Sqrt(1 + t * t);
        var s = t * c;
        for (var k = 0; k < n; k++)
        {
            var (kp, kq) = (a[k * n + p], a[k * n + q]);
            (a[k * n + p], a[k * n + q]) = (c * kp - s * kq, s * kp + c * kq);
        }
        for (var k = 0; k < n; k++)
        {
            var (pk, qk) = (a[p * n + k], a[q * n + k]);
            (a[p * n + k], a[q * n + k]) = (c * pk - s * qk, s * pk + c * qk);
            var (vp, vq) = (v[k * n + p], v[k * n + q]);
            (v[k * n + p], v[k * n + q]) = (c * vp - s * vq, s * vp + c * vq);
        }
    }
}
