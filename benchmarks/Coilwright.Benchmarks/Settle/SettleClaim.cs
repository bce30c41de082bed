using System.Diagnostics;
using System.Globalization;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Coilwright.Benchmarks.Settle;

/// <summary>How a piece sits: the search for rest against a library's, its order of elimination, what contact costs, and how it grows.</summary>
public static class SettleClaim
{
    private const double Radius = 30, Bending = 2275, Twisting = 1750, Axial = 7e4;

    public static Claim Claim { get; } = new("settle", "How it sits: against a library's minimiser, its order of elimination against the wire's own, contact against none, and how the wire alone grows.", Measure);

    private const int GrownEdges = 3200, GrownTurns = 4;

    private static Verdict[] Measure(int rounds)
    {
        List<double> library = [], order = [], ofTwenty = [], contact = [], growth = [];
        // Once through everything small, so that neither side is charged for being compiled.
        _ = (Library(24, 50), Order(2, 20), Contact(2, 20), Alone(50));
        for (var round = 0; round < rounds; round++)
        {
            library.Add(Library(120, 1000));
            order.Add(Order(GrownTurns, GrownEdges / GrownTurns, 16));
            ofTwenty.Add(Order(20, 160));
            contact.Add(Contact(4, 50));
            growth.Add(Math.Log(Alone(GrownEdges) / Alone(200)) / Math.Log(16));
        }
        return
        [
            new Verdict("library's BFGS / own, same energy and force left, 120 edges", library, Promise.AtLeast, 20),
            new Verdict("factoring along the wire / in the order taken, 200 balls of 4 mm in 4 turns that touch, 3,200 edges", order, Promise.AtLeast, 50),
            new Verdict("the same in 20 turns, a ball on each edge", ofTwenty, Promise.AtLeast, null),
            new Verdict("with turns that touch / without, 200 edges in 4 turns", contact, Promise.AtMost, 8),
            new Verdict("exponent by which the wire alone grows from 200 to 3,200 edges in 4 turns", growth, Promise.AtMost, 1.3),
        ];
    }

    private static RodState Helix(double radius, double pitch, double turns, int edges)
    {
        // The same length of wire, whatever the radius.
        var length = 2 * Math.PI * Radius * turns;
        var per = Math.Sqrt(radius * radius + pitch * pitch / (4 * Math.PI * Math.PI));
        return RodState.Lay([.. Enumerable.Range(0, edges + 1).Select(i =>
        {
            var (sin, cos) = Math.SinCos(length * i / edges / per);
            return new Point3(radius * sin, -pitch * length * i / edges / per / (2 * Math.PI), radius * cos);
        })], p => new Point3(p.X, 0, p.Z));
    }

    private static RodModel Model(double turns, int edges) => new(Helix(Radius, 0, turns, edges), (Bending, Bending), Twisting, Axial);

    private static bool[] Held(RodState state, bool flat)
    {
        var held = new bool[state.Unknowns];
        for (var u = 0; u < 7; u++) held[u] = true;
        for (var u = 0; flat && u < held.Length; u++) held[u] |= u % 4 is 1 or 3;
        return held;
    }

