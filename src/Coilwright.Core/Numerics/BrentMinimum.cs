namespace Coilwright.Core.Numerics;

/// <summary>A least value found and where.</summary>
/// <param name="At">Where.</param>
/// <param name="Value">The value there.</param>
/// <param name="Steps">Steps taken.</param>
public readonly record struct Minimum(double At, double Value, int Steps);

/// <summary>Least value of a function of one variable with a single valley: golden section with parabolic steps.</summary>
/// <remarks>Needs no slope, so a kink at the bottom (two flat faces) does no harm. Source: R. P. Brent, Algorithms for Minimization without
/// Derivatives, Prentice-Hall 1973, chapter 5 (from memory).</remarks>
public static class BrentMinimum
{
    private const double Golden = 0.3819660112501051;

    /// <summary>Finds it.</summary>
    /// <param name="f">The function.</param>
    /// <param name="from">Left end of the search.</param>
    /// <param name="to">Right end, more than <paramref name="from"/>.</param>
    /// <param name="tolerance">Width at which to stop, above 0.</param>
    /// <param name="maxSteps">Most steps; 100 narrows any double range by golden section alone.</param>
    public static Minimum Of(Func<double, double> f, double from, double to, double tolerance, int maxSteps = 100)
    {
        double a = from, b = to;
        double x = a + Golden * (b - a), w = x, v = x;
        double fx = f(x), fw = fx, fv = fx;
        double step = 0, last = 0;
        var steps = 0;
        for (; steps < maxSteps; steps++)
        {
            var middle = 0.5 * (a + b);
            var tol = tolerance + 1e-12 * Math.Abs(x);
            if (Math.Abs(x - middle) <= 2 * tol - 0.5 * (b - a)) break;
            var golden = true;
            if (Math.Abs(last) > tol)
            {
                var r = (x - w) * (fx - fv);
                var q = (x - v) * (fx - fw);
                var p = (x - v) * q - (x - w) * r;
                q = 2 * (q - r);
                if (q > 0) p = -p;
                q = Math.Abs(q);
                if (Math.Abs(p) < Math.Abs(0.5 * q * last) && p > q * (a - x) && p < q * (b - x))
                {
                    last = step;
                    step = p / q;
                    var at = x + step;
                    if (at - a < 2 * tol || b - at < 2 * tol) step = x < middle ? tol : -tol;
                    golden = false;
                }
            }
            if (golden)
            {
                last = x < middle ? b - x : a - x;
                step = Golden * last;
            }
            var u = Math.Abs(step) >= tol ? x + step : x + (step > 0 ? tol : -tol);
            var fu = f(u);
            if (fu <= fx)
            {
                if (u < x) b = x; else a = x;
                (v, fv, w, fw, x, fx) = (w, fw, x, fx, u, fu);
            }
            else
            {
                if (u < x) a = u; else b = u;
                if (fu <= fw || w == x) (v, fv, w, fw) = (w, fw, u, fu);
                else if (fu <= fv || v == x || v == w) (v, fv) = (u, fu);
            }
        }
        return new Minimum(x, fx, steps);
    }
}
