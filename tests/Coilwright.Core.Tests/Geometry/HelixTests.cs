using Coilwright.Core.Geometry;

namespace Coilwright.Core.Tests.Geometry;

public class HelixTests
{
    private static readonly ReferenceTable Helices = ReferenceTable.Read("helix.csv");

    [Fact]
    public void Length_bend_and_twist_are_those_of_the_table()
    {
        foreach (var row in Helices.Rows)
        {
            var helix = new Helix(row["D_mm"] / 2, row["p_mm"]);
            // Half of the last printed digit.
            Near.Equal(row["length_mm"], row["n"] * helix.TurnLengthMm, 0.000005, row);
            Near.Equal(row["curvature_per_mm"], helix.CurvaturePerMm, 0.000000005, row);
            Near.Equal(row["torsion_per_mm"], helix.TorsionPerMm, 0.000000005, row);
        }
    }

    [Fact]
    public void Length_is_that_of_many_short_straight_pieces()
    {
        foreach (var row in Helices.Rows)
        {
            var helix = new Helix(row["D_mm"] / 2, row["p_mm"]);
            const int Pieces = 20_000;
            var sum = 0.0;
            (double X, double Y, double Z) last = helix.At(0, 0);
            for (var i = 1; i <= Pieces; i++)
            {
                (double X, double Y, double Z) next = helix.At(2 * Math.PI * i / Pieces, (double)i / Pieces);
                sum += Math.Sqrt(Math.Pow(next.X - last.X, 2) + Math.Pow(next.Y - last.Y, 2) + Math.Pow(next.Z - last.Z, 2));
                last = next;
            }
            // A chord falls short of its arc by the share (2 pi/n)^2/24 = 4e-9.
            Near.Equal(sum, helix.TurnLengthMm, 5e-9 * helix.TurnLengthMm, row);
        }
    }

    // Why the rise of a bracelet coil is left out of a loop's length: trade figure "under 0.4 mm at 12 mm", common practice, no source.
    [Fact]
    public void Twelve_millimetres_of_rise_lengthen_a_turn_by_less_than_0_4_mm() =>
        Assert.InRange(new Helix(30.25, 12).TurnLengthMm - new Helix(30.25, 0).TurnLengthMm, 0.3, 0.4);
}
