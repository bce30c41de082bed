using System.Globalization;
using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Tests.Settle;

/// <summary>A clamped wire bent in its plane: the elastica.</summary>
public class ElasticaTests
{
    // L = 1, E I = 1. With E A = 1e7 the wire stretches by 1e-6 at a pull of 10.
    private const double AxialStiffness = 1e7;

    // E A times the last digit of a strain on edges of an eightieth is 1e-7: ten times that can be reached.
    private const double Left = 1e-6;

    private static RodState Straight(int edges) => TestRods.Clamped(s => new Point3(s, 0, 0), edges, new Point3(1, 0, 0), new Point3(0, 0, 1));

    private static RestResult Loaded(int edges, double axialStiffness, bool flat, params Func<RodState, IEnergyTerm>[] loads)
    {
        var state = Straight(edges);
        var model = new RodModel(state, (1, 1), 1, axialStiffness);
        var held = TestRods.Held(state, [0, 1], [0], flat);
        return TestRods.Rest(model, state, held, new RestOptions { ResidualN = Left, ReachMm = 1 }, [.. loads.Select(l => l(state))]);
    }

    private static (double W, double U) Tip(int edges, double alpha)
    {
        var rest = Loaded(edges, AxialStiffness, false, s => new DeadForces((s.Positions.Length - 1, new Point3(0, 0, alpha))));
        Assert.Equal(RestExit.AtRest, rest.Exit);
        Assert.True(rest.ResidualN <= Left);
        return (rest.State.Positions[^1].Z, 1 - rest.State.Positions[^1].X);
    }

    public static TheoryData<string> Loads => [.. ReferenceTable.Read("elastica-tip-load.csv").Rows.Select(r => r.Text("alpha"))];

    // Reference: elastica-tip-load.csv. Tolerance of the exact columns: at 40 and 80 edges the error goes with the square of the step and what is left after
    // extrapolation with its fourth power, below 1e-5 at the largest load; E A adds alpha / 1e7.
    [Theory]
    [MemberData(nameof(Loads))]
    public void Tip_load_bends_a_clamped_wire_as_the_elliptic_solution_and_the_published_table_say(string alpha)
    {
        var row = ReferenceTable.Read("elastica-tip-load.csv").Rows.Single(r => r.Text("alpha") == alpha);
        var load = double.Parse(alpha, CultureInfo.InvariantCulture);
        var (coarse, fine) = (Tip(40, load), Tip(80, load));
        var w = TestRods.Extrapolated(coarse.W, fine.W);
        var u = TestRods.Extrapolated(coarse.U, fine.U);
        Near.Equal(row["w"], w, 2e-5, row);
        Near.Equal(row["u"], u, 2e-5, row);
        if (row.Text("sze_w_tenth").Length == 0) return;
        Near.Equal(row["sze_w_tenth"], 10 * w, 0.0035 + 2e-4, row);
        Near.Equal(row["sze_u_tenth"], 10 * u, 0.0035 + 2e-4, row);
    }

    // Near a load of 5 the leading term of the error passes nought, so the lighter loads tell the order.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    public void Halving_the_edges_quarters_the_error(double alpha)
    {
        var row = ReferenceTable.Read("elastica-tip-load.csv").Rows.Single(r => r["alpha"] == alpha);
        double Off(int edges) => Tip(edges, alpha).W - row["w"];
        // 4 in the limit; the next term is (step)^2 smaller, some hundredths here.
        Near.Equal(4, Off(20) / Off(40), 0.1);
        Near.Equal(4, Off(40) / Off(80), 0.1);
    }

    // Reference: a straight rod of length L and stiffness E I, clamped at one end, closes into one full circle under an end moment 2 pi E I / L
    // (x = E I / M sin(M L / E I), z = E I / M (1 - cos(M L / E I))).
    // Tolerance: a node's moment is E I / h 2 tan(a/2) / cos^2(a/2) = E I a (1 + a^2/3) / h, so each turns by a share a^2/3 too little, a = 2 pi / n; the tip
    // is left off by about that share of L, and after halving and extrapolating by the square of the coarser share, over all 2 pi.
    [Fact]
    public void Full_turn_moment_brings_the_tip_back_to_its_root()
    {
        // A moment alone pulls at nothing, so a softer wire comes to the same shape in fewer steps. Held in its plane: free, a wire so bent may leave it.
        RodState Bent(int edges)
        {
            var rest = Loaded(edges, 1e3, true, s => new EndMoment(2 * Math.PI, s.Edges));
            Assert.Equal(RestExit.AtRest, rest.Exit);
            return rest.State;
        }
        var (coarse, fine) = (Bent(60), Bent(120));
        double share = Math.Pow(2 * Math.PI / 120, 2) / 3, left = 2 * Math.PI * Math.Pow(4 * share, 2);
        Assert.True(fine.Positions[^1].Length < 1.5 * share, $"{fine.Positions[^1]}");
        Near.Equal(0, TestRods.Extrapolated(coarse.Positions[^1].X, fine.Positions[^1].X), left);
        Near.Equal(0, TestRods.Extrapolated(coarse.Positions[^1].Z, fine.Positions[^1].Z), left);
        // The last edge has the direction of its own middle, half an edge before the tip.
        Near.Equal(2 * Math.PI, TestRods.Extrapolated(EndMoment.Angle(coarse) * 60 / 59.5, EndMoment.Angle(fine) * 120 / 119.5), left);
    }

    [Fact]
    public void The_same_search_gives_the_same_bits() =>
        Assert.Equal(Loaded(30, 1e3, false, s => new DeadForces((31, new Point3(0, 0.5, 3)))).State.Positions, Loaded(30, 1e3, false, s => new DeadForces((31, new Point3(0, 0.5, 3)))).State.Positions);
}