    // A coil of one turn opened by a tenth closes again in its plane. The library goes as far as so many rounds take it, then ours to the same force left.
    private static double Library(int edges, int most)
    {
        var (model, start) = (Model(1, edges), Helix(1.1 * Radius, 0, 1, edges));
        var held = Held(start, true);
        IEnergyTerm[] terms = [new BendTerm(model), new StretchTerm(model)];
        int[] free = [.. Enumerable.Range(0, held.Length).Where(u => !held[u])];
        double[] Step(Vector<double> x)
        {
            var step = new double[held.Length];
            for (var k = 0; k < free.Length; k++) step[free[k]] = x[k];
            return step;
        }
        double[] Slopes(RodState state)
        {
            var slopes = new double[held.Length];
            foreach (var term in terms) term.AddSlopes(state, slopes, null, false);
            return slopes;
        }
        var best = start;
        double Left(RodState state)
        {
            var slopes = Slopes(state);
            return free.Max(u => Math.Abs(slopes[u]));
        }
        var clock = Stopwatch.StartNew();
        var objective = ObjectiveFunction.Gradient(x =>
        {
            var state = start.Moved(Step(x), 1);
            var energy = terms.Sum(t => t.Value(state));
            best = state;
            return double.IsFinite(energy) ? energy : 1e30;
        }, x =>
        {
            var slopes = Slopes(start.Moved(Step(x), 1));
            return Vector<double>.Build.DenseOfEnumerable(free.Select(u => slopes[u]));
        });
        try
        {
            var found = new BfgsMinimizer(1e-6, 1e-14, 1e-14, most).FindMinimum(objective, Vector<double>.Build.Dense(free.Length));
            best = start.Moved(Step(found.MinimizingPoint), 1);
        }
        catch (Exception e) when (e is MaximumIterationsException or OptimizationException)
        {
            // As far as it came.
        }
        var theirs = clock.Elapsed.TotalSeconds;
        var left = Left(best);
        clock.Restart();
        var rest = new Newton(terms, held, Newton.GroupsOf(start), null, new RestOptions { ResidualN = left, ReachMm = Radius }).Run(start);
        var own = clock.Elapsed.TotalSeconds;
        if (rest.ResidualN > left) throw new InvalidOperationException($"Ours left {rest.ResidualN} N, the library {left} N.");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"library {theirs * 1000:0} ms, own {own * 1000:0.0} ms in {rest.Steps} steps, both to {left:0.0e0} N"));
        return theirs / own;
    }

    private static double[] Angles(RodState state) => Array.ConvertAll(state.Positions, p => Math.Atan2(p.X, p.Z));

    private static TurnsTerm Touching(int turns, int edges, double ball, double width, int every = 1) =>
        new([.. Enumerable.Range(0, edges / every).Select(b => new Ball(every * b, 0.5, 0, 0, ball))], [.. Enumerable.Range(0, edges).Select(e => 2 * Math.PI * Radius * turns * (e + 0.5) / edges)], Math.PI * Radius, new ContactBarrier(1e-3, width));

    private static double Order(int turns, int perTurn, int every = 1)
    {
        var edges = turns * perTurn;
        var (model, state) = (Model(turns, edges), Helix(Radius, 4.1, turns, edges));
        var touching = Touching(turns, edges, 2, 0.5, every);
        touching.Renew(state);
        IEnergyTerm[] terms = [new BendTerm(model), new StretchTerm(model), touching];
        double Factored(EliminationOrder? order)
        {
            var matrix = new StiffnessMatrix([.. terms.Select(t => t.Elements)], Held(state, false), Newton.GroupsOf(state), Angles(state), order);
            var scratch = new double[state.Unknowns];
            for (var t = 0; t < terms.Length; t++) terms[t].AddSlopes(state, scratch, matrix.SinkOf(t, terms[t].Elements), true);
            // Once beforehand, so that its memory is there, then the quickest of ten: one takes but some milliseconds.
            matrix.Fill(1e-9);
            var took = double.PositiveInfinity;
            for (var k = 0; k < 10; k++)
            {
                var clock = Stopwatch.StartNew();
                matrix.Fill(1e-9);
                took = Math.Min(took, clock.Elapsed.TotalSeconds);
            }
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{matrix.Elimination.Order}: {matrix.Elimination.Entries} entries, {took * 1000:0.0} ms"));
            return took;
        }
        return Factored(EliminationOrder.Natural) / Factored(null);
    }

    // Let go from a little wider and steeper, to the same force left.
    private static double Contact(int turns, int perTurn)
    {
        var edges = turns * perTurn;
        var (model, start) = (Model(turns, edges), Helix(1.02 * Radius, 4.1, turns, edges));
        double Took(params IEnergyTerm[] more)
        {
            var clock = Stopwatch.StartNew();
            var rest = new Newton([new BendTerm(model), new StretchTerm(model), .. more], Held(start, false), Newton.GroupsOf(start), Angles, new RestOptions { ResidualN = 1e-6, ReachMm = Radius }).Run(start);
            if (rest.ResidualN > 1e-5) throw new InvalidOperationException($"No rest: {rest.Exit}, {rest.ResidualN} N.");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(more.Length == 0 ? "without" : "with")} contact {clock.Elapsed.TotalMilliseconds:0} ms, {rest.Steps} steps"));
            return clock.Elapsed.TotalSeconds;
        }
        var without = Took();
        return Took(Touching(turns, edges, 2, 0.05)) / without;
    }

    private static double Alone(int edges)
    {
        var (model, start) = (Model(4, edges), Helix(1.02 * Radius, 2, 4, edges));
        var clock = Stopwatch.StartNew();
        var rest = new Newton([new BendTerm(model), new StretchTerm(model)], Held(start, false), Newton.GroupsOf(start), null, new RestOptions { ResidualN = 1e-5, ReachMm = Radius }).Run(start);
        if (rest.ResidualN > 1e-4) throw new InvalidOperationException($"No rest: {rest.Exit}, {rest.ResidualN} N.");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{edges} edges alone {clock.Elapsed.TotalMilliseconds:0} ms, {rest.Steps} steps"));
        return clock.Elapsed.TotalSeconds;
    }
}
