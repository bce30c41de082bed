using Coilwright.Core.Listings;

namespace Coilwright.Core.Tests.Listings;

/// <summary>The small-parts cylinder: a caution that may tell too much and never too little.</summary>
public class SmallPartsCylinderTests
{
    private static readonly SmallPartsCylinder Cylinder = new(Read("inside"), Read("shallow"), Read("deep"), "the rule");

    private static double Read(string key) => ReferenceTable.Read("jewellery-limits.csv").Rows.Single(r => r.Text("key") == key)["value"];

    // In a cylinder whose bottom falls by its own width, the top of a ball at the lowest place stands D (1 + sqrt(2)/2) over the lowest point, from elementary geometry.
    [Fact]
    public void Every_ball_that_passes_the_opening_is_a_small_part()
    {
        Assert.Equal(Cylinder.InsideMm, Cylinder.DeepMm - Cylinder.ShallowMm, 6);
        Assert.True(Cylinder.InsideMm * (1 + Math.Sqrt(2) / 2) < Cylinder.DeepMm);
        for (var d = 1.0; d <= Cylinder.InsideMm; d += 0.1) Assert.True(Cylinder.HoldsBall(d));
        Assert.True(Cylinder.HoldsBall(Cylinder.InsideMm));
        Assert.False(Cylinder.HoldsBall(Cylinder.InsideMm + 0.01));
        // Only as deep as the largest ball reaches, it would just hold it, and no less.
        var just = Cylinder with { DeepMm = Cylinder.InsideMm * (1 + Math.Sqrt(2) / 2), ShallowMm = Cylinder.InsideMm * Math.Sqrt(2) / 2 };
        Assert.True((just with { DeepMm = just.DeepMm + 1e-6, ShallowMm = just.ShallowMm + 1e-6 }).HoldsBall(Cylinder.InsideMm));
        Assert.False((just with { DeepMm = just.DeepMm - 1e-6, ShallowMm = just.ShallowMm - 1e-6 }).HoldsBall(Cylinder.InsideMm));
    }

    [Fact]
    public void A_bead_is_never_left_out_that_a_ball_round_it_would_put_in()
    {
        foreach (var (length, width) in new[] { (6.0, 6.0), (2.0, 25.0), (18.0, 18.0), (30.0, 3.0) })
        {
            var bead = SamplePieces.Bead("b", "oval", length, width, width);
            if (Cylinder.HoldsBall(Math.Sqrt(length * length + 2 * width * width))) Assert.True(Cylinder.MayHold(bead));
        }
        Assert.True(Cylinder.MayHold(SamplePieces.Bead("b", "round", 31.7)));
        Assert.False(Cylinder.MayHold(SamplePieces.Bead("b", "round", 31.8)));
        Assert.False(Cylinder.MayHold(SamplePieces.Bead("b", "tube", 80, 6, 6)));
        Assert.True(Cylinder.MayHold(SamplePieces.Bead("b", "tube", 60, 6, 6)));
    }
}
